using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// Lapped dovetails at the corner of two wall strings: tails on the upper string's end, which spread towards its end grain, in sockets in the lower one's end, seen from that end. Tails are set out over the strings' plumb
/// height at the corner, pins between them half as wide as they are at their widest, half a pin at top and bottom.
/// </summary>
/// <param name="Lap">How far the tails reach into the lower string, mm.</param>
/// <param name="Spread">What a tail is wider on each side at its end than at the lower string's face, mm.</param>
/// <param name="Tails">Lower and upper edge of each at its end, from the bottom up, mm above the lower floor.</param>
internal sealed record CornerDovetail(double Lap, double Spread, ImmutableArray<(double Low, double High)> Tails)
{
    // One tail to so much of the height where the job says nothing, mm (common practice).
    private const double Usual = 60;

    /// <summary>The dovetails of a corner; null where it is joined otherwise.</summary>
    public static CornerDovetail? Of(Practice practice, double bottom, double top)
    {
        if (practice.CornerJoint != CornerJoint.Dovetailed) return null;
        var count = practice.CornerTails ?? Math.Max(1, (int)Math.Round((top - bottom) / Usual));
        var pitch = (top - bottom) / count;
        return new(practice.Corner, practice.Corner / practice.CornerSlope, [.. Enumerable.Range(0, count).Select(i => (bottom + (i + 1.0 / 6) * pitch, bottom + (i + 5.0 / 6) * pitch))]);
    }

    /// <summary>The upper string's end from the top down, in (s, z).</summary>
    /// <param name="corner">Station of the lower string's face.</param>
    public IEnumerable<Point2> End(double corner) => Tails.Reverse().SelectMany(t => new Point2[]
    {
        new(corner, t.High - Spread), new(corner - Lap, t.High), new(corner - Lap, t.Low), new(corner, t.Low + Spread),
    });

    /// <summary>The socket of a tail, as deep behind the face as along x, heights along y.</summary>
    public Path2 Socket((double Low, double High) tail) => Path2.Polygon(new Point2(0, tail.Low + Spread), new(Lap, tail.Low), new(Lap, tail.High), new(0, tail.High - Spread));
}
