using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>What may free a tenon or its peg, by growing amounts; whoever offers one tries it first.</summary>
internal static class TenonRemedies
{
    public static Remedy Newel(double side) => Remedy.Of($"a newel of {Number.Print(side)}", FieldChange.To("practice.newel", side));

    /// <summary>Newels up to 40 mm larger, every 2 mm.</summary>
    public static IEnumerable<Remedy> LargerNewels(double side) => Enumerable.Range(1, 20).Select(i => Newel(Math.Ceiling(side) + 2 * i));

    public static Remedy Strings(StringSite site, double thickness) => Remedy.Of(
        $"{(site.IsWall ? "wall" : "newel")} strings {Number.Print(thickness)} thick", FieldChange.To(site.IsWall ? "practice.wallString.thickness" : "practice.newelString.thickness", thickness));

    /// <summary>Pegs down to 6 mm.</summary>
    public static IEnumerable<Remedy> SmallerPegs(double peg)
    {
        for (var size = Math.Ceiling(peg) - 1; size >= 6; size--) yield return Remedy.Of($"a peg of {Number.Print(size)}", FieldChange.To("practice.tenon.peg", size));
    }

    /// <summary>Draws down to half a millimetre.</summary>
    public static IEnumerable<Remedy> LessDraw(double draw)
    {
        for (var less = Math.Ceiling(2 * draw) / 2 - 0.5; less >= 0.5; less -= 0.5) yield return Remedy.Of($"a draw of {Number.Print(less)}", FieldChange.To("practice.tenon.draw", less));
    }
}
