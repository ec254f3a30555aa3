using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>Sections of a bottom step whose end is rounded: in front of the newel nothing carries it, its return is let into the newel's front face.</summary>
internal static class RoundedSections
{
    /// <summary>The tread: in the newel's front face from the nosing of its return to the arris, then as any other.</summary>
    public static StepSections OfTread(StairPlan plan, StepSections tread)
    {
        foreach (var end in plan.RoundedEnds)
        {
            var at = end.NewelFace.Length - Station(end, plan.Job.Practice.Nosing);
            var front = new Section(end.NewelFace, at, end.NewelFace.Length, true, false, at, 1, 1, false);
            ImmutableArray<Section> sections = [front, .. Carried(end.Inner ? tread.Inner : tread.Outer)];
            tread = end.Inner ? tread with { Inner = sections, InnerEnd = end } : tread with { Outer = sections, OuterEnd = end };
        }
        return tread;
    }

    /// <summary>The riser: its bent end only butts against the newel's front face.</summary>
    public static StepSections OfRiser(StairPlan plan, StepSections riser)
    {
        foreach (var end in plan.RoundedEnds)
        {
            var at = end.NewelFace.Length - Station(end, 0);
            ImmutableArray<Section> sections = [new(end.NewelFace, at, at + plan.Job.BottomStep.Veneer, true, true, at, 1, 1, true)];
            riser = end.Inner ? riser with { Inner = sections, InnerEnd = end } : riser with { Outer = sections, OuterEnd = end };
        }
        return riser;
    }

    private static IEnumerable<Section> Carried(ImmutableArray<Section> sections) => sections.Where(s => s.Edge.Kind != BoundaryKind.FreeEnd);

    /// <summary>Distance of the return, an offset in front of the riser's face, from the newel's arris at the stair.</summary>
    private static double Station(RoundedEnd end, double offset) => (end.Line(offset).Vertices[0].At - end.NewelFace.To).Dot(end.Out);
}
