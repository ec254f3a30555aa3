using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Balustrades;

/// <summary>The nosings and landings that a handrail over or beside a string runs over.</summary>
internal static class NosingsAlong
{
    /// <summary>Riser (0 for a landing's floor), station along the string's face and height of each, from the bottom up.</summary>
    public static IReadOnlyList<(int Riser, Point2 At)> Of(StairPlan plan, StringSite site)
    {
        var found = new List<(int, Point2)>();
        var practice = plan.Job.Practice;
        var (from, to) = site.Reach;
        for (var k = site.FirstRiser; k <= site.LastRiser; k++)
        {
            var riser = plan.Riser(k);
            var end = site.Inner ? riser.Inner : riser.Outer;
            var climbs = riser.Up.Dot(site.Face.Along);
            // Within a newel's reach of the face: a riser that ends on the newel counts for the string beside it.
            if (climbs < 0.05 || Math.Abs(site.Face.LeftOf(end)) > practice.Newel / 2 + 1) continue;
            var nosing = new Line2(end - practice.Nosing * riser.Up, riser.Line.Along);
            if (nosing.Cross(site.Face) is not { } crossing) continue;
            var s = site.Face.Station(crossing);
            var isSquare = climbs > 1 - 1e-9;
            if (isSquare ? s < from - 2 * practice.Newel || s > to + 2 * practice.Newel : s < from || s > to) continue;
            // Where a landing lies before the first riser, or behind the last one, the rail runs over its floor too.
            if (found.Count == 0 && k > 1 && plan.Steps[k - 2] == StepKind.Landing && s > from + 1) found.Add((0, new(from, (k - 1) * plan.Rise)));
            found.Add((k, new(s, k * plan.Rise)));
            if (k == site.LastRiser && plan.Steps[k - 1] == StepKind.Landing && s < to - 1) found.Add((0, new(to, k * plan.Rise)));
        }
        return found;
    }
}
