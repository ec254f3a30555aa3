using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>Each different riser: its face, and above it the ends of its top edge at full size where they are bevelled.</summary>
internal static class RiserSheets
{
    private const double Shown = 46; // of each end at full size, mm

    public static IEnumerable<Sheet> Make(RodJob rod)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind is PartKind.Riser or PartKind.TaperedRiser));
        return RowFlow.Sheets(rod, new("risers", "Risers", "risers", "", "Face side"), l => [.. groups.Select(g => Row(rod, g, l))],
            ids => "Seen from the foot of the stair, on the face side. Along from the left end, up from the bottom edge. "
                + (ids.Any(id => IsBevelled(rod, rod.Stair.Kit.Find(id)))
                    ? "Above the face: the ends of the top edge, full size, face downwards, with the places of their corners from that end of the board. " : "")
                + "Hidden lines: faces of strings and newels.");
    }

    private static bool IsBevelled(RodJob rod, Part part)
    {
        var (left, right) = RiserEnd.Of(rod.Stair, part);
        return left.IsBevelled || right.IsBevelled;
    }

    private static PieceRow Row(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var part = group.First;
        var (left, right) = RiserEnd.Of(rod.Stair, part);
        var bevelled = left.IsBevelled || right.IsBevelled;
        var top = bevelled ? lettering.OrdinateStrip(12) + part.Blank.Thickness + 9 : 1;
        return new(group.Marks,
            $"{PartsList.NameOf(group)}, {Number.Print(group.Parts.Length, 0)} of {rod.Units.Print(part.Blank.Length)} by {rod.Units.Print(part.Blank.Width)} by {rod.Units.Print(part.Blank.Thickness)}"
            + (bevelled ? $"; {EndWords(rod.Units, "left", left)}; {EndWords(rod.Units, "right", right)}" : ""),
            [.. group.Parts.Select(p => p.Id)],
            new(part.Blank.Length, part.Blank.Width, lettering.OrdinateStrip(6), 3, top, lettering.OrdinateStrip(6)),
            place => Draw(place, part, lettering, left, right, bevelled));
    }

    private static string EndWords(Units units, string side, RiserEnd end) => end switch
    {
        { IsBevelled: false } => $"{side} end square",
        { Depth: 0 } => $"{side} end {Number.Print(end.Bevel.Degrees, 2)}° off square, butts",
        _ => $"{side} end {Number.Print(end.Bevel.Degrees, 2)}° off square, {units.Print(Math.Max(0, end.Left))} left at depth {units.Print(end.Depth)}",
    };

    private static IEnumerable<Mark> Draw(Placement place, Part part, SheetLettering lettering, RiserEnd left, RiserEnd right, bool bevelled)
    {
        var (length, height) = (part.Blank.Length, part.Blank.Width);
        var box = place.Map(new Box2(0, 0, length, height));
        var marks = new List<Mark>();
        foreach (var end in (RiserEnd[])[left, right])
        {
            if (end.Depth > 0)
                marks.Add(place.Stroke(Path2.Polyline(new Point2(end.Face, 0), new Point2(end.Face, height)), Pens.Hidden, Layer.Hidden));
        }
        marks.Add(place.Stroke(Path2.Rectangle(0, 0, length, height), Pens.Outline, Layer.OutlineToCut, part.Id));
        if (box.Height > lettering.Mark + 3)
            marks.Add(new TextMark(box.Centre, part.Mark, lettering.Mark, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: true, of: part.Id));
        var along = new[] { 0, left.Face, right.Face, length }.Order().Aggregate(new List<double>(), (kept, x) =>
        {
            if (kept.Count == 0 || x - kept[^1] > 0.05) kept.Add(x);
            return kept;
        });
        marks.AddRange(RunningDimension.Draw(along.Select(x => new DimensionStop(place.Map(new Point2(x, 0)), x)), new(new(0, box.MinY - 3), new(1, 0)), lettering.Dimensions));
        marks.AddRange(RunningDimension.Draw(((double[])[0, height]).Select(y => new DimensionStop(place.Map(new Point2(0, y)), y)), new(new(box.MinX - 3, 0), new(0, 1)), lettering.Dimensions));
        if (!bevelled) return marks;
        var y = box.MaxY + 6;
        marks.AddRange(End(part, lettering, left, false, new(box.MinX + 2, y)));
        marks.AddRange(End(part, lettering, right, true, new(box.MaxX - 2 - Shown, y)));
        marks.Add(new TextMark(new(box.Centre.X, y + part.Blank.Thickness / 2), "full size", lettering.Words, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle));
        return marks;
    }

    /// <summary>One end of the top edge at full size, its left lower corner at a point of paper; figures are measured from that end of the board.</summary>
    private static IEnumerable<Mark> End(Part part, SheetLettering lettering, RiserEnd end, bool isRight, Point2 at)
    {
        var from = isRight ? part.Blank.Length - Shown : 0;
        var outline = part.Faces[1].Outline.Moved(p => new Point2(p.X - part.Blank.Corner.X, p.Y));
        var place = new Placement(Scale.Full, new(from, 0), at);
        var (thick, window) = (part.Blank.Thickness, new Box2(at.X - 0.5, at.Y - 0.5, at.X + Shown + 0.5, at.Y + part.Blank.Thickness + 0.5));
        var face = place.Map(new Point2(end.Face, 0));
        var lean = place.Map(outline.Vertices.Select(v => v.At).Where(p => p.Y > thick - Tolerance.Joint)
            .MinBy(p => Math.Abs(Math.Abs(p.X - end.Face) - thick * end.Bevel.Tangent)));
        yield return new ClipMark(window, [new StrokeMark(place.Map(outline), Pens.Outline, Layer.OutlineToCut, part.Id)]);
        if (end.Depth > 0) yield return StrokeMark.Line(face, lean, Pens.Hidden, Layer.Hidden);
        var stops = outline.Vertices.Select(v => v.At).Where(p => p.X >= from - 0.01 && p.X <= from + Shown + 0.01).OrderBy(p => p.X)
            .Select(p => new DimensionStop(place.Map(new Point2(p.X, thick)), isRight ? part.Blank.Length - p.X : p.X,
                p.Y < Tolerance.Joint ? "face" : p.Y > thick - Tolerance.Joint ? "back" : "end"))
            .DistinctBy(s => (Math.Round(s.Value, 2), s.Note)).ToList();
        foreach (var mark in RunningDimension.Draw(stops, new(new(0, window.MaxY + 2), new(1, 0)), lettering.Dimensions)) yield return mark;
    }
}
