using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;

namespace Rodwright.Rod.Views;

/// <summary>Words on a string in development: marks of the boards and steps, easings, jointed-up pieces, the corner, the way up.</summary>
public static class StringLabels
{
    /// <summary>The lettering, placed clear of every line to cut.</summary>
    /// <param name="view">What is drawn.</param>
    /// <param name="place">Where.</param>
    /// <param name="lettering">Its heights.</param>
    /// <param name="drawn">Lines and figures already there.</param>
    /// <param name="room">Where labels may go.</param>
    /// <param name="wayUp">Whether to draw the arrow up the stair, in the corner over the low end.</param>
    public static IReadOnlyList<Mark> Draw(StringView view, Placement place, SheetLettering lettering, IReadOnlyList<Mark> drawn, Box2 room, bool wayUp = true)
    {
        var marks = new List<Mark>();
        var steps = Steps(view, place, lettering).ToList();
        marks.AddRange(steps);
        var placer = new LabelPlacer(room);
        foreach (var (mark, _) in FlatMarks.Of(drawn.Concat(steps)))
        {
            // Faint lines may pass behind a knocked-out label; everything else is kept clear of.
            if (mark is StrokeMark { Pen.Width: < 0.2 } line && line.Layer != Layer.Dimension) continue;
            placer.Avoid(mark);
        }
        if (wayUp)
        {
            var arrow = WayUp(view, place, lettering);
            placer.Avoid(arrow);
            marks.AddRange(arrow);
        }
        foreach (var board in view.Boards)
        {
            var middle = GraphCut.HeightAt(board.UpperEdge, Middle(board));
            var near = place.Map(view.At(Middle(board), middle));
            if (placer.Place(board.Part.Mark, near, lettering.Mark, gap: 4, bold: true, of: board.Part.Id) is not { } label) continue;
            marks.AddRange(label.Marks);
            var box = label.Text.Bounds;
            var loop = BenchMarks.FaceSide(new(box.MaxX + 2, box.MinY), lettering.Mark, board.Part.Id);
            placer.Avoid(loop.Bounds);
            marks.Add(loop);
        }
        foreach (var easing in view.Boards[0].Easings.Where(e => e.Corner.X > view.From && e.Corner.X < view.To))
        {
            var words = easing.Tangent < 1 ? "no easing" : $"T {view.Stair.Units.Print(easing.Tangent)}, R {view.Stair.Units.Print(easing.Radius, 0)}";
            Add(words, view.At(easing.Corner.X, easing.Corner.Y), lettering.Words, (view.Boards.FirstOrDefault(b => easing.Corner.X <= b.Site.Upper.At) ?? view.Boards[^1]).Part.Id);
        }
        foreach (var board in view.Boards)
            foreach (var piece in board.Part.Blank.JointedUp)
                Add($"{board.Part.Mark}{piece.Mark} {view.Stair.Units.Print(piece.Length)} × {view.Stair.Units.Print(piece.Width)}", piece.Shape.Bounds.Centre, lettering.Words, board.Part.Id, board.Part.Mark + piece.Mark);
        foreach (var ((corner, id), board) in view.Corners.Zip(view.Boards)) Add("corner", view.At(corner, board.UpperEdge.Vertices[^1].At.Y + 4 * place.Scale.Ratio), lettering.Words, id);
        return marks;

        void Add(string words, Point2 at, double height, string of, string shorter = "")
        {
            var found = placer.Place(words, place.Map(at), height, gap: 2, of: of) ?? (shorter.Length > 0 ? placer.Place(shorter, place.Map(at), height, gap: 2, of: of) : null);
            if (found is not { } label) return;
            if (label.Lead is { } lead) marks.Add(lead);
            marks.Add(label.Text with { Knockout = true });
        }
    }

    private static double Middle(StringBoard board)
    {
        var (first, last) = (board.UpperEdge.Vertices[0].At.X, board.UpperEdge.Vertices[^1].At.X);
        return first + 0.45 * (last - first);
    }

    /// <summary>Marks of the treads in the margin, along the pitch, where the margin is wide enough on paper.</summary>
    private static IEnumerable<TextMark> Steps(StringView view, Placement place, SheetLettering lettering)
    {
        var height = lettering.Words;
        var margin = view.Stair.Job.Practice.Margin;
        if (place.Map(margin) < height + 1.6) yield break;
        var outlines = view.Parts.Select(part => Path2.Polygon(place.Map(part.FaceSide.Outline).Flattened())).ToList();
        for (var i = 0; i + 1 < view.PitchPoints.Length; i++)
        {
            var (a, b) = (view.PitchPoints[i], view.PitchPoints[i + 1]);
            if (b.Riser != a.Riser + 1 || view.Corners.Any(c => c.At > a.At.X + 1 && c.At < b.At.X - 1)) continue;
            var (p, q) = (view.At(a.At.X, a.At.Y), view.At(b.At.X, b.At.Y));
            var along = (q - p).Unit;
            var text = $"T{Number.Print(a.Riser, 0)}";
            if (place.Map(p.DistanceTo(q)) < 14) continue;
            var up = along.X > 0 ? along.Left : along.Right;
            var mark = new TextMark(place.Map(p.Towards(q, 0.5) + margin / 2 * up), text, height, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle,
                Reading.TurnOf(along), of: ThingId.Tread(a.Riser));
            // At an end the board may stop short of it.
            if (outlines.Exists(o => mark.KnockoutCorners.All(o.Holds))) yield return mark;
        }
    }

    private static IReadOnlyList<Mark> WayUp(StringView view, Placement place, SheetLettering lettering)
    {
        var box = place.Map(view.Bounds);
        var low = view.Sense > 0 ? box.MinX + 2 : box.MaxX - 2;
        var y = box.MaxY - lettering.Figures;
        // A short string leaves a short corner.
        var length = Math.Min(12 * lettering.Figures, 0.42 * box.Width);
        if (length < 8) return [];
        var word = length < 11 * lettering.Figures ? length < 5 * lettering.Figures ? "" : "up" : "up the stair";
        return DirectionArrow.Draw(new(low, y), new(low + view.Sense * length, y), word, lettering.Figures);
    }
}
