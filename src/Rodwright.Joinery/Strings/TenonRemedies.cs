using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>What may free a tenon or its peg, by growing amounts; whoever offers one tries it first.</summary>
internal static class TenonRemedies
{
    public static Remedy Newel(Units units, double side) => Remedy.Of($"a newel of {units.Print(side)}", FieldChange.To("practice.newel", side));

    /// <summary>Newels up to 40 mm larger, every 2 mm.</summary>
    public static IEnumerable<Remedy> LargerNewels(Units units, double side) => Enumerable.Range(1, 20).Select(i => Newel(units, units.Up(side) + units.Nearby(2) * i));

    public static Remedy Strings(Units units, StringSite site, double thickness) => Remedy.Of(
        $"{(site.IsWall ? "wall" : "newel")} strings {units.Print(thickness)} thick", FieldChange.To(site.IsWall ? "practice.wallString.thickness" : "practice.newelString.thickness", thickness));

    /// <summary>Pegs down to 6 mm.</summary>
    public static IEnumerable<Remedy> SmallerPegs(Units units, double peg)
    {
        for (var size = units.Up(peg) - units.Step; size >= 6; size -= units.Step) yield return Remedy.Of($"a peg of {units.Print(size)}", FieldChange.To("practice.tenon.peg", size));
    }

    /// <summary>Draws down to half a millimetre.</summary>
    public static IEnumerable<Remedy> LessDraw(Units units, double draw)
    {
        var half = units.IsInches ? units.Step / 2 : 0.5;
        for (var less = Math.Ceiling(draw / half) * half - half; less >= half; less -= half) yield return Remedy.Of($"a draw of {units.Print(less, 2)}", FieldChange.To("practice.tenon.draw", less));
    }
}
