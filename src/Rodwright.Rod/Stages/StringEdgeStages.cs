using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Edges of strings: parallel to the margin line first, then eased and lined in.</summary>
internal static class StringEdgeStages
{
    public static IEnumerable<Stage> Edges(StringWords words)
    {
        var practice = words.View.Stair.Job.Practice;
        var draft = StringStages.Draft(words, "edges", "upper and lower edge");
        foreach (var board in words.View.Boards)
        {
            var own = words.View.Boards.Length > 1 ? $", {board.Part.Mark}" : "";
            foreach (var (name, edge) in new[] { ("upper", board.UpperEdge), ("lower", board.LowerEdge) })
            {
                var line = Sharp(edge);
                var offsets = Offsets(board, line, words.View.Boards[0].Margin);
                var usual = Math.Max(0, board.Site.Width - practice.Margin);
                if (offsets.Count == 0) offsets.Add(("the margin line", name == "upper" ? practice.Margin : usual));
                var way = $"square to it, {(name == "upper" ? "upwards" : "downwards")}";
                var why = name == "upper"
                    ? $"the margin is {words.View.Stair.Units.Print(practice.Margin)}, so that nosings stay {words.View.Stair.Units.Print(practice.NosingCover)} from the edge"
                    : offsets.TrueForAll(o => Math.Abs(Math.Abs(o.Square) - usual) < 0.05)
                        ? $"what the board leaves below the margin line: {words.View.Stair.Units.Print(board.Site.Width)} − {words.View.Stair.Units.Print(practice.Margin)} = {words.View.Stair.Units.Print(usual)}"
                        : $"the board leaves {words.View.Stair.Units.Print(board.Site.Width)} − {words.View.Stair.Units.Print(practice.Margin)} = {words.View.Stair.Units.Print(usual)}; where the housings need more, it is their lowest corners and {words.View.Stair.Units.Print(practice.CoverBelow)} of wood below them, and what the board has not is jointed up";
                draft.Faint($"{board.Part.Id}-{name}", $"{name} edge{own}", board.Part.Id, [line], new(
                    [.. offsets.Select(o => new Measure(o.Piece, Math.Abs(o.Square), way, "square"))], $"draw the {name} edge parallel to the margin line, each piece to where it meets the next", why, name == "upper" ? Published.Margin : ""));
            }
        }
        return draft.Done();
    }

    public static IEnumerable<Stage> Easings(StringWords words)
    {
        var draft = StringStages.Draft(words, "easings", "easings, and the edges lined in");
        foreach (var board in words.View.Boards)
        {
            var own = words.View.Boards.Length > 1 ? $" of {board.Part.Mark}" : "";
            foreach (var (name, edge) in new[] { ("upper", board.UpperEdge), ("lower", board.LowerEdge) })
            {
                var n = 0;
                foreach (var (arc, easing) in Arcs(edge, board.Easings.Where(e => e.Edge == name)))
                {
                    draft.Faint($"{board.Part.Id}-{name}-{K(++n)}", $"easing, {name} edge{own}", board.Part.Id, [arc], How(
                        $"square off both tangent points; where the squares meet is the centre, {words.View.Stair.Units.Print(easing.Radius)} away; strike the easing",
                        $"the pitch changes by {Number.Print(Math.Abs(easing.Turn.Degrees), 2)}°; equal tangents T give r = T / tan({Number.Print(Math.Abs(easing.Turn.Degrees) / 2, 2)}°) = {words.View.Stair.Units.Print(easing.Radius)}"
                            + (easing.Tangent < words.View.Stair.Job.Practice.Easing - 0.05 ? $"; T is less than the usual {words.View.Stair.Units.Print(words.View.Stair.Job.Practice.Easing)}, for a short edge or to keep the cover over nosings and under housings" : ""),
                        Published.Easing,
                        new Measure($"the corner at {words.View.Stair.Units.Print(Math.Abs(easing.Corner.X))} along and {words.View.Stair.Units.Print(easing.Corner.Y - words.Base)} up", easing.Tangent, "both ways along the edge", "tangent")));
                }
            }
            draft.LinedIn($"{board.Part.Id}-outline", board.Part.Name, board.Part.Id, [board.UpperEdge, board.LowerEdge, board.Outline], How(
                "line in both edges and the ends of the string; cross-hatch the waste",
                board.Part.Blank.JointedUp.IsEmpty
                    ? $"it comes out of a board {words.View.Stair.Units.Print(board.Part.Blank.Length)} by {words.View.Stair.Units.Print(board.Site.Width)}"
                    : $"the board is {words.View.Stair.Units.Print(board.Part.Blank.Length)} by {words.View.Stair.Units.Print(board.Site.Width)}; {K(board.Part.Blank.JointedUp.Length)} piece{(board.Part.Blank.JointedUp.Length == 1 ? " is" : "s are")} jointed up", "",
                words.Along(board.Outline.Bounds.MinX, "lower end"), words.Along(board.Outline.Bounds.MaxX, "upper end")));
        }
        return draft.Done();
    }

    /// <summary>The arcs of an edge with the easings they draw.</summary>
    public static IEnumerable<(Path2 Arc, Easing Easing)> Arcs(Path2 edge, IEnumerable<Easing> easings)
    {
        var all = easings.ToList();
        for (var i = 0; i < edge.EdgeCount; i++)
        {
            var (a, b, bulge) = edge.Edge(i);
            if (bulge == 0) continue;
            // An arc cut by the corner of the room is drawn on both boards: its corner lies between them.
            var easing = all.MinBy(e => e.Corner.DistanceTo(a.Towards(b, 0.5)));
            if (easing is not null) yield return (new([new(a, bulge), new(b)], false), easing);
        }
    }

    /// <summary>An edge before it is eased: each arc's place taken by the corner its tangents meet in.</summary>
    public static Path2 Sharp(Path2 edge)
    {
        var points = new List<Point2>();
        for (var i = 0; i < edge.Vertices.Length; i++)
        {
            points.Add(edge.Vertices[i].At);
            if (i == edge.EdgeCount || edge.Vertices[i].Bulge == 0) continue;
            var (a, b, bulge) = edge.Edge(i);
            var arc = Arc2.FromBulge(a, b, bulge);
            if (new Line2(a, (a - arc.Centre).Left).Cross(new(b, (b - arc.Centre).Left)) is { } corner) points.Add(corner);
        }
        // The tangent points themselves lie on the straight pieces.
        for (var i = points.Count - 2; i > 0; i--)
            if (points[i].IsSame(points[i - 1]) || Math.Abs((points[i] - points[i - 1]).Unit.Cross((points[i + 1] - points[i]).Unit)) < 1e-7) points.RemoveAt(i);
        return Path2.Polyline(points);
    }

    /// <summary>Square distances from the margin line's pieces to the pieces of an edge that run along them, neighbours alike told together.</summary>
    private static List<(string Piece, double Square)> Offsets(StringBoard board, Path2 edge, ImmutableArray<Point2> margin)
    {
        var found = new List<(int First, int Last, double Square)>();
        for (var i = 0; i + 1 < margin.Length; i++)
        {
            var piece = Line2.Between(margin[i], margin[i + 1]);
            var along = Enumerable.Range(0, edge.EdgeCount).Select(edge.Edge)
                .Where(e => e.To.X > e.From.X && Math.Abs((e.To - e.From).Unit.Cross(piece.Along)) < 1e-6 && Math.Min(e.To.X, margin[i + 1].X) > Math.Max(e.From.X, margin[i].X))
                .Select(e => piece.LeftOf(e.From)).ToList();
            if (along.Count == 0) continue;
            var square = along.MinBy(Math.Abs);
            if (found.Count > 0 && found[^1].Last == i && Math.Abs(found[^1].Square - square) < 0.05) found[^1] = found[^1] with { Last = i + 1 };
            else found.Add((i + 1, i + 1, square));
        }
        return [.. found.Select(f => (Piece(f.First, f.Last), f.Square))];

        string Piece(int first, int last) => margin.Length == 2 ? "the margin line"
            : first == last ? $"the margin line's piece {K(first)}" : last == first + 1 ? $"the margin line's pieces {K(first)} and {K(last)}" : $"the margin line's pieces {K(first)} to {K(last)}";
    }
}
