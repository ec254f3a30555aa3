using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>
/// Where the bench marks stand on a part: the face side's loop with its tail on the arris of the face edge, the face edge's tick with its point on that arris, and the
/// piece's own mark in letters beside the loop. As near mid-length as the cuts leave room, as large as they leave room.
/// </summary>
/// <param name="Side">The loop.</param>
/// <param name="Edge">The tick.</param>
/// <param name="Letters">The letters; null where nothing is left to write on.</param>
internal sealed record BenchPlaces(BenchPlace Side, BenchPlace Edge, BenchPlace? Letters)
{
    /// <summary>Heights of the loop that are tried, mm of timber: a pencilled one first.</summary>
    private static readonly double[] Heights = [78, 62, 50, 40, 31, 23, 16, 11, 7];

    /// <summary>The places on a part.</summary>
    public static BenchPlaces Of(Part part)
    {
        var edges = BenchEdge.Of(part);
        var clear = new ClearWood(part);
        foreach (var lettered in new[] { true, false })
        {
            foreach (var height in Heights)
            {
                var places = edges.SelectMany(e => Stations(e).Select(s => (Edge: e, Station: s))).OrderBy(p => p.Edge.At(p.Station).DistanceTo(p.Edge.Face.Outline.Bounds.Centre));
                foreach (var (edge, station) in places)
                    if (Fits(clear, edge, station, height, lettered ? WidthOf(part.Mark, height) : 0)) return Make(part, edge, station, height, lettered);
            }
        }
        var longest = edges.MaxBy(e => e.From.DistanceTo(e.To))!;
        return Make(part, longest, longest.From.DistanceTo(longest.To) / 2, Heights[^1], false);
    }

    private static IEnumerable<double> Stations(BenchEdge edge)
    {
        var length = edge.From.DistanceTo(edge.To);
        for (var s = 5.0; s < length - 5; s += 10) yield return s;
    }

    private static double WidthOf(string letters, double height) => 0.75 * height * 0.7 * letters.Length;

    /// <summary>Room for the loop, the letters after it, and the tick on the other side of the arris.</summary>
    private static bool Fits(ClearWood clear, BenchEdge edge, double station, double height, double letters)
    {
        var (at, right, up) = (edge.At(station), edge.Inward.Right, edge.Inward);
        return clear.Holds(edge.Face, at - 0.25 * height * right + 2 * up, right, up, 0.85 * height + (letters > 0 ? 0.3 * height + letters : 0), height)
            && (edge.Edge is not { } other || clear.Holds(other, OnOther(edge, other, at), new(0, 1), AwayFromArris(edge, other), 0.7 * height, 0.7 * height));
    }

    private static Point2 OnOther(BenchEdge edge, PartFace other, Point2 at) => other.Frame.ToLocal(edge.Face.Frame.ToWorld(at)).Face + 2 * AwayFromArris(edge, other) - new Vector2(0, 0.35 * 78);

    private static Vector2 AwayFromArris(BenchEdge edge, PartFace other) => other.Frame.ToLocal(edge.Face.Frame.ToWorld(edge.From)).Face.X > other.Outline.Bounds.Centre.X ? new(-1, 0) : new(1, 0);

    private static BenchPlaces Make(Part part, BenchEdge edge, double station, double height, bool lettered)
    {
        var (frame, home) = (edge.Face.Frame, part.FaceSide.Frame);
        var at = edge.At(station);
        var tick = edge.Round > 0
            ? Place(frame.ToWorld(at), -1 * edge.Inward.Right, -1 * edge.Inward, frame, Math.Min(0.7 * height, 2 * edge.Round), edge.Round)
            : new(PointIn(home, frame.ToWorld(at)), DirectionIn(home, OnFace(edge.Inward.Left)), DirectionIn(home, -frame.W), Math.Min(0.7 * height, 0.75 * edge.Thickness));
        return new(Place(frame.ToWorld(at), edge.Inward.Right, edge.Inward, frame, height), tick, lettered ? Letters() : null);

        Vector3 OnFace(Vector2 v) => v.X * frame.U + v.Y * frame.V;

        BenchPlace Place(Point3 world, Vector2 right, Vector2 up, Frame3 on, double high, double round = 0) =>
            new(PointIn(home, world), DirectionIn(home, right.X * on.U + right.Y * on.V), DirectionIn(home, up.X * on.U + up.Y * on.V), high, round);

        // Upright as one looks at the face; along a post they read from the foot up.
        BenchPlace Letters()
        {
            var (high, width) = (0.7 * height, WidthOf(part.Mark, height));
            var (right, up) = (edge.Inward.Right, edge.Inward);
            var corner = at + 0.9 * height * right + 0.15 * height * up;
            var stands = up.Y > 0.3 || (Math.Abs(up.Y) <= 0.3 && right.Y > 0);
            return stands ? Place(frame.ToWorld(corner), right, up, frame, high) : Place(frame.ToWorld(corner + width * right + high * up), -1 * right, -1 * up, frame, high);
        }
    }

    private static Point3 PointIn(Frame3 frame, Point3 world)
    {
        var (face, w) = frame.ToLocal(world);
        return new(face.X, face.Y, w);
    }

    private static Vector3 DirectionIn(Frame3 frame, Vector3 d) => new(d.Dot(frame.U), d.Dot(frame.V), d.Dot(frame.W));
}
