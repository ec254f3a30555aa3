using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// Lays a stock board over a string's outline: of the given directions, and of all places across, the one that leaves the least area outside; ties go to the
/// first direction. What lies outside is jointed up (setting-out.md 3).
/// </summary>
internal static class BoardBand
{
    private const double Hair = 0.02;

    public static Blank Lay(Path2 outline, double width, double thickness, IReadOnlyList<Vector2> directions)
    {
        var ring = outline.Flattened(0.05);
        var (best, at, grain) = (double.PositiveInfinity, 0.0, directions[0]);
        foreach (var direction in directions)
        {
            var across = ring.Select(p => direction.Cross(p - Point2.Origin)).Order().ToList();
            // The least lies where an edge of the band passes through a corner of the outline.
            foreach (var bottom in across.Select(q => q).Concat(across.Select(q => q - width)))
            {
                if (bottom > across[^1] || bottom + width < across[0]) continue;
                var outside = AreaBelow(ring, direction, bottom) + AreaBelow(ring, -direction, -(bottom + width));
                if (outside >= best - 1e-4) continue;
                (best, at, grain) = (outside, bottom, direction);
            }
        }
        var along = ring.Select(p => grain.Dot(p - Point2.Origin)).ToList();
        var corner = Point2.Origin + along.Min() * grain + at * grain.Left;
        var length = along.Max() - along.Min();
        var blank = new Blank(length, width, thickness, corner, grain, []);
        return best < 1e-3 ? blank : blank with { JointedUp = JointedUp(outline, blank) };
    }

    private static ImmutableArray<JointedPiece> JointedUp(Path2 outline, Blank blank)
    {
        var pieces = ImmutableArray.CreateBuilder<JointedPiece>();
        // A hair wider than the board: an edge of the string that only lies along the board's would string the pieces together.
        var taken = blank with { Length = blank.Length + 2 * Hair, Width = blank.Width + 2 * Hair, Corner = blank.Corner - Hair * (blank.Grain + blank.Grain.Left) };
        foreach (var rest in Region.Difference(outline, taken.Outline).OrderBy(r => r.Bounds.MinX))
        {
            var box = Box2.Of(rest.Flattened().Select(blank.OnBoard));
            if (box.Height < Hair) continue;
            var below = box.MaxY < blank.Width / 2;
            var place = below ? box with { MaxY = 0 } : box with { MinY = blank.Width };
            pieces.Add(new(((char)('a' + pieces.Count)).ToString(), below ? "lower edge" : "upper edge", place, rest));
        }
        return pieces.ToImmutable();
    }

    /// <summary>Area of the part of a polygon to the right of a line (below it, along the direction), without building that part.</summary>
    private static double AreaBelow(IReadOnlyList<Point2> ring, Vector2 along, double level)
    {
        // Clip edge by edge and sum the trapezoids measured down from the line.
        var area = 0.0;
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
        {
            var (a, b) = (along.Cross(ring[i] - Point2.Origin) - level, along.Cross(ring[j] - Point2.Origin) - level);
            if (a >= 0 && b >= 0) continue;
            var (u, v) = (along.Dot(ring[i] - Point2.Origin), along.Dot(ring[j] - Point2.Origin));
            if (a > 0) (u, a) = (u + (v - u) * a / (a - b), 0);
            else if (b > 0) (v, b) = (u + (v - u) * a / (a - b), 0);
            area += (u - v) * (a + b) / 2;
        }
        return Math.Abs(area);
    }
}
