using Rodwright.Geometry;

namespace Rodwright.Rod.Views;

/// <summary>How a line ends, for an arrow head: a walking line may end on its arc, with a last edge of no length.</summary>
internal static class PathEnd
{
    /// <summary>The last point and the unit direction in which the line reaches it.</summary>
    public static (Point2 Tip, Vector2 Along) Of(Path2 line)
    {
        var points = line.Flattened(0.02);
        var tip = points[^1];
        for (var i = points.Count - 2; i >= 0; i--)
            if (points[i].DistanceTo(tip) > 1e-6) return (tip, (tip - points[i]).Unit);
        return (tip, new(0, 1));
    }
}
