using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Workshop.Pictures;

/// <summary>A wall in plan: a grey band behind its face.</summary>
internal static class WallBand
{
    /// <summary>The marks of a wall.</summary>
    /// <param name="face">Its face on paper, the wall to its left.</param>
    /// <param name="depth">Of the band, mm of paper.</param>
    /// <param name="runOn">How far it goes on past both ends, mm of paper.</param>
    public static IEnumerable<Mark> Draw(Path2 face, double depth, double runOn)
    {
        var points = face.Vertices.Select(v => v.At).ToList();
        points[0] -= runOn * (points[1] - points[0]).Unit;
        points[^1] += runOn * (points[^1] - points[^2]).Unit;
        yield return new FillMark([Path2.Polygon([.. points, .. Beside(points, depth).Reverse()])], 0.28, Layer.Site);
        yield return new StrokeMark(Path2.Polyline(points), PicturePens.Edge, Layer.Site);
    }

    /// <summary>The line moved to its left, corners mitred.</summary>
    private static IEnumerable<Point2> Beside(List<Point2> points, double left)
    {
        var lines = Enumerable.Range(0, points.Count - 1).Select(i => Line2.Between(points[i], points[i + 1]).OffsetLeft(left)).ToList();
        return [lines[0].Through, .. Enumerable.Range(1, lines.Count - 1).Select(i => lines[i - 1].Cross(lines[i]) ?? lines[i].Through), points[^1] + left * lines[^1].Along.Left];
    }
}
