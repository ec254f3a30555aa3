using Rodwright.Geometry;

namespace Rodwright.Workshop.Picks;

/// <summary>Makes facts. Lengths are told to a hundredth, so are angles.</summary>
internal static class Facts
{
    private const int Decimals = 2;

    /// <summary>A length; of the ways to work it out the first that comes out stands.</summary>
    public static Fact Mm(string label, double value, string source, string path = "", params ReadOnlySpan<Working> ways) => Of(label, value, " mm", source, path, ways);

    /// <summary>An angle, given in degrees.</summary>
    public static Fact Degrees(string label, double value, string source, string path = "", params ReadOnlySpan<Working> ways) => Of(label, value, "°", source, path, ways);

    /// <summary>A number of things.</summary>
    public static Fact Count(string label, int value, string source, string path = "", params ReadOnlySpan<Working> ways) => Of(label, value, "", source, path, ways);

    public static Fact Words(string label, string value, string source, string path = "") => new(label, value, "", source, path);

    /// <summary>A length that stands in the job as it is.</summary>
    public static Fact Given(string path, double value) => Mm(Why.Label(path), value, Why.Field(path), path);

    /// <summary>A length as a value prints it.</summary>
    public static string Length(double value) => Figure(value) + " mm";

    public static string Figure(double value) => Working.Signed(Number.Print(value, Decimals));

    private static Fact Of(string label, double value, string unit, string source, string path, ReadOnlySpan<Working> ways)
    {
        var formula = "";
        foreach (var way in ways)
        {
            if (way.Equation(value, Decimals) is not { } equation) continue;
            formula = unit == "°" ? equation + unit : equation;
            break;
        }
        return new(label, Figure(value) + unit, formula, source, path);
    }
}
