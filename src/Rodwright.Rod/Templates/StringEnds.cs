using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>Ends of newel strings at full size: shoulder, twin tenons with their haunch, pegs, and the first housings, looking at the face side.</summary>
internal static class StringEnds
{
    private const double Body = 160; // of the board shown beyond the shoulder

    public static IEnumerable<Sheet> Sheets(RodJob rod)
    {
        var ends = rod.Stair.Kit.Strings.SelectMany(b => b.Tenons.Select(t => (Board: b, Tenon: t))).ToList();
        var shown = new List<List<(StringBoard Board, StringTenon Tenon)>>();
        foreach (var end in ends)
        {
            if (shown.Find(g => AreEqual(g[0], end)) is { } group) group.Add(end);
            else shown.Add([end]);
        }
        return shown.Select((g, i) => Sheet(rod, g, i));
    }

    /// <summary>From the development to the face as looked at, where up the stair may run to the left.</summary>
    public static int SignOf(StringBoard board) => board.Part.FaceSide.Frame.U.Dot(Vector3.Level(board.Site.Face.Along)) > 0 ? 1 : -1;

    private static bool AreEqual((StringBoard Board, StringTenon Tenon) a, (StringBoard Board, StringTenon Tenon) b)
    {
        var (s, t) = (a.Tenon, b.Tenon);
        return s.IsUpper == t.IsUpper && SignOf(a.Board) == SignOf(b.Board)
            && Near(s.Length, t.Length) && Near(s.Top - s.Bottom, t.Top - t.Bottom) && Near(s.Thickness, t.Thickness) && Near(s.PegBack, t.PegBack)
            && Near(Rise(a.Board.UpperEdge, s), Rise(b.Board.UpperEdge, t)) && Near(Rise(a.Board.LowerEdge, s), Rise(b.Board.LowerEdge, t))
            && Near(Slope(a), Slope(b));

        static bool Near(double x, double y) => Math.Abs(x - y) < Tolerance.Joint;
        static double Rise(Path2 edge, StringTenon tenon) => GraphCut.HeightAt(edge, tenon.Shoulder) - tenon.Bottom;
        static double Slope((StringBoard Board, StringTenon Tenon) e) =>
            GraphCut.HeightAt(e.Board.UpperEdge, e.Tenon.Shoulder - e.Tenon.Points * Body) - GraphCut.HeightAt(e.Board.UpperEdge, e.Tenon.Shoulder);
    }

    private static Sheet Sheet(RodJob rod, List<(StringBoard Board, StringTenon Tenon)> group, int index)
    {
        var (board, tenon) = group[0];
        var sign = SignOf(board);
        var away = -tenon.Points * sign; // from the shoulder into the board, as looked at
        var marks = string.Join(", ", group.Select(g => $"{g.Board.Site.Mark} {(g.Tenon.IsUpper ? "upper end" : "lower end")}"));
        var shoulder = sign * tenon.Shoulder;
        var outline = board.Part.FaceSide.Outline;
        var limit = shoulder + away * Body;
        var (low, high) = (Math.Min(limit, shoulder - away * (tenon.Length + 1)), Math.Max(limit, shoulder - away * (tenon.Length + 1)));
        var (from, to) = (Math.Min(shoulder, limit), Math.Max(shoulder, limit));
        double[] edges = [.. new[] { board.UpperEdge, board.LowerEdge }.SelectMany(e => new[] { sign * from, sign * to }.Select(s => GraphCut.HeightAt(e, s)))];
        var window = new Box2(low, edges.Min() - 2, high, edges.Max() + 2);
        var drawing = new TemplateDrawing(rod.Units);
        var inside = new List<Mark>();
        foreach (var cut in board.Part.Cuts.Where(c => c.Kind == CutKind.Housing && c.Shape.Bounds.Overlaps(window)))
        {
            inside.Add(new FillMark([cut.Shape], 0.06, Layer.Tint));
            inside.Add(new StrokeMark(cut.Shape, Pens.Visible, Layer.Housing));
        }
        inside.Add(new StrokeMark(outline, Pens.Outline, Layer.OutlineToCut));
        drawing.Add([new ClipMark(window, inside)]);
        drawing.Line(Pens.Visible, Layer.OutlineToCut, new(shoulder, tenon.Bottom), new(shoulder, tenon.Top));
        foreach (var z in tenon.PegHeights)
        {
            var at = new Point2(shoulder - away * (tenon.PegBack - tenon.Practice.Draw), z);
            drawing.Path(Path2.Circle(at, tenon.Practice.Peg / 2), Pens.Visible, Layer.Bore);
            drawing.Line(Pens.Centre, Layer.Centre, at + new Vector2(-10, 0), at + new Vector2(10, 0));
            drawing.Line(Pens.Centre, Layer.Centre, at + new Vector2(0, -10), at + new Vector2(0, 10));
        }
        var tip = shoulder - away * tenon.Length;
        Point2[] heights =
        [
            new(tip, tenon.Bottom), new(tip, tenon.Bottom + tenon.Third), new(tip, tenon.Top - tenon.Third), new(tip, tenon.Top),
        ];
        if (away > 0) drawing.ChainLeft(tip, heights);
        else drawing.ChainRight(tip, heights);
        var haunch = new Point2(shoulder - away * tenon.Haunch, tenon.Bottom + tenon.Third);
        drawing.ChainBelow(tenon.Bottom, new Point2(tip, tenon.Bottom), haunch, new(shoulder, tenon.Bottom));
        var peg = new Point2(shoulder - away * (tenon.PegBack - tenon.Practice.Draw), tenon.Top);
        drawing.ChainAbove(tenon.Top, new Point2(tip, tenon.Top), peg, new(shoulder, tenon.Top));
        drawing.Notes(marks,
            $"Looking at the face side. Tenons {rod.Units.Print(tenon.Thickness)} thick: {rod.Units.Print(board.Site.Thickness - tenon.Thickness)} off the face, none off the back. "
            + $"Peg holes {rod.Units.Print(tenon.Practice.Peg)}, already {rod.Units.Print(tenon.Practice.Draw)} nearer the shoulder than in the newel. Up the stair is to the {(sign > 0 ? "right" : "left")}.",
            Math.Max(window.Width, 150));
        return TrueSheet.Of(rod, new($"template-end-{Number.Print(index + 1, 0)}", $"Template, string end {marks}", "newel string end, " + (tenon.IsUpper ? "upper" : "lower"),
            board.Site.Mark, "Full size"), drawing.Marks);
    }
}
