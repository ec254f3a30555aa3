using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Pieces;

/// <summary>A rounded bottom step: each end in plan with its block, bent riser and wedges, and the riser as a flat board before it is bent.</summary>
internal static class BottomStepSheets
{
    private const double Beyond = 30; // of the step past the block's lap that is drawn, mm of timber
    private const double EdgeApart = 4; // of the top edge above the face, mm of paper

    public static IEnumerable<Sheet> Make(RodJob rod)
    {
        if (rod.Stair.Plan.RoundedEnds.IsEmpty) return [];
        var step = rod.Stair.Job.BottomStep;
        return RowFlow.Sheets(rod, new("bottom-step", "Bottom step", "bottom step", "", "Seen from above"), l => [.. rod.Stair.Plan.RoundedEnds.Select(e => EndRow(rod, e, l)), BoardRow(rod, l)],
            $"The end seen from above without its tread, whose edge is shown broken. Thin the riser to {rod.Units.Print(step.Veneer)} from the shoulder to its end; glue it round the block from the newel's end on, screw it "
            + "there, and draw it tight with the wedges; then screw the block to the full thickness. Square its end to the newel's face when the glue has set. The board's length is measured in the middle of the veneer: try the "
            + "veneer dry round the block before the glue, and leave the end long.");
    }

    private static PieceRow EndRow(RodJob rod, RoundedEnd end, SheetLettering lettering)
    {
        var (job, kit) = (rod.Stair.Job, rod.Stair.Kit);
        var side = end.Inner ? "" : "-outer";
        var (block, wedges) = (kit.Find("block-1" + side), kit.Find("wedges-1" + side));
        var layers = BlockLayers.Of(job.BottomStep, block);
        var box = Footprint.Of(block).Bounds.With(end.Line(job.Practice.Nosing).Bounds).With(Footprint.Of(kit.Find(end.Newel)).Bounds);
        box = end.Out.X < 0 ? box with { MaxX = box.MaxX + Beyond } : box with { MinX = box.MinX - Beyond };
        return new($"{block.Mark}, {wedges.Mark}",
            $"{block.Name}, {Number.Print(layers.Count, 0)} layers of {rod.Units.Print(layers.Thickness)}, grain crossing; riser's face R {rod.Units.Print(end.Radius)}, block R {rod.Units.Print(end.Radius - job.BottomStep.Veneer)}, "
            + $"nosing R {rod.Units.Print(end.Radius + job.Practice.Nosing)}; {wedges.Name}, in a slot of {rod.Units.Print(job.BottomStep.Wedges)}",
            [block.Id, wedges.Id],
            new(box.Width, box.Height, lettering.OrdinateStrip(6), 3, 1, lettering.OrdinateStrip(6)),
            corner => DrawEnd(rod, end, new(corner.Scale, new(box.MinX, box.MinY), corner.PaperOrigin), box, lettering));
    }

    private static IEnumerable<Mark> DrawEnd(RodJob rod, RoundedEnd end, Placement place, Box2 box, SheetLettering lettering)
    {
        var (job, kit, view) = (rod.Stair.Job, rod.Stair.Kit, new PlanView(rod.Stair));
        var side = end.Inner ? "" : "-outer";
        var (block, wedges) = (kit.Find("block-1" + side), kit.Find("wedges-1" + side));
        var window = place.Map(box);
        var lines = new List<Mark>();
        var slot = place.Map(Footprint.Of(wedges));
        lines.AddRange(Hatch.Lines([slot], 1, Angle.FromDegrees(45), Layer.Visible, of: wedges.Id));
        lines.Add(place.Stroke(Footprint.Of(block), Pens.Outline, Layer.OutlineToCut, block.Id));
        lines.Add(new StrokeMark(slot, Pens.Visible, Layer.Visible, wedges.Id));
        lines.Add(place.Stroke(Footprint.Of(kit.Find("riser-1")), Pens.Outline, Layer.OutlineToCut, "riser-1"));
        lines.Add(place.Stroke(Footprint.Of(kit.Find("tread-1")), Pens.Hidden, Layer.Hidden, "tread-1"));
        var newel = view.Newels.First(n => n.Part.Id == end.Newel);
        lines.Add(new FillMark([place.Map(newel.Outline)], 0, Layer.Visible, end.Newel));
        lines.Add(place.Stroke(newel.Outline, Pens.Outline, Layer.Visible, end.Newel));
        lines.Add(StrokeMark.Line(place.Map(end.Centre - 6 / place.Scale.Factor * end.Out), place.Map(end.Centre + 6 / place.Scale.Factor * end.Out), Pens.Centre, Layer.Centre));
        lines.Add(StrokeMark.Line(place.Map(end.Centre - new Vector2(0, 6 / place.Scale.Factor)), place.Map(end.Centre + new Vector2(0, 6 / place.Scale.Factor)), Pens.Centre, Layer.Centre));
        yield return new ClipMark(window, lines);
        foreach (var (mark, within) in new[] { (block.Mark, Footprint.Of(block).Bounds), (newel.Part.Mark, newel.Outline.Bounds) })
        {
            var (text, height) = TextFit.Within(mark, place.Map(within).Width - 2, lettering.Mark, bold: true);
            yield return new TextMark(place.Map(within.Centre), text, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: true);
        }
        // From the nosing of the return towards the stair; up from the nosing in front.
        var (practice, step) = (job.Practice, job.BottomStep);
        var edge = end.Line(practice.Nosing).Vertices[0].At;
        var shoulder = Footprint.Of(wedges).Vertices.Min(v => (v.At - edge).Dot(end.Out));
        double[] across = [0, practice.Nosing, practice.Nosing + end.Radius, -shoulder - step.Wedges, -shoulder, -shoulder + step.Lap];
        var front = -practice.Nosing;
        double[] up = [front, 0, end.Radius, end.Back, end.Back + practice.Newel / 2];
        foreach (var m in RunningDimension.Draw(across.Distinct().Select(x => new DimensionStop(place.Map(new Point2(edge.X - x * end.Out.X, front)), x)), new(new(0, window.MinY - 3), new(1, 0)), lettering.Dimensions)) yield return m;
        foreach (var m in RunningDimension.Draw(up.Distinct().Select(y => new DimensionStop(place.Map(new Point2(box.MinX, y)), y - front)), new(new(window.MinX - 3, 0), new(0, 1)), lettering.Dimensions)) yield return m;
    }

    private static PieceRow BoardRow(RodJob rod, SheetLettering lettering)
    {
        var riser = rod.Stair.Kit.Find("riser-1");
        var blank = riser.Blank;
        return new(riser.Mark, $"{riser.Name} before it is bent, {riser.Material}, {rod.Units.Print(blank.Length)} by {rod.Units.Print(blank.Width)} by {rod.Units.Print(blank.Thickness)}; above it its top edge, face downwards", [riser.Id],
            new(blank.Length, blank.Width, lettering.OrdinateStrip(6), 3, EdgeApart + blank.Thickness, lettering.OrdinateStrip(6)),
            place => DrawBoard(rod, riser, place, lettering));
    }

    private static IEnumerable<Mark> DrawBoard(RodJob rod, Part riser, Placement place, SheetLettering lettering)
    {
        var flat = FlatRiser.Of(rod.Stair.Plan, riser);
        var (length, height) = (flat.Length, flat.Height);
        yield return place.Stroke(Path2.Rectangle(0, 0, length, height), Pens.Outline, Layer.OutlineToCut, riser.Id);
        foreach (var line in flat.Lines)
            yield return place.Stroke(Path2.Polyline(new Point2(line.X, 0), new Point2(line.X, height)), Pens.Hidden, Layer.Hidden, riser.Id);
        var box = place.Map(new Box2(0, 0, length, height));
        yield return new TextMark(box.Centre, riser.Mark, lettering.Mark, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: true, of: riser.Id);
        // The top edge in its true place along the board; its thickness at the sheet's scale.
        var edge = new Placement(place.Scale, Point2.Origin, new(box.MinX, box.MaxY + EdgeApart - 1));
        yield return edge.Stroke(flat.Edge, Pens.Visible, Layer.Visible, riser.Id);
        double[] along = [0, .. flat.Lines.Select(l => l.X), length];
        foreach (var m in RunningDimension.Draw(along.Select(x => new DimensionStop(place.Map(new Point2(x, 0)), x)), new(new(0, box.MinY - 3), new(1, 0)), lettering.Dimensions)) yield return m;
        foreach (var m in RunningDimension.Draw(((double[])[0, height]).Select(y => new DimensionStop(place.Map(new Point2(0, y)), y)), new(new(box.MinX - 3, 0), new(0, 1)), lettering.Dimensions)) yield return m;
    }
}
