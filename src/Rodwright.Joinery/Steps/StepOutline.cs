using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>
/// The plan outline of a tread or nosing piece: between its front and back lines, carried square into strings and newels by the depth of the housings
/// (the rule of ends, setting-out.md 4), notched round the newel, the corner square of the room left out.
/// </summary>
internal static class StepOutline
{
    /// <summary>The outline in plan, anticlockwise from the inner end of the front edge.</summary>
    public static Path2 OfTread(StepSections piece, Practice practice)
    {
        var points = new List<Point2>();
        points.AddRange(Side(piece, piece.Outer, practice, inner: false));
        points.AddRange(Side(piece, piece.Inner, practice, inner: true).Reverse());
        Vertex2[] outline = [.. Tidied(points).Select(p => new Vertex2(p))];
        // In place of the point on the newel's face the whole line of a rounded end, from there to its spring; the outer one the other way.
        if (piece.InnerEnd is { } inner) outline = [.. outline[..^1], .. inner.Line(practice.Nosing).Vertices];
        if (piece.OuterEnd is { } outer) outline = [.. outer.Line(practice.Nosing).Reversed().Vertices, .. outline[1..]];
        return new(outline, true);
    }

    /// <summary>How deep a piece is let into an edge, mm.</summary>
    public static double DepthInto(Section section, Practice practice) => section.Butts ? 0 : section.Edge.Kind switch
    {
        BoundaryKind.StringFace => practice.Housing,
        BoundaryKind.NewelFace => practice.NewelHousing,
        _ => 0,
    };

    /// <summary>Unit direction out of the stair, into whatever carries the edge.</summary>
    public static Vector2 Into(BoundaryEdge edge, bool inner) => inner ? edge.Along.Left : edge.Along.Right;

    private static IEnumerable<Point2> Side(StepSections piece, IReadOnlyList<Section> sections, Practice practice, bool inner)
    {
        for (var i = 0; i < sections.Count; i++)
        {
            var section = sections[i];
            var edge = section.Edge;
            var into = DepthInto(section, practice) * Into(edge, inner);
            var (from, to) = (edge.From + section.From * edge.Along, edge.From + section.To * edge.Along);
            if (section.HasFront) yield return from;
            yield return from + into;
            // A back line that meets a newel's arris itself runs on inside it: the riser behind comes in by the next face.
            var atArris = section.HasBack && edge.Kind == BoundaryKind.NewelFace && Tolerance.IsSame(section.To, edge.Length);
            yield return atArris && piece.Back.Cross(new(to + into, edge.Along)) is { } inside ? inside : to + into;
            if (section.HasBack) yield return to;
            if (i + 1 == sections.Count) continue;
            var next = sections[i + 1];
            var nextInto = DepthInto(next, practice) * Into(next.Edge, inner);
            var begins = next.Edge.From + next.From * next.Edge.Along;
            if (!to.IsSame(begins))
            {
                // A jog lies between, and the edge follows it by itself; round a newel in an outer corner it follows the newel's two faces.
                if (Math.Abs(edge.Along.Cross(next.Edge.Along)) < 0.5 || edge.Kind != BoundaryKind.StringFace || next.Edge.Kind != BoundaryKind.StringFace) continue;
                var out1 = (begins - to).Dot(next.Edge.Along) * next.Edge.Along;
                yield return to;
                yield return to + out1;
                yield return begins;
                continue;
            }
            var carrierIsConvex = edge.Along.Cross(next.Edge.Along) > 0 == inner;
            // Round a newel's arris the two depths run together; in the corner of the room the square between them is left out.
            yield return carrierIsConvex ? to + into + nextInto : to;
        }
    }

    /// <summary>Repeated points and points in line dropped; a point that doubles back (the newel's arris) is dropped with its spur.</summary>
    private static List<Point2> Tidied(List<Point2> points)
    {
        var changed = true;
        while (changed)
        {
            changed = false;
            for (var i = 0; i < points.Count && points.Count > 3; i++)
            {
                var before = points[(i + points.Count - 1) % points.Count];
                var after = points[(i + 1) % points.Count];
                var (a, b) = (points[i] - before, after - points[i]);
                if (a.Length > Tolerance.Same && b.Length > Tolerance.Same && Math.Abs(a.Unit.Cross(b.Unit)) > 1e-10) continue;
                points.RemoveAt(i--);
                changed = true;
            }
        }
        return points;
    }
}
