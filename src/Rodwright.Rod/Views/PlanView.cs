using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>The stair in plan as drawn: footprints, wall faces, nosings, all in the world's x and y.</summary>
public sealed class PlanView
{
    /// <summary>The view of a stair.</summary>
    public PlanView(Stair stair)
    {
        Stair = stair;
        var plan = stair.Plan;
        OuterSide = plan.Riser(1).Outer.X > plan.Riser(1).Inner.X ? 1 : -1;
        Strings = [.. stair.Kit.Strings.Select(b => (b.Part, StringOutline(b.Site, b.Part)))];
        Newels = [.. stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel).Select(p => (p, Footprint.Of(p)))];
        var walls = WallsOf().ToList();
        Walls = [.. walls.Select(w => w.Face)];
        WallParts = [.. walls];
        Nosings = [.. plan.RiserLines.Select(r => (r.Number, Nosing(r)))];
        var box = Box2.Empty;
        foreach (var (_, outline) in Strings.Concat(Newels)) box = box.With(outline.Bounds);
        foreach (var wall in Walls) box = box.With(wall.Bounds);
        foreach (var (_, line) in Nosings) box = box.With(line.Bounds);
        foreach (var riser in plan.RiserLines) box = box.With(riser.Inner).With(riser.Outer);
        Bounds = box;
    }

    /// <summary>The stair.</summary>
    public Stair Stair { get; }

    /// <summary>+1 when the outer side of the first flight lies to the right on paper, -1 to the left.</summary>
    public int OuterSide { get; }

    /// <summary>String boards: what of them is seen, tenons left out.</summary>
    public ImmutableArray<(Part Part, Path2 Outline)> Strings { get; }

    /// <summary>Newels.</summary>
    public ImmutableArray<(Part Part, Path2 Outline)> Newels { get; }

    /// <summary>Faces of the walls behind the strings, each directed so that the wall lies to its left.</summary>
    public ImmutableArray<Path2> Walls { get; }

    /// <summary>Id of the wall that a face of <see cref="Walls"/> belongs to.</summary>
    public string WallOf(int index) => WallParts[index].Id;

    /// <summary>The same walls, with what each belongs to and where they go on.</summary>
    public ImmutableArray<PlanWall> WallParts { get; }

    /// <summary>Nosing lines by riser number, between the boundaries.</summary>
    public ImmutableArray<(int Riser, Path2 Line)> Nosings { get; }

    /// <summary>Everything drawn.</summary>
    public Box2 Bounds { get; }

    private static Path2 StringOutline(StringSite site, Part part)
    {
        var frame = part.FaceSide.Frame;
        var half = part.FaceSide.Outline.Bounds;
        var sense = frame.U.Dot(Vector3.Level(site.Face.Along)) > 0 ? 1 : -1;
        var (low, high) = sense > 0 ? (half.MinX, half.MaxX) : (-half.MaxX, -half.MinX);
        // The newel or the other board covers what goes into it.
        if (site.Lower.Kind is StringEndKind.Newel or StringEndKind.CornerLetIn) low = Math.Max(low, site.Lower.At);
        if (site.Upper.Kind == StringEndKind.Newel) high = Math.Min(high, site.Upper.At);
        return sense > 0 ? Footprint.Upright(part, low, high) : Footprint.Upright(part, -high, -low);
    }

    /// <summary>The walls of each walled side: its faces as far as they hang together, behind the strings that stand against them. A turn's newel parts them.</summary>
    private IEnumerable<PlanWall> WallsOf()
    {
        var (plan, job) = (Stair.Plan, Stair.Job);
        if (job.OuterSide == SideKind.Wall)
            foreach (var wall in Chains(plan.Outer, ThingId.WallOuter, plan.OuterThickness, OuterSide > 0)) yield return wall;
        if (job.InnerSide != SideKind.Wall) yield break;
        foreach (var wall in Chains(plan.Inner, ThingId.WallInner, plan.InnerThickness, OuterSide < 0)) yield return wall;
    }

    private static IEnumerable<PlanWall> Chains(Boundary side, string id, double thickness, bool toTheRight)
    {
        var edges = side.Edges.Where(e => e.Length > Tolerance.Same).ToList();
        for (var i = 0; i < edges.Count; i++)
        {
            if (!IsFace(i)) continue;
            var first = i;
            while (i + 1 < edges.Count && IsFace(i + 1)) i++;
            List<Point2> points = [edges[first].From, .. edges[first..(i + 1)].Select(e => e.To)];
            var (atFoot, atHead) = (first == 0, i == edges.Count - 1);
            if (toTheRight) points.Reverse();
            yield return new(Offset(points, thickness), id, toTheRight ? atHead : atFoot, toTheRight ? atFoot : atHead);
        }

        // The edge of a half landing between its two newels is open.
        bool IsFace(int i) => edges[i].Kind == BoundaryKind.StringFace
            || (edges[i].Kind == BoundaryKind.Wall && !(i > 0 && i + 1 < edges.Count && edges[i - 1].Kind == BoundaryKind.NewelJog && edges[i + 1].Kind == BoundaryKind.NewelJog));
    }

    /// <summary>The line through some points moved to its left, corners mitred.</summary>
    internal static Path2 Offset(IReadOnlyList<Point2> points, double left)
    {
        var lines = Enumerable.Range(0, points.Count - 1).Select(i => Line2.Between(points[i], points[i + 1]).OffsetLeft(left)).ToList();
        var moved = new List<Point2> { lines[0].Through };
        for (var i = 1; i < lines.Count; i++) moved.Add(lines[i - 1].Cross(lines[i]) ?? lines[i].Through);
        moved.Add(points[^1] + left * lines[^1].Along.Left);
        return Path2.Polyline(moved);
    }

    private Path2 Nosing(RiserLine riser)
    {
        var plan = Stair.Plan;
        var front = new Line2(riser.Inner - Stair.Job.Practice.Nosing * riser.Up, riser.Outer - riser.Inner);
        return Path2.Polyline(On(plan.Inner, riser.Inner), On(plan.Outer, riser.Outer));

        Point2 On(Boundary boundary, Point2 near)
        {
            var wanted = front.At(front.Station(near));
            return boundary.Crossings(front).Select(boundary.At).Append(wanted).Where(p => p.DistanceTo(wanted) < 150).MinBy(p => p == wanted ? 149 : p.DistanceTo(wanted));
        }
    }
}
