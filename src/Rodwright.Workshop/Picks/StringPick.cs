using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A string.</summary>
internal static class StringPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Board(id) is not { } board || bench.Part(id) is not { } part) return null;
        return Draft.Pick(id, part.Name, $"{(board.Site.IsWall ? "wall string" : "newel string")}, mark {part.Mark}", Relations.Framed(bench, id),
            [.. Sizes(bench, board, part), .. Ends(bench, board), .. board.Easings.SelectMany(e => Easing(bench, board, e)), .. board.Tenons.SelectMany(t => TenonFacts.Of(bench, board, t, board.Tenons.Length > 1 ? $"{(t.IsUpper ? "upper" : "lower")} end: " : ""))]);
    }

    private static IEnumerable<Fact> Sizes(PickBench bench, StringBoard board, Part part)
    {
        var (practice, site, group) = (bench.Practice, board.Site, board.Site.IsWall ? "practice.wallString" : "practice.newelString");
        yield return bench.Given($"{group}.width", site.Width);
        yield return bench.Given($"{group}.thickness", site.Thickness);
        yield return bench.Mm("length of the board", part.Blank.Length, Why.Rule("along the grain, laid so that least of the string lies outside the board"));
        if (board.LeastWidth > 0) yield return bench.Mm("least width that would do", board.LeastWidth, Why.Rule($"judged on the straight steps: the margin, down to the housings' lowest corners, and {bench.Units.Print(practice.CoverBelow)} of wood below them"), "practice.coverBelow",
            [.. LeastWidth(bench, board)]);
        yield return bench.Given("practice.margin", practice.Margin);
        yield return bench.Mm("left below the margin line", Math.Max(0, site.Width - practice.Margin), Why.Rule("what the board leaves, square to the margin line"), "practice.margin", Working.Of(site.Width) - practice.Margin);
        yield return bench.Given("practice.housing", practice.Housing);
        foreach (var piece in part.Blank.JointedUp)
            yield return Facts.Words($"jointed up, piece {piece.Mark}, {piece.Edge}", $"{bench.Length(piece.Length)} long, {bench.Length(piece.Width)} wide", Why.Rule("what lies outside the board is glued on, its grain along the string"));
        if (bench.Proof.Blanks.FirstOrDefault(b => b.Part == part.Id) is { } blank)
            yield return bench.Mm("outside its board and pieces", blank.Outside, Why.Rule("proved: every part lies in its blank"));
        yield return Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber");
    }

    /// <summary>Margin, the lowest housing corner's depth square below the margin line, and the cover.</summary>
    private static IEnumerable<Working> LeastWidth(PickBench bench, StringBoard board)
    {
        var (practice, margin) = (bench.Practice, board.Margin);
        var wanted = board.LeastWidth - practice.Margin - practice.CoverBelow;
        for (var i = 0; i + 1 < margin.Length; i++)
        {
            var pitch = Angle.OfPitch(margin[i + 1].Y - margin[i].Y, margin[i + 1].X - margin[i].X);
            foreach (var p in board.Housings.SelectMany(h => h.Shape.Vertices).Select(v => v.At))
            {
                var line = margin[i].Y + (p.X - margin[i].X) * pitch.Tangent;
                if (Math.Abs((line - p.Y) * pitch.Cosine - wanted) > 1e-6) continue;
                yield return Working.Of(practice.Margin) + (Working.Of(line) - p.Y) * Working.Cos(pitch) + practice.CoverBelow;
                yield break;
            }
        }
        if (wanted > 0) yield return Working.Of(practice.Margin) + wanted + practice.CoverBelow;
    }

    private static IEnumerable<Fact> Ends(PickBench bench, StringBoard board)
    {
        var (practice, site) = (bench.Practice, board.Site);
        foreach (var (end, up) in new[] { (site.Lower, false), (site.Upper, true) })
        {
            var where = up ? "upper end" : "lower end";
            switch (end.Kind)
            {
                case StringEndKind.Newel:
                    var half = Working.Of(practice.Newel) / 2;
                    yield return bench.Mm($"{where}: shoulder", end.At + (up ? -1 : 1) * practice.Newel / 2, Why.Rule("plumb on the newel's face, half the newel from its centre"), "practice.newel", up ? Working.Of(end.At) - half : Working.Of(end.At) + half);
                    break;
                case StringEndKind.Foot:
                    yield return bench.Mm($"{where}: plumb cut at", board.UpperEdge.Vertices[0].At.X, Why.Rule("where the upper edge has come down to the skirting, or in front of the first nosing"), "practice.skirting");
                    yield return bench.Given("practice.skirting", practice.Skirting);
                    break;
                case StringEndKind.Head:
                    yield return bench.Mm($"{where}: plumb cut on the trimmer", board.LowerEdge.Vertices[^1].At.X, Why.Rule("behind the last riser and the packing"), "practice.packing", Working.Of(end.At) + practice.Riser + practice.Packing);
                    yield return bench.Mm($"{where}: level seat", end.Level - practice.FloorBoards, Why.Rule("on the trimmer, under the floor's boards"), "practice.floorBoards", Working.Of(end.Level) - practice.FloorBoards);
                    yield return bench.Mm($"{where}: level top", board.UpperEdge.Vertices[^1].At.Y, Why.Rule("at the skirting's height above the floor it arrives at"), "practice.skirting", Working.Of(end.Level) + practice.SkirtingAt(end.Level));
                    yield return bench.Given("practice.headLevel", practice.HeadLevel);
                    break;
                case StringEndKind.CornerThrough:
                    yield return bench.Mm($"{where}: runs through to", end.At + site.Thickness, Why.Rule("behind the other string to the wall"), "practice.wallString.thickness", Working.Of(end.At) + site.Thickness);
                    break;
                default:
                    yield return bench.Mm($"{where}: let in to", end.At - practice.Corner, Why.Rule("into the face of the string that runs through"), "practice.corner", Working.Of(end.At) - practice.Corner);
                    break;
            }
        }
    }

    private static IEnumerable<Fact> Easing(PickBench bench, StringBoard board, Easing easing)
    {
        var box = board.Outline.Bounds;
        if (easing.Corner.X < box.MinX || easing.Corner.X > box.MaxX) yield break;
        var where = $"easing of the {easing.Edge} edge at {bench.Units.Print(easing.Corner.X)} along";
        var turn = Angle.FromDegrees(Math.Abs(easing.Turn.Degrees));
        yield return bench.Mm($"{where}: tangents", easing.Tangent, easing.Tangent < bench.Practice.Easing - 0.05
            ? Why.Rule($"less than the usual {bench.Units.Print(bench.Practice.Easing)}: half the shorter edge beside it, or kept clear of nosings and housings") : Why.Field("practice.easing"), "practice.easing");
        yield return bench.Mm($"{where}: radius", easing.Radius, Why.Rule("equal tangents: the tangent's length over the tangent of half the change of pitch"), "practice.easing", Working.Of(easing.Tangent) / Working.Tan(Angle.FromDegrees(turn.Degrees / 2)));
    }
}
