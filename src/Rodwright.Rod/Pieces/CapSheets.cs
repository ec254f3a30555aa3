using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>Newel caps: each shape in front view and in plan, its recess hidden.</summary>
internal static class CapSheets
{
    public static IEnumerable<Sheet> Make(RodJob rod)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.NewelCap));
        return groups.IsEmpty ? [] : RowFlow.Sheets(rod, new("newel-caps", "Newel caps", "newel caps", "", ""), l => [.. groups.Select(g => Row(rod, g, l))],
            "Front view on the left, plan on the right, front edge at the bottom. Along from the left arris, up from the underside. Hidden lines: the recess for the newel's head.");
    }

    private static PieceRow Row(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var (part, units) = (group.First, rod.Units);
        var front = part.FaceSide.Outline.Bounds;
        var remarks = string.Join("; ", RailRemarks.Of(rod.Stair, part));
        return new(group.Marks, $"{PartsList.NameOf(group)}, {Number.Print(group.Parts.Length, 0)} of {units.Print(front.Width)} by {units.Print(part.FaceSide.Thickness)} by {units.Print(front.Height)} high; {remarks}",
            [.. group.Parts.Select(p => p.Id)],
            new(2 * front.Width, Math.Max(front.Height, part.FaceSide.Thickness), Apart(lettering), Apart(lettering), 1, lettering.OrdinateStrip(6)),
            place => Draw(place, part, lettering));
    }

    /// <summary>Paper between front view and plan: room for the plan's figures, mm.</summary>
    private static double Apart(SheetLettering lettering) => lettering.OrdinateStrip(6) + 4;

    private static IEnumerable<Mark> Draw(Placement corner, Part part, SheetLettering lettering)
    {
        var (front, deep) = (part.FaceSide.Outline.Bounds, part.FaceSide.Thickness);
        var place = new Placement(corner.Scale, new(front.MinX, 0), corner.PaperOrigin);
        var plan = new Placement(corner.Scale, new(front.MinX, 0), corner.PaperOrigin + (corner.Scale.Factor * front.Width + Apart(lettering)) * new Vector2(1, 0));
        var recess = part.Cuts.FirstOrDefault(c => c.Kind == CutKind.Recess);
        yield return place.Stroke(part.FaceSide.Outline, Pens.Outline, Layer.OutlineToCut, part.Id);
        yield return plan.Stroke(Path2.Rectangle(front.MinX, 0, front.MaxX, deep), Pens.Outline, Layer.OutlineToCut, part.Id);
        if (recess is not null)
        {
            var box = recess.Shape.Bounds;
            yield return place.Stroke(recess.Shape, Pens.Hidden, Layer.Hidden, part.Id);
            yield return plan.Stroke(Path2.Rectangle(box.MinX, recess.Beneath, box.MaxX, recess.Depth), Pens.Hidden, Layer.Hidden, part.Id);
        }
        if (part.Faces.Length > 1)
        {
            // The pyramid's hips run from the corners to the middle of the whole cap: over half a newel, to the middle of its back.
            var top = new Point2((front.MinX + front.MaxX) / 2, Math.Abs(deep - front.Width) < Tolerance.Joint ? deep / 2 : deep);
            foreach (var foot in (Point2[])[new(front.MinX, 0), new(front.MaxX, 0), new(front.MaxX, deep), new(front.MinX, deep)])
                if (foot.Y < Tolerance.Joint || top.Y < deep) yield return plan.Stroke(Path2.Polyline(foot, top), Pens.Visible, Layer.Visible, part.Id);
            var edge = part.FaceSide.Outline.Vertices.Where(v => Math.Abs(v.At.X - front.MaxX) < Tolerance.Joint).Max(v => v.At.Y);
            yield return place.Stroke(Path2.Polyline(new Point2(front.MinX, edge), new(front.MaxX, edge)), Pens.Visible, Layer.Visible, part.Id);
        }
        double[] along = recess is null ? [front.MinX, front.MaxX] : [front.MinX, recess.Shape.Bounds.MinX, recess.Shape.Bounds.MaxX, front.MaxX];
        var foot0 = place.Map(new Point2(front.MinX, 0));
        foreach (var m in RunningDimension.Draw(along.Select(x => new DimensionStop(place.Map(new Point2(x, 0)), x - front.MinX)), new(new(0, foot0.Y - 3), new(1, 0)), lettering.Dimensions)) yield return m;
        var up = part.FaceSide.Outline.Vertices.Select(v => v.At.Y).Concat(recess is null ? [] : [recess.Shape.Bounds.MaxY]).Distinct().Order().ToList();
        foreach (var m in RunningDimension.Draw(up.Select(y => new DimensionStop(place.Map(new Point2(front.MinX, y)), y)), new(new(foot0.X - 3, 0), new(0, 1)), lettering.Dimensions)) yield return m;
        var foot1 = plan.Map(new Point2(front.MinX, 0));
        double[] back = recess is null ? [0, deep] : [0, recess.Beneath, Math.Min(deep, recess.Depth), deep];
        foreach (var m in RunningDimension.Draw(back.Distinct().Select(y => new DimensionStop(plan.Map(new Point2(front.MinX, y)), y)), new(new(foot1.X - 3, 0), new(0, 1)), lettering.Dimensions)) yield return m;
    }
}
