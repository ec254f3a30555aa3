using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>Every piece's sections, worked out once from a plan (left-hand frame).</summary>
public sealed class SectionsOfPlan
{
    // A piece's back meets its face within so much of its riser: four times as far as it lies behind it, and a little, mm.
    private const double NearParts = 4;
    private const double Near = 100;

    // The edges the risers' ends lie on.
    private readonly ImmutableArray<int> inner;
    private readonly ImmutableArray<int> outer;

    /// <summary>Works out the sections of a left-hand plan.</summary>
    public SectionsOfPlan(StairPlan plan)
    {
        var practice = plan.Job.Practice;
        inner = plan.Inner.EdgesOf(plan.RiserLines.Select(r => r.Inner));
        outer = plan.Outer.EdgesOf(plan.RiserLines.Select(r => r.Outer));
        Treads = plan.CarriedSteps.ToImmutableDictionary(k => k, k => TreadOf(plan, k));
        NosingPieces = Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] is StepKind.Landing or StepKind.Floor)
            .ToImmutableDictionary(k => k, k => Find(plan, k, plan.Riser(k), -practice.Nosing, plan.Riser(k), practice.NosingPiece - practice.Nosing));
        Risers = Enumerable.Range(1, plan.Risers).ToImmutableDictionary(k => k, k => RiserOf(plan, k));
        if (plan.RoundedEnds.IsEmpty) return;
        Treads = Treads.SetItem(1, RoundedSections.OfTread(plan, Treads[1]));
        Risers = Risers.SetItem(1, RoundedSections.OfRiser(plan, Risers[1]));
    }

    /// <summary>Treads of carried steps, by step number.</summary>
    public ImmutableDictionary<int, StepSections> Treads { get; }

    /// <summary>Nosing pieces of landings and the upper floor, by step number.</summary>
    public ImmutableDictionary<int, StepSections> NosingPieces { get; }

    /// <summary>Risers, by number.</summary>
    public ImmutableDictionary<int, StepSections> Risers { get; }

    private StepSections TreadOf(StairPlan plan, int k) => Find(plan, k, plan.Riser(k), -plan.Job.Practice.Nosing,
        plan.Riser(k + 1), plan.Job.Practice.RiserOnTread ? plan.Job.Practice.Riser : 0);

    private StepSections Find(StairPlan plan, int k, RiserLine frontRiser, double frontOffset, RiserLine backRiser, double backOffset)
    {
        // The riser line runs inner to outer with "up" on its left.
        var front = frontRiser.Line.OffsetLeft(frontOffset);
        var back = backRiser.Line.OffsetLeft(backOffset);
        return new(k, front, back, frontRiser.Up,
            Between(plan, k, plan.Inner, inner[frontRiser.Number - 1], front, inner[backRiser.Number - 1], backRiser.Inner, back),
            Between(plan, k, plan.Outer, outer[frontRiser.Number - 1], front, outer[backRiser.Number - 1], backRiser.Outer, back));
    }

    /// <summary>The run of sections from where the front line meets the boundary to where the back line does.</summary>
    private static ImmutableArray<Section> Between(StairPlan plan, int step, Boundary boundary, int frontEdge, Line2 front, int backEdge, Point2 backFace, Line2 back)
    {
        var (first, from) = FrontOn(plan, boundary, frontEdge, front);
        var (last, to) = BackOn(boundary, Math.Max(first, backEdge), backFace, back, plan.Steps[step - 1] is StepKind.Landing or StepKind.Floor);
        var sections = ImmutableArray.CreateBuilder<Section>();
        for (var i = first; i <= last; i++)
        {
            var edge = boundary.Edges[i];
            if (edge.Kind == BoundaryKind.NewelJog || edge.Length <= Tolerance.Same) continue;
            sections.Add(new(edge, i == first ? from : 0, i == last ? to : edge.Length, i == first, i == last,
                BoundaryPlaces.On(edge, front) ?? double.NaN, BoundaryPlaces.Sine(edge, front), BoundaryPlaces.Sine(edge, back), edge.Kind is BoundaryKind.Wall or BoundaryKind.WallEnd));
        }
        // A line that meets a corner exactly leaves nothing on the edge beyond it.
        if (sections.Count > 1 && sections[^1].Length < 1e-6)
        {
            sections.RemoveAt(sections.Count - 1);
            sections[^1] = sections[^1] with { HasBack = true };
        }
        if (sections.Count > 1 && sections[0].Length < 1e-6)
        {
            sections.RemoveAt(0);
            sections[0] = sections[0] with { HasFront = true };
        }
        return sections.ToImmutable();
    }

    /// <summary>
    /// The nosing may stand a little in front of the newel's face that takes the step: then it stops in its housing there, which runs out at the arris.
    /// Further out it is notched round the newel and begins on the string.
    /// </summary>
    private static (int Edge, double At) FrontOn(StairPlan plan, Boundary boundary, int edge, Line2 front)
    {
        for (var i = edge; i >= 0; i--)
        {
            var e = boundary.Edges[i];
            if (e.Kind == BoundaryKind.NewelJog || BoundaryPlaces.On(e, front) is not { } at || at > e.Length + Tolerance.Same) continue;
            if (at >= -Tolerance.Same || i == 0) return (i, at);
            // Only where the newel stands far enough proud of the string that its housing does not reach in front of the string's end.
            var afterJog = boundary.Edges[i - 1].Kind == BoundaryKind.NewelJog && (i < 2 || boundary.Edges[i - 2].Kind != BoundaryKind.WallEnd) && boundary.Edges[i - 1].Length >= plan.Job.Practice.NewelHousing;
            if (afterJog && -at <= plan.Job.Practice.NosingPastNewel + Tolerance.Same) return (i, at);
        }
        return (edge, BoundaryPlaces.On(boundary.Edges[edge], front) ?? 0);
    }

    private static (int Edge, double At) BackOn(Boundary boundary, int edge, Point2 backFace, Line2 back, bool isFloor)
    {
        // A later flight's face may lie in the line's way too, but not near the riser it belongs to; and a floor's nosing piece never goes round a corner.
        var near = NearParts * Math.Abs(back.LeftOf(backFace)) + Near;
        for (var i = edge; i < boundary.Edges.Length; i++)
        {
            var e = boundary.Edges[i];
            if (e.Kind == BoundaryKind.NewelJog) continue;
            if (i > edge && (boundary.StartOf(i) - boundary.StationOn(edge, backFace) > near || (isFloor && e.Along.Dot(boundary.Edges[edge].Along) < 0.5))) break;
            if (BoundaryPlaces.On(e, back) is not { } at || at < -Tolerance.Same) continue;
            if (at <= e.Length + Tolerance.Same || i == boundary.Edges.Length - 1) return (i, at);
        }
        return (edge, BoundaryPlaces.On(boundary.Edges[edge], back) ?? boundary.Edges[edge].Length);
    }

    /// <summary>
    /// A riser is let in where its face lands. At an arris of a newel its section runs out; at the corner of the room what passes the corner butts against
    /// the other string.
    /// </summary>
    private StepSections RiserOf(StairPlan plan, int k)
    {
        var line = plan.Riser(k);
        var back = line.Line.OffsetLeft(plan.Job.Practice.Riser);
        return new(k, line.Line, back, line.Up, On(plan.Inner, inner[k - 1], line.Inner), On(plan.Outer, outer[k - 1], line.Outer));

        ImmutableArray<Section> On(Boundary boundary, int i, Point2 face)
        {
            var edge = boundary.Edges[i];
            var from = (face - edge.From).Dot(edge.Along);
            var sine = BoundaryPlaces.Sine(edge, line.Line);
            var to = from + plan.Job.Practice.Riser / sine;
            var bare = edge.Kind is BoundaryKind.Wall or BoundaryKind.WallEnd;
            var next = i + 1 < boundary.Edges.Length ? boundary.Edges[i + 1] : null;
            if (to <= edge.Length || next is not { Kind: BoundaryKind.StringFace or BoundaryKind.Wall } || edge.Kind == BoundaryKind.NewelFace)
                return [new(edge, from, to, true, true, from, sine, sine, bare)];
            var onNext = BoundaryPlaces.On(next, back) ?? 0;
            return [new(edge, from, edge.Length, true, false, from, sine, sine, bare),
                new(next, 0, Math.Max(0, onNext), false, true, double.NaN, BoundaryPlaces.Sine(next, line.Line), BoundaryPlaces.Sine(next, line.Line), true)];
        }
    }
}
