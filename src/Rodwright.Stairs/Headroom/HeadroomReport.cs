using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Headroom;

/// <summary>Headroom of a stair over its whole clear width, its landings and the floors at both ends (setting-out.md 8).</summary>
public sealed record HeadroomReport
{
    // Every clause for it asks anew, and so do the proposals: a plan never changes, so what was measured of it once stands for as long as the plan is held.
    private static readonly ConditionalWeakTable<StairPlan, HeadroomReport> Measured = [];

    /// <summary>Least clearance under each thing above that hangs over the stair at all.</summary>
    public required ImmutableArray<Clearance> Under { get; init; }

    /// <summary>The same on the line joining the middles of the nosings, for rules that measure in the middle of the width.</summary>
    public required ImmutableArray<Clearance> InMiddle { get; init; }

    /// <summary>How far the well's edge stands in front of the last nosing, so that floor would lie on the top step, mm; 0 when the stair arrives freely.</summary>
    public required double ArrivalCovered { get; init; }

    /// <summary>The surfaces it was measured from.</summary>
    public required ImmutableArray<WalkedSurface> Surfaces { get; init; }

    /// <summary>What is above.</summary>
    public required ImmutableArray<Overhead> Above { get; init; }

    /// <summary>The least of all; null when nothing was measured above the stair.</summary>
    public Clearance? Least => Under.MinBy(c => c.Least);

    /// <summary>The headroom of a plan; null when nothing above it was measured.</summary>
    public static HeadroomReport? Of(StairPlan plan) => plan.Job.Survey.HasOverhead ? Measured.GetValue(plan, Measure) : null;

    private static HeadroomReport Measure(StairPlan plan)
    {
        var frame = RoomFrame.Of(plan);
        return Of(plan, frame, Overheads.Of(plan, frame));
    }

    internal static HeadroomReport Of(StairPlan plan, RoomFrame frame, ImmutableArray<Overhead> above)
    {
        var foot = frame.From is { } from && plan.Job.Survey.Place.Wall == 1 ? Math.Clamp(from - plan.Job.Practice.Nosing, 0, plan.ClearWidth) : plan.ClearWidth;
        var surfaces = WalkedSurfaces.Of(plan, foot);
        return new()
        {
            Surfaces = surfaces,
            Above = above,
            Under = [.. above.Select(o => LeastUnder(surfaces, o, plan.Risers, middle: false)).OfType<Clearance>()],
            InMiddle = [.. above.Select(o => LeastUnder(surfaces, o, plan.Risers, middle: true)).OfType<Clearance>()],
            ArrivalCovered = Covered(surfaces, above, plan.Risers),
        };
    }

    /// <summary>
    /// The least clearance under one thing. The pitch surface is a plane or rises with an angle, and what is above is a plane: both are harmonic, and so is their difference. It has
    /// no least value inside an area: the least lies on the boundary, at an end of an edge or where <see cref="WalkedSurface.Turning"/> says.
    /// </summary>
    internal static Clearance? LeastUnder(ImmutableArray<WalkedSurface> surfaces, Overhead above, int risers, bool middle)
    {
        Clearance? least = null;
        foreach (var surface in surfaces)
        {
            if (!HangsOver(above, surface, risers)) continue;
            var (ring, inside) = surface.Step == risers ? (null, true) : (Well(above), above.Inside);
            var edges = middle ? Ring.Pieces(surface.MiddleFrom, surface.MiddleTo, ring, inside) : Ring.Edges(surface.Ring, ring, inside);
            foreach (var (a, b) in edges)
            {
                foreach (var p in surface.Turning(above.Gradient, a, b))
                {
                    var clear = above.HeightAt(p) - surface.HeightAt(p);
                    if (least is null || clear < least.Least - Tolerance.Same) least = new(clear, p, surface.Step, above);
                }
            }
        }
        return least;
    }

    /// <summary>The floor round the well lies beside the top step, not over it; <see cref="ArrivalCovered"/> says when it lies on it.</summary>
    internal static bool HangsOver(Overhead above, WalkedSurface surface, int risers) =>
        surface.Step == risers ? above.OverUpperFloor : !(above.IsTrimmer && surface.Step == risers - 1);

    internal static IReadOnlyList<Point2>? Well(Overhead above) => above.Well is { } ring ? ring : null;

    private static double Covered(ImmutableArray<WalkedSurface> surfaces, ImmutableArray<Overhead> above, int risers)
    {
        if (above.FirstOrDefault(o => o.IsTrimmer) is not { } trimmer || surfaces.FirstOrDefault(s => s.Step == risers - 1) is not { } top || surfaces[^1] is not { } floor) return 0;
        var ends = Ring.Edges(top.Ring, Well(trimmer), false).SelectMany(e => new[] { e.A, e.B });
        var nosing = new Line2(floor.MiddleFrom, (floor.MiddleTo - floor.MiddleFrom).Right);
        return ends.Select(p => -nosing.LeftOf(p)).DefaultIfEmpty(0).Max() is var deep && deep > 0.5 ? deep : 0;
    }
}
