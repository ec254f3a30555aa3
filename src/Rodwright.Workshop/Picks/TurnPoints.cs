using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Picks;

/// <summary>Where lines of a turn cross its measuring lines, in the turn's own left-hand frame about the newel's centre.</summary>
internal static class TurnPoints
{
    /// <summary>From the nosing of step k to the next, straight across on the walking line.</summary>
    public static Working OnNosings(PickBench bench, TurnPlan turn, int k)
    {
        return Across(turn.Path, Line(bench, turn, k).OffsetLeft(-bench.Practice.Nosing), Line(bench, turn, k + 1).OffsetLeft(-bench.Practice.Nosing));
    }

    /// <summary>From riser k to the next, straight across on the second measuring line; no more than nothing where there is none.</summary>
    public static Working OnOuter(PickBench bench, TurnPlan turn, int k)
    {
        var plan = bench.Plan;
        if (plan.Regulation.WalkingLine.SecondInsetFor(plan.ClearWidth, bench.Job.ModelScale) is not { } inset) return 0;
        return Across(turn.Path with { Radius = turn.Site.InnerFace + inset }, Line(bench, turn, k), Line(bench, turn, k + 1));
    }

    private static Working Across(WalkingPath path, Line2 a, Line2 b) =>
        path.Crossing(a) is { } p && path.Crossing(b) is { } q ? GoingFacts.Between(p, q) : 0;

    private static Line2 Line(PickBench bench, TurnPlan turn, int k)
    {
        var riser = bench.Plan.Riser(k);
        return Line2.Between(turn.Frame.Local(TurnPlaces.Near(bench.Plan, turn, riser)), turn.Frame.Local(TurnPlaces.Far(bench.Plan, turn, riser)));
    }
}
