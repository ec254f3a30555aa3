using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Rod.Views;

/// <summary>The marks a joiner pencils on planed timber: the loop of the face side, whose tail runs to the face edge, and the tick of the face edge.</summary>
public static class BenchMarks
{
    private static readonly Pen Pencil = new(0.25, Dash.None);

    /// <summary>The face side's loop, its tail's end at a point.</summary>
    /// <param name="tail">Where the tail ends: on the face edge when the piece is drawn with one.</param>
    /// <param name="height">mm of paper.</param>
    /// <param name="of">Id of the piece.</param>
    public static StrokeMark FaceSide(Point2 tail, double height = 6, string? of = null)
    {
        var k = height / 6;
        return new(
            new Path2(
                [
                    new(tail), new(tail + k * new Vector2(1.2, 2.6), 0.18), new(tail + k * new Vector2(1.4, 5.4), 0.75), new(tail + k * new Vector2(0.2, 5.2), 0.2),
                    new(tail + k * new Vector2(2.2, 1.6)),
                ],
                false),
            Pencil, Layer.Lettering, of);
    }

    /// <summary>The face edge's tick, its point on the edge.</summary>
    /// <param name="at">The point, on the edge.</param>
    /// <param name="outward">Unit direction out of the piece across that edge.</param>
    /// <param name="height">mm of paper.</param>
    /// <param name="of">Id of the piece.</param>
    public static StrokeMark FaceEdge(Point2 at, Vector2 outward, double height = 4, string? of = null) => new(
        Path2.Polyline(at - height * outward + 0.35 * height * outward.Left, at, at - height * outward - 0.35 * height * outward.Left),
        Pencil, Layer.Lettering, of);
}
