using Rodwright.Geometry;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Tests.Headroom;

/// <summary>Headroom by looking everywhere.</summary>
internal static class Search
{
    /// <summary>The plan of a made-up job; null when it has none.</summary>
    public static StairPlan? TryPlan(this Job job) => Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value;

    /// <summary>Least clearance at places a few mm apart on every surface and along every edge, where the thing hangs over.</summary>
    public static double? Least(HeadroomReport report, Overhead above)
    {
        var last = report.Surfaces[^1].Step;
        double? least = null;
        foreach (var surface in report.Surfaces)
        {
            if (surface.Step == last ? !above.OverUpperFloor : above.IsTrimmer && surface.Step == last - 1) continue;
            var (ring, box) = (Path2.Polygon(surface.Ring), Box2.Of(surface.Ring));
            var well = surface.Step == last || above.Well is not { } corners ? null : Path2.Polygon(corners);
            for (var x = box.MinX + 1; x < box.MaxX; x += 24)
                for (var y = box.MinY + 1; y < box.MaxY; y += 24) Look(new(x, y));
            foreach (var (a, b) in Edges(ring).Concat(well is null ? [] : Edges(well)))
                for (var (s, length) = (0.0, a.DistanceTo(b)); s < length; s += 2)
                    foreach (var aside in new[] { 0.01, -0.01 }) Look(a + s * (b - a).Unit + aside * (b - a).Unit.Left);

            void Look(Point2 p)
            {
                if (!ring.Holds(p) || well is not null && well.Holds(p) != above.Inside) return;
                var clear = above.HeightAt(p) - surface.HeightAt(p);
                if (least is not { } so || clear < so) least = clear;
            }
        }
        return least;
    }

    private static IEnumerable<(Point2, Point2)> Edges(Path2 ring) => Enumerable.Range(0, ring.EdgeCount).Select(i => (ring.Edge(i).From, ring.Edge(i).To));
}
