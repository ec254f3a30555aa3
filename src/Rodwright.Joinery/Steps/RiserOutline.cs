using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Steps;

/// <summary>
/// The plan outline of a riser: a flat board between its face and its back, each end bevelled parallel to the face it enters and eased to stay within the
/// square housing (the rule of ends, setting-out.md 4).
/// </summary>
internal static class RiserOutline
{
    /// <summary>One end of a riser.</summary>
    /// <param name="Points">Its outline from the riser's face round to its back.</param>
    /// <param name="Left">Thickness left at full depth: t/cos a - d tan a, mm.</param>
    /// <param name="Bevel">a, the angle between the riser and the face's normal.</param>
    /// <param name="Reach">How far it enters: the housing's depth, or less where it runs out to a point.</param>
    public sealed record End(IReadOnlyList<Point2> Points, double Left, Angle Bevel, double Reach);

    /// <summary>The outline in plan, anticlockwise, and its two ends.</summary>
    public static (Path2 Outline, End Inner, End Outer) Of(StepSections riser, Practice practice)
    {
        var inner = EndAt(riser, riser.Inner, practice, inner: true);
        var outer = EndAt(riser, riser.Outer, practice, inner: false);
        return (Path2.Polygon([.. outer.Points, .. inner.Points.Reverse()]), inner, outer);
    }

    /// <summary>One end by itself.</summary>
    public static End EndAt(StepSections riser, IReadOnlyList<Section> sections, Practice practice, bool inner)
    {
        var section = sections[0];
        var edge = section.Edge;
        var depth = StepOutline.DepthInto(section, practice);
        var into = StepOutline.Into(edge, inner);
        var (face, end) = (edge.From + section.From * edge.Along, edge.From + section.To * edge.Along);
        var along = inner ? -riser.Front.Along : riser.Front.Along;
        var (cos, drift) = (along.Dot(into), along.Dot(edge.Along));
        var tan = drift / cos;
        var bevel = Angle.FromRadians(Math.Abs(Angle.Atan(tan)));
        if (section.Butts || depth == 0) return new([face, end], section.Length, bevel, 0);
        var left = section.Length - depth * Math.Abs(tan);
        // A riser so slanted that nothing is left at full depth runs out to a point before it.
        var reach = left > 0 ? depth : section.Length / Math.Abs(tan);
        var shift = reach * tan;
        var points = new List<Point2> { face };
        points.Add(face + reach * into + (shift > 0 ? shift : 0) * edge.Along);
        if (left > 0 || !section.HasBack) points.Add(end + reach * into + (shift < 0 && section.HasBack ? shift : 0) * edge.Along);
        points.Add(end);
        if (sections.Count > 1 && sections[1].Length > Tolerance.Same) points.Add(sections[1].Edge.From + sections[1].To * sections[1].Edge.Along);
        return new(Dedupe(points), left, bevel, reach);
    }

    private static List<Point2> Dedupe(List<Point2> points)
    {
        for (var i = points.Count - 1; i > 0; i--) if (points[i].IsSame(points[i - 1])) points.RemoveAt(i);
        return points;
    }
}
