using Rodwright.Geometry;

namespace Rodwright.Workshop.Picks;

/// <summary>Makes facts. Lengths are told to a hundredth of a millimetre or a sixteenth of an inch, angles to a hundredth of a degree.</summary>
internal static class Facts
{
    private const int Decimals = 2;

    /// <summary>Decimals of an inch that a formula comes out to: a figure in sixteenths cannot be checked by arithmetic.</summary>
    private const int InchDecimals = 3;

    /// <summary>A length; of the ways to work it out the first that comes out stands. In feet and inches the value is in sixteenths, its formula in decimals of an inch.</summary>
    public static Fact Mm(Units units, string label, double value, string source, string path = "", params ReadOnlySpan<Working> ways) => units.IsInches
        ? new(label, Length(units, value), Formula(value, InchDecimals, Units.Inch, "\"", ways), source, path)
        : new(label, Length(units, value), Formula(value, Decimals, 1, "", ways), source, path);

    /// <summary>An angle, given in degrees.</summary>
    public static Fact Degrees(string label, double value, string source, string path = "", params ReadOnlySpan<Working> ways) =>
        new(label, Figure(value) + "°", Formula(value, Decimals, 1, "°", ways), source, path);

    /// <summary>A number of things.</summary>
    public static Fact Count(string label, int value, string source, string path = "", params ReadOnlySpan<Working> ways) =>
        new(label, Figure(value), Formula(value, Decimals, 1, "", ways), source, path);

    public static Fact Words(string label, string value, string source, string path = "") => new(label, value, "", source, path);

    /// <summary>A length as a value prints it.</summary>
    public static string Length(Units units, double value) => Working.Signed(units.With(value, Decimals));

    public static string Figure(double value) => Working.Signed(Number.Print(value, Decimals));

    private static string Formula(double value, int decimals, double per, string unit, ReadOnlySpan<Working> ways)
    {
        foreach (var way in ways)
            if (way.Equation(value, decimals, per) is { } equation) return equation + unit;
        return "";
    }
}
