using Rodwright.Geometry;

namespace Rodwright.Workshop.Picks;

/// <summary>
/// How a number is worked out, as arithmetic that can be printed and checked: the figures in it are printed with the fewest digits with which it comes out to
/// the number it explains. Angles are in degrees.
/// </summary>
internal sealed class Working
{
    // Two decimals are what is measured to; eight tell any two numbers of a rod apart.
    private const int FewestDigits = 2;
    private const int MostDigits = 8;

    private readonly Func<int, (string Text, double Value)> printed;
    private readonly Rank rank;
    private readonly double? figure;

    private Working(Rank rank, Func<int, (string, double)> printed, double? figure = null)
    {
        this.rank = rank;
        this.printed = printed;
        this.figure = figure;
    }

    private enum Rank
    {
        Sum,
        Product,
        Single,
    }

    /// <summary>Half a turn in radians, for lengths of arcs.</summary>
    public static Working Pi { get; } = new(Rank.Single, _ => ("π", Math.PI));

    public static Working Of(double value) => new(Rank.Single, d =>
    {
        var text = Number.Print(value, d);
        var read = Math.Round(value, d, MidpointRounding.AwayFromZero);
        return text[0] == '-' ? ($"(−{text[1..]})", read) : (text, read);
    }, value);

    public static implicit operator Working(double value) => Of(value);

    public static implicit operator Working(int value) => Of(value);

    public static Working operator +(Working a, Working b) => b.figure is < 0 and var f
        ? a - Of(-f)
        : new(Rank.Sum, d => Join(a.In(d, Rank.Sum), " + ", b.In(d, Rank.Sum), (x, y) => x + y));

    public static Working operator -(Working a, Working b) => b.figure is < 0 and var f
        ? a + Of(-f)
        : new(Rank.Sum, d => Join(a.In(d, Rank.Sum), " − ", b.In(d, Rank.Product), (x, y) => x - y));

    public static Working operator *(Working a, Working b) => new(Rank.Product, d => Join(a.In(d, Rank.Product), " × ", b.In(d, Rank.Product), (x, y) => x * y));

    public static Working operator /(Working a, Working b) => new(Rank.Product, d => Join(a.In(d, Rank.Product), " ÷ ", b.In(d, Rank.Single), (x, y) => x / y));

    public static Working Square(Working a) => new(Rank.Single, d => Of(a.In(d, Rank.Single), t => $"{t}²", x => x * x));

    public static Working Root(Working a) => new(Rank.Single, d => Of(a.printed(d), t => $"√({t})", Math.Sqrt));

    /// <summary>The long side over two square ones.</summary>
    public static Working Across(double a, double b) => Root(Square(Math.Abs(a)) + Square(Math.Abs(b)));

    public static Working Cos(Angle a) => Turned("cos", a, Angle.Cos);

    public static Working Sin(Angle a) => Turned("sin", a, Angle.Sin);

    public static Working Tan(Angle a) => Turned("tan", a, Angle.Tan);

    /// <summary>The angle of a slope, degrees.</summary>
    public static Working Atan(Working slope) => new(Rank.Single, d => Of(slope.printed(d), t => $"atan({t})", x => Angle.FromRadians(Angle.Atan(x)).Degrees));

    /// <summary>"4 × 201.538 = 806.15"; null when it does not come out, or is no more than the figure itself.</summary>
    public string? Equation(double value, int decimals)
    {
        if (figure is not null || !double.IsFinite(value)) return null;
        var wanted = Number.Print(value, decimals);
        for (var digits = FewestDigits; digits <= MostDigits; digits++)
        {
            var (text, comesTo) = printed(digits);
            if (double.IsFinite(comesTo) && Number.Print(comesTo, decimals) == wanted) return $"{text} = {Signed(wanted)}";
        }
        return null;
    }

    /// <summary>A printed number with the sign as it is lettered.</summary>
    public static string Signed(string number) => number.Replace('-', '−');

    private static Working Turned(string name, Angle a, Func<double, double> of) => new(Rank.Single, d =>
    {
        var degrees = Math.Round(a.Degrees, d, MidpointRounding.AwayFromZero);
        return ($"{name} {Signed(Number.Print(degrees, d))}°", of(Angle.FromDegrees(degrees).Radians));
    });

    private (string Text, double Value) In(int digits, Rank least)
    {
        var (text, value) = printed(digits);
        return rank < least ? ($"({text})", value) : (text, value);
    }

    private static (string Text, double Value) Of((string Text, double Value) a, Func<string, string> text, Func<double, double> value) => (text(a.Text), value(a.Value));

    private static (string Text, double Value) Join((string Text, double Value) a, string sign, (string Text, double Value) b, Func<double, double, double> of) =>
        (a.Text + sign + b.Text, of(a.Value, b.Value));
}
