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

    /// <summary>Areas nearer than this are the same, square mm.</summary>
    private const double Less = 1e-4;

    public static Blank Lay(Path2 outline, double width, double thickness, IReadOnlyList<Vector2> directions)
    {
        var ring = outline.Flattened(0.05);
        var (best, at, grain) = (double.PositiveInfinity, 0.0, directions[0]);
        var (u, v) = (new double[ring.Count], new double[ring.Count]);
        foreach (var direction in directions)
        {
            for (var i = 0; i < u.Length; i++) (u[i], v[i]) = (direction.Dot(ring[i] - Point2.Origin), direction.Cross(ring[i] - Point2.Origin));
            double[] across = [.. v.Order()];
            // The least lies where an edge of the band passes through a corner of the outline.
            for (var i = 0; i < 2 * across.Length; i++)
            {
                // Once nothing lies outside no other place is better.
                if (best <= Less) break;
                var bottom = i < across.Length ? across[i] : across[i - across.Length] - width;
                if (bottom > across[^1] || bottom + width < across[0]) continue;
                var outside = AreaBelow(u, v, 1, bottom) + AreaBelow(u, v, -1, -(bottom + width));
                if (outside >= best - Less) continue;
                (best, at, grain) = (outside, bottom, direction);
            }
        }
        var along = ring.Select(p => grain.Dot(p - Point2.Origin)).ToList();
        var corner = Point2.Origin + along.Min() * grain + at * grain.Left;
        var length = along.Max() - along.Min();
        var blank = new Blank(length, width, thickness, corner, grain, []);
        return best < 1e-3 || !Region.IsSimple(outline) ? blank : blank with { JointedUp = JointedUp(outline, blank) };
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

    /// <summary>Area of the part of a polygon below a line, without building that part: of the polygon turned half round for a <paramref name="sign"/> of -1.</summary>
    /// <param name="u">Of each corner, along the line.</param>
    /// <param name="v">Of each corner, across it.</param>
    private static double AreaBelow(double[] u, double[] v, double sign, double level)
    {
        // Clip edge by edge and sum the trapezoids measured down from the line.
        var area = 0.0;
        for (int i = u.Length - 1, j = 0; j < u.Length; i = j++)
        {
            var (a, b) = (sign * v[i] - level, sign * v[j] - level);
            if (a >= 0 && b >= 0) continue;
            var (from, to) = (sign * u[i], sign * u[j]);
            if (a > 0) (from, a) = (from + (to - from) * a / (a - b), 0);
            else if (b > 0) (to, b) = (from + (to - from) * a / (a - b), 0);
            area += (from - to) * (a + b) / 2;
        }
        return Math.Abs(area);
    }
}
