using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Draws strings in development: first the faint lines, then housings, then the lines to cut.</summary>
public static class StringMarks
{
    private const double SkirtingShown = 2.5; // of its top edge, mm of paper

    /// <summary>All lines and tints of a view, without lettering.</summary>
    public static IReadOnlyList<Mark> Draw(StringView view, Placement place)
    {
        var marks = new List<Mark>();
        Faint(view, place, marks);
        foreach (var board in view.Boards)
        {
            var own = new List<Mark>();
            Board(view, board, place, own);
            marks.Add(new GroupMark(board.Part.Id, board.Part.Name, own));
        }
        foreach (var p in view.PitchPoints) marks.Add(new FillMark([Path2.Circle(place.Map(view.At(p.At.X, p.At.Y)), 0.55)], 1, Layer.Construction, ThingId.Riser(p.Riser)));
        return marks;
    }

    private static void Faint(StringView view, Placement place, List<Mark> marks)
    {
        var box = view.Bounds;
        var far = view.Sense > 0 ? box.MaxX : box.MinX;
        foreach (var p in view.PitchPoints)
        {
            var at = view.At(p.At.X, p.At.Y);
            marks.Add(place.Stroke(Path2.Polyline(new Point2(at.X, box.MinY), at, new Point2(far, at.Y)), Pens.Construction, Layer.Construction, ThingId.Riser(p.Riser)));
        }
        var s = (From: Math.Max(view.From, view.Boards[0].Margin[0].X), To: Math.Min(view.To, view.Boards[0].Margin[^1].X));
        var margin = GraphCut.Between(Path2.Polyline(view.Boards[0].Margin), s.From, s.To);
        marks.Add(place.Stroke(Path2.Polyline(margin.Vertices.Select(v => view.At(v.At.X, v.At.Y))), RodPens.MarginLine, Layer.Construction, ThingId.MarginLine));
        // Corners of a stock board that stick out far are left out: the board runs on.
        marks.Add(new ClipMark(place.Map(box).Grown(4), view.Parts.Select(part => place.Stroke(part.Blank.Outline, RodPens.Stock, Layer.Construction, part.Id))));
        if (view.HasFloor)
            marks.Add(place.Stroke(Path2.Polyline(new Point2(box.MinX, view.Floor), new Point2(box.MaxX, view.Floor)), Pens.Visible, Layer.Site, view.FloorId));
        foreach (var site in view.Boards.Select(b => b.Site))
        {
            if (site.Lower.Kind == StringEndKind.Newel) marks.Add(Plumb(view, place, site.Lower.At, site, site.Lower.Newel));
            if (site.Upper.Kind == StringEndKind.Newel) marks.Add(Plumb(view, place, site.Upper.At, site, site.Upper.Newel));
        }
        foreach (var board in view.Boards)
        {
            // The top edges of the skirtings they meet.
            if (board.Site.Lower.Kind == StringEndKind.Foot) marks.Add(Skirting(view, place, board, board.UpperEdge.Vertices[0].At, -1));
            if (board.Site.Upper.Kind == StringEndKind.Head) marks.Add(Skirting(view, place, board, board.UpperEdge.Vertices[^1].At, 1));
        }
        foreach (var ((corner, id), board) in view.Corners.Zip(view.Boards)) marks.Add(Plumb(view, place, corner, board.Site, id));
    }

    private static StrokeMark Skirting(StringView view, Placement place, StringBoard board, Point2 from, int way) =>
        place.Stroke(Path2.Polyline(view.At(from.X, from.Y), view.At(from.X + way * SkirtingShown * place.Scale.Ratio, from.Y)), Pens.Visible, Layer.Site, board.Part.Id);

    /// <summary>A centre line: through the height of the board there, and down to the ordinates.</summary>
    private static StrokeMark Plumb(StringView view, Placement place, double s, StringSite site, string of)
    {
        var outline = view.Boards.First(b => ReferenceEquals(b.Site, site)).Outline;
        var box = outline.Bounds;
        var edge = Math.Clamp(s, box.MinX, box.MaxX);
        var top = outline.Vertices.Where(v => Math.Abs(v.At.X - edge) < 0.25 * box.Width).Max(v => v.At.Y);
        return place.Stroke(Path2.Polyline(view.At(s, view.Bounds.MinY), view.At(s, top + 5 * place.Scale.Ratio)), Pens.Centre, Layer.Centre, of);
    }

    private static void Board(StringView view, StringBoard board, Placement place, List<Mark> marks)
    {
        var part = board.Part;
        foreach (var piece in part.Blank.JointedUp)
        {
            var shape = place.Map(piece.Shape);
            marks.AddRange(Hatch.Lines([shape], 2, Angle.FromDegrees(45), Layer.Tint, Pens.Hatch with { Ink = 0.4 }, part.Id));
        }
        var sunk = part.Cuts.Where(c => c.Kind is CutKind.Housing or CutKind.CornerHousing).ToList();
        foreach (var cut in sunk) marks.Add(new FillMark([place.Map(cut.Shape)], 0.1, Layer.Housing, ThingId.Of(part, cut)));
        foreach (var cut in part.Cuts.Where(c => c.Kind == CutKind.TenonCheek)) marks.Add(new FillMark([place.Map(cut.Shape)], 0.05, Layer.Tenon, ThingId.Of(part, cut)));
        var housing = RodPens.Housing(place.Scale);
        var lines = new List<Mark>();
        foreach (var cut in sunk)
        {
            if (cut.Seat is { } seat && place.Scale.Ratio <= 5) marks.Add(place.Stroke(seat, RodPens.Seat, Layer.Construction, ThingId.Of(part, cut)));
            lines.Add(place.Stroke(cut.Shape, housing, Layer.Housing, ThingId.Of(part, cut)));
        }
        foreach (var cut in part.Cuts.Where(c => c.Kind == CutKind.Dovetail))
        {
            // Seen on the face: its mouth, and hidden behind it how far it spreads.
            var (mouth, whole) = OnFace(part, cut);
            marks.Add(new FillMark([place.Map(mouth)], 0.1, Layer.Housing, ThingId.Of(part, cut)));
            lines.Add(place.Stroke(whole, Pens.Hidden, Layer.Hidden, ThingId.Of(part, cut)));
            lines.Add(place.Stroke(mouth, housing, Layer.Housing, ThingId.Of(part, cut)));
        }
        foreach (var cut in part.Cuts)
        {
            if (cut.Kind == CutKind.Bore) lines.Add(place.Stroke(cut.Shape, housing, Layer.Bore, ThingId.Of(part, cut)));
            if (cut.Kind == CutKind.TenonCheek) lines.Add(place.Stroke(cut.Shape, housing, Layer.Tenon, ThingId.Of(part, cut)));
        }
        lines.Add(place.Stroke(part.FaceSide.Outline, Pens.Outline, Layer.OutlineToCut, part.Id));
        marks.AddRange(Split(view, board, place, lines));
    }

    /// <summary>A dovetail's socket, cut from the board's end, as it shows on its face: where it comes out, and all of it.</summary>
    private static (Path2 Mouth, Path2 Whole) OnFace(Part part, Cut cut)
    {
        var (face, end) = (part.FaceSide.Frame, part.Faces[cut.Face].Frame);
        var corners = cut.Shape.Vertices.SelectMany(v => new[] { 0, cut.Depth }.Select(d => face.ToLocal(end.ToWorld(v.At, -d)))).ToList();
        return (Box(corners.Where(c => Math.Abs(c.W) < Tolerance.Joint).Select(c => c.Face)), Box(corners.Select(c => c.Face)));

        static Path2 Box(IEnumerable<Point2> points)
        {
            var b = Box2.Of(points);
            return Path2.Rectangle(b.MinX, b.MinY, b.MaxX, b.MaxY);
        }
    }

    /// <summary>What lies past a corner in a development of several boards is behind the other board: dashed.</summary>
    private static IEnumerable<Mark> Split(StringView view, StringBoard board, Placement place, List<Mark> lines)
    {
        if (view.Corners.IsEmpty) return lines;
        var box = Mark.BoundsOf(lines).Grown(1);
        var (seen, hidden) = (box, new List<Box2>());
        var i = view.Boards.IndexOf(board);
        if (i > 0) Cut(view.Corners[i - 1].At, up: true);
        if (i < view.Corners.Length) Cut(view.Corners[i].At, up: false);
        return
        [
            .. hidden.Select(h => new ClipMark(h, lines.OfType<StrokeMark>().Select(l => l with { Pen = Pens.Hidden, Layer = Layer.Hidden }))),
            new ClipMark(seen, lines),
        ];

        // Keeps what lies up or down the stair from a corner.
        void Cut(double s, bool up)
        {
            var x = place.Map(view.At(s, 0)).X;
            if (up == view.Sense > 0)
            {
                hidden.Add(box with { MaxX = x + 0.25 });
                seen = seen with { MinX = x - 0.25 };
            }
            else
            {
                hidden.Add(box with { MinX = x - 0.25 });
                seen = seen with { MaxX = x + 0.25 };
            }
        }
    }
}
