using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
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
        OuterSide = plan.IsMirrored ? -1 : 1;
        Strings = [.. stair.Kit.Strings.Select(b => (b.Part, StringOutline(b.Site, b.Part)))];
        Newels = [.. stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel).Select(p => (p, Footprint.Of(p)))];
        WallParts = PlanWall.Of(plan);
        Walls = [.. WallParts.Select(w => w.Face)];
        Nosings = [.. plan.RiserLines.Select(r => (r.Number, Nosing(r)))];
        var box = plan.WalkingLine.Bounds;
        foreach (var (_, outline) in Strings.Concat(Newels)) box = box.With(outline.Bounds);
        foreach (var wall in Walls) box = box.With(wall.Bounds);
        foreach (var (_, line) in Nosings) box = box.With(line.Bounds);
        foreach (var riser in plan.RiserLines) box = box.With(plan.FaceOf(riser).Bounds);
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
        if (riser.Number == 1 && !plan.RoundedEnds.IsEmpty) return plan.FaceOf(riser, Stair.Job.Practice.Nosing);
        var front = new Line2(riser.Inner - Stair.Job.Practice.Nosing * riser.Up, riser.Outer - riser.Inner);
        return Path2.Polyline(On(plan.Inner, riser.Inner), On(plan.Outer, riser.Outer));

        Point2 On(Boundary boundary, Point2 near)
        {
            var wanted = front.At(front.Station(near));
            return boundary.Crossings(front).Select(boundary.At).Append(wanted).Where(p => p.DistanceTo(wanted) < 150).MinBy(p => p == wanted ? 149 : p.DistanceTo(wanted));
        }
    }
}
