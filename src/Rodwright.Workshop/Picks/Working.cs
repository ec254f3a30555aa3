using Rodwright.Geometry;

namespace Rodwright.Workshop.Picks;

/// <summary>
/// How a number is worked out, as arithmetic that can be printed and checked: the figures in it are printed with the fewest digits with which it comes out to
/// the number it explains. Angles are in degrees.
/// </summary>
internal sealed class Working
{
    // Eight decimals tell any two numbers of a rod apart.
    private const int MostDigits = 8;

    // Half of the last digit that is told, and room for a figure that is rounded on the way.
    private const double FarOff = 0.011;

    private readonly Func<Figures, (string Text, double Value)> printed;
    private readonly Rank rank;
    private readonly double exact;
    private readonly bool isFigure;

    private Working(Rank rank, double exact, Func<Figures, (string, double)> printed, bool isFigure = false)
    {
        this.rank = rank;
        this.exact = exact;
        this.printed = printed;
        this.isFigure = isFigure;
    }

    private bool IsNothing => isFigure && exact == 0;

    /// <summary>How figures are printed.</summary>
    /// <param name="Digits">Most decimals.</param>
    /// <param name="Per">Millimetres in the unit lengths are printed in.</param>
    private readonly record struct Figures(int Digits, double Per);

    private enum Rank
    {
        Sum,
        Product,
        Single,
    }

    /// <summary>Half a turn in radians, for lengths of arcs.</summary>
    public static Working Pi { get; } = new(Rank.Single, Math.PI, _ => ("π", Math.PI));

    /// <summary>A length, mm; a formula in inches shows it in inches.</summary>
    public static Working Of(double value) => new(Rank.Single, value, d =>
    {
        var text = Number.Print(value / d.Per, d.Digits);
        var read = Math.Round(value / d.Per, d.Digits, MidpointRounding.AwayFromZero);
        return text[0] == '-' ? ($"(−{text[1..]})", read) : (text, read);
    }, true);

    /// <summary>A number of things: the same in every unit.</summary>
    public static Working Of(int value) => Ratio(value);

    /// <summary>A number that is no length: the same in every unit.</summary>
    public static Working Ratio(double value) => new(Rank.Single, value, d => (Number.Print(value, d.Digits), Math.Round(value, d.Digits, MidpointRounding.AwayFromZero)), true);

    public static implicit operator Working(double value) => Of(value);

    public static implicit operator Working(int value) => Of(value);

    public static Working operator +(Working a, Working b) => b.IsNothing ? a : b.isFigure && b.exact < 0
        ? a - Of(-b.exact)
        : new(Rank.Sum, a.exact + b.exact, d => Join(a.In(d, Rank.Sum), " + ", b.In(d, Rank.Sum), (x, y) => x + y));

    public static Working operator -(Working a, Working b) => b.IsNothing ? a : b.isFigure && b.exact < 0
        ? a + Of(-b.exact)
        : new(Rank.Sum, a.exact - b.exact, d => Join(a.In(d, Rank.Sum), " − ", b.In(d, Rank.Product), (x, y) => x - y));

    public static Working operator *(Working a, Working b) => new(Rank.Product, a.exact * b.exact, d => Join(a.In(d, Rank.Product), " × ", b.In(d, Rank.Product), (x, y) => x * y));

    public static Working operator /(Working a, Working b) => new(Rank.Product, a.exact / b.exact, d => Join(a.In(d, Rank.Product), " ÷ ", b.In(d, Rank.Single), (x, y) => x / y));

    public static Working Square(Working a) => new(Rank.Single, a.exact * a.exact, d => Of(a.In(d, Rank.Single), t => $"{t}²", x => x * x));

    public static Working Root(Working a) => new(Rank.Single, Math.Sqrt(a.exact), d => Of(a.printed(d), t => $"√({t})", Math.Sqrt));

    /// <summary>The long side over two square ones.</summary>
    public static Working Across(double a, double b) => Root(Square(Math.Abs(a)) + Square(Math.Abs(b)));

    public static Working Cos(Angle a) => Turned("cos", a, Angle.Cos);

    public static Working Sin(Angle a) => Turned("sin", a, Angle.Sin);

    public static Working Tan(Angle a) => Turned("tan", a, Angle.Tan);

    /// <summary>The angle of a slope, degrees.</summary>
    public static Working Atan(Working slope) => new(Rank.Single, Angle.FromRadians(Angle.Atan(slope.exact)).Degrees, d => Of(slope.printed(d), t => $"atan({t})", x => Angle.FromRadians(Angle.Atan(x)).Degrees));

    /// <summary>"4 × 201.538 = 806.15"; null when it does not come out, or is no more than the figure itself.</summary>
    public string? Equation(double value, int decimals, double per = 1)
    {
        if (isFigure || !double.IsFinite(value) || !(Math.Abs(exact - value) < FarOff)) return null;
        var wanted = Number.Print(value / per, decimals);
        for (var digits = decimals; digits <= MostDigits; digits++)
        {
            var (text, comesTo) = printed(new(digits, per));
            if (double.IsFinite(comesTo) && Number.Print(comesTo, decimals) == wanted) return $"{text} = {Signed(wanted)}";
        }
        return null;
    }

    /// <summary>A printed number with the sign as it is lettered.</summary>
    public static string Signed(string number) => number.Replace('-', '−');

    private static Working Turned(string name, Angle a, Func<double, double> of) => new(Rank.Single, of(a.Radians), d =>
    {
        var degrees = Math.Round(a.Degrees, d.Digits, MidpointRounding.AwayFromZero);
        return ($"{name} {Signed(Number.Print(degrees, d.Digits))}°", of(Angle.FromDegrees(degrees).Radians));
    });

    private (string Text, double Value) In(Figures digits, Rank least)
    {
        var (text, value) = printed(digits);
        return rank < least ? ($"({text})", value) : (text, value);
    }

    private static (string Text, double Value) Of((string Text, double Value) a, Func<string, string> text, Func<double, double> value) => (text(a.Text), value(a.Value));

    private static (string Text, double Value) Join((string Text, double Value) a, string sign, (string Text, double Value) b, Func<double, double, double> of) =>
        (a.Text + sign + b.Text, of(a.Value, b.Value));
}
