using Rodwright.Geometry;

namespace Rodwright.Rod.Stages;

/// <summary>Numbers and directions in words.</summary>
internal static class Say
{
    public static string K(int number) => Number.Print(number, 0);

    /// <summary>"riser 4".</summary>
    public static string Riser(int number) => $"riser {K(number)}";

    /// <summary>"riser 4's face".</summary>
    public static string RiserFace(int number) => $"riser {K(number)}'s face";

    public static Instruction How(string act, string why, string source, params Measure[] measures) => new([.. measures], act, why, source);
}
