using Rodwright.Stairs.Jobs;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Ends of strings: where they meet newels and corners, and the cuts and tenons there.</summary>
internal static class StringEndStages
{
    public static IEnumerable<Stage> Meetings(StringWords words)
    {
        var (plan, practice) = (words.View.Stair.Plan, words.View.Stair.Job.Practice);
        var sites = words.View.Boards.Select(b => b.Site).ToList();
        var newels = sites.Any(s => s.Lower.Kind == StringEndKind.Newel || s.Upper.Kind == StringEndKind.Newel);
        var draft = StringStages.Draft(words, "meetings", newels ? "newels" : words.View.Corners.Length > 1 ? "the corners of the room" : "the corner of the room");
        foreach (var board in words.View.Boards)
        {
            var (site, id) = (board.Site, board.Part.Id);
            var box = board.Outline.Bounds;
            foreach (var (end, up) in new[] { (site.Lower, false), (site.Upper, true) })
            {
                if (end.Kind == StringEndKind.Newel)
                {
                    var shoulder = end.At + (up ? -1 : 1) * practice.Newel / 2;
                    var name = words.Newel(end.Newel);
                    var (low, high) = Span(board, shoulder);
                    draft.Faint($"{id}-{end.Newel}-centre", $"centre of the {name}", end.Newel, [StringWords.Plumb(end.At, low - 60, high + 60)], How(
                        $"draw the {name}'s centre line plumb", "carried over from the plan", "", words.Along(end.At)));
                    draft.LinedIn($"{id}-{end.Newel}-face", $"face of the {name}", end.Newel, [StringWords.Plumb(shoulder, low - 40, high + 40)], How(
                        $"draw the {name}'s face plumb: it is the string's shoulder", $"half the newel: {words.View.Stair.Units.Print(practice.Newel)} / 2 = {words.View.Stair.Units.Print(practice.Newel / 2)}", Published.Shoulder,
                        new Measure($"the {name}'s centre line", practice.Newel / 2, words.Way(!up), "half newel")));
                }
                else if (end.Kind == StringEndKind.CornerThrough)
                {
                    var (low, high) = (board.LowerEdge.Vertices[^1].At.Y, board.UpperEdge.Vertices[^1].At.Y);
                    draft.LinedIn($"{id}-corner", words.Corner(board), TurnPlaces.CornerAt(plan, site, end.At), [StringWords.Plumb(end.At, low, high)], How(
                        "draw the corner line plumb between the edges; both strings' edges arrive here at one height", "where the two strings' faces meet in plan", Published.Corner, words.Along(end.At)));
                    draft.LinedIn($"{id}-through", $"end of {board.Part.Mark}", id, [StringWords.Plumb(box.MaxX, low, high)], How(
                        $"draw the end of {board.Part.Mark} plumb", $"it runs on behind the other string to the wall, by that string's thickness of {words.View.Stair.Units.Print(site.Thickness)}", "",
                        new Measure("the corner line", box.MaxX - end.At, words.Way(true), "run through")));
                }
                else if (end.Kind == StringEndKind.CornerLetIn)
                {
                    var (low, high) = (board.LowerEdge.Vertices[0].At.Y, board.UpperEdge.Vertices[0].At.Y);
                    draft.LinedIn($"{id}-letin", $"end of {board.Part.Mark}", id, [StringWords.Plumb(box.MinX, low, high)], How(
                        $"draw the end of {board.Part.Mark} plumb", practice.CornerJoint == CornerJoint.Dovetailed
                            ? $"its tails are lapped into the end of the string that runs through, {words.View.Stair.Units.Print(practice.Corner)} behind its face"
                            : $"it is let into the face of the string that runs through, {words.View.Stair.Units.Print(practice.Corner)} deep over its full depth", "",
                        new Measure("the corner line", end.At - box.MinX, words.Way(false), "let in")));
                }
            }
        }
        return draft.Done();
    }

    public static IEnumerable<Stage> Cuts(StringWords words)
    {
        var draft = StringStages.Draft(words, "cuts", words.View.Boards.Any(b => !b.Tenons.IsEmpty) ? "cuts and tenons" : "cuts at foot and head");
        foreach (var board in words.View.Boards)
        {
            if (board.Site.Lower.Kind == StringEndKind.Foot) Foot(words, draft, board);
            if (board.Site.Upper.Kind == StringEndKind.Head) Head(words, draft, board);
            foreach (var tenon in board.Tenons) Tenon(words, draft, board, tenon);
        }
        return draft.Done();
    }

    private static void Foot(StringWords words, StageDraft draft, StringBoard board)
    {
        var practice = words.View.Stair.Job.Practice;
        var (top, level) = (board.UpperEdge.Vertices[0].At, board.LowerEdge.Vertices[0].At);
        var (skirting, mitred) = ($"{words.View.Stair.Units.Print(practice.SkirtingAt(board.Site.Lower.Level))} high", practice.SkirtingJoint == SkirtingJoint.Mitred && level.X > top.X + 0.05);
        var floorAt = mitred ? level.X : top.X;
        draft.LinedIn($"{board.Part.Id}-foot", mitred ? "mitre at the foot" : "plumb cut at the foot", board.Part.Id, [Path2.Polyline(new Point2(floorAt, Math.Min(board.Site.Lower.Level, top.Y - 1)), top)], How(
            mitred ? "draw the mitre from the upper edge down to the floor" : "draw the plumb cut from the floor to the upper edge",
            mitred ? $"it halves the angle between the upper edge and the top of the skirting, {skirting}; the skirting's end is cut to it"
                : board.UpperEdge.Vertices[0].Bulge != 0 && practice.SkirtingJoint == SkirtingJoint.Eased ? $"there the upper edge has been eased into the top of the skirting, {skirting}"
                : $"there the upper edge has come down to the skirting, {skirting}", "", words.Along(top.X), words.Up(top.Y)));
        if (mitred) level = board.LowerEdge.Vertices[1].At;
        if (level.X <= top.X + 0.05) return;
        draft.LinedIn($"{board.Part.Id}-level", "level cut on the floor", board.Part.Id, [Path2.Polyline(new Point2(floorAt, board.Site.Lower.Level), new Point2(level.X, board.Site.Lower.Level))], How(
            $"draw the level cut along {words.BaseName}", "where the lower edge meets the floor", "", new Measure(mitred ? "the mitre" : "the plumb cut", level.X - floorAt, words.Way(true), "level cut")));
    }

    private static void Head(StringWords words, StageDraft draft, StringBoard board)
    {
        var practice = words.View.Stair.Job.Practice;
        var (trimmer, end, last) = (board.LowerEdge.Vertices[^1].At, board.UpperEdge.Vertices[^1].At, board.Site.Upper.At);
        var seat = board.Site.Upper.Level - practice.FloorBoards;
        draft.LinedIn($"{board.Part.Id}-trimmer", "plumb cut on the trimmer", board.Part.Id, [StringWords.Plumb(trimmer.X, Math.Min(trimmer.Y, seat - 1), seat)], How(
            "draw the plumb cut on the trimmer's face", $"riser and packing behind the last riser's face: {words.View.Stair.Units.Print(practice.Riser)} + {words.View.Stair.Units.Print(practice.Packing)}", "",
            new Measure("the last riser's line", trimmer.X - last, words.Way(true), "trimmer")));
        draft.LinedIn($"{board.Part.Id}-seat", "level seat", board.Part.Id, [Path2.Polyline(new Point2(trimmer.X, seat), new Point2(end.X, seat))], How(
            "draw the level seat the string hooks over the trimmer with", $"the floor's boards, {words.View.Stair.Units.Print(practice.FloorBoards)} thick, lie on the same trimmer: {words.View.Stair.Units.Print(board.Site.Upper.Level)} − {words.View.Stair.Units.Print(practice.FloorBoards)} = {words.View.Stair.Units.Print(seat)} above the lower floor", "",
            words.Up(seat)));
        draft.LinedIn($"{board.Part.Id}-top", "level top and plumb end", board.Part.Id, [Path2.Polyline(new Point2(end.X - practice.HeadLevel, end.Y), end, new Point2(end.X, seat))], How(
            "draw the top level and its end plumb", $"the upper edge runs up to the skirting, {words.View.Stair.Units.Print(practice.SkirtingAt(board.Site.Upper.Level))} above the floor it arrives at, and then level", "",
            words.Up(end.Y), new Measure("where the upper edge reaches that height", practice.HeadLevel, words.Way(true), "level top")));
    }

    private static void Tenon(StringWords words, StageDraft draft, StringBoard board, StringTenon t)
    {
        var (practice, side) = (words.View.Stair.Job.Practice, words.View.Stair.Job.Practice.Newel);
        var (end, newel) = (t.IsUpper ? "upper" : "lower", words.Newel(t.Newel));
        var haunch = t.Shoulder + t.Points * t.Haunch;
        var (low, high) = (t.Bottom + t.Third, t.Top - t.Third);
        Point2[] round = [new(t.Shoulder, t.Bottom), new(t.Tip, t.Bottom), new(t.Tip, low), new(haunch, low), new(haunch, high), new(t.Tip, high), new(t.Tip, t.Top), new(t.Shoulder, t.Top)];
        var whole = practice.Tenon.Part * side;
        draft.Faint($"{board.Part.Id}-band-{end}", $"band of the {end} tenons", ThingId.Of(board, t),
            [Path2.Polyline(round[0], new Point2(t.Tip, t.Bottom)), Path2.Polyline(round[7], new Point2(t.Tip, t.Top))], How(
            "draw both level: the band the tenons are made in", $"inside the board over the whole tenon; {words.View.Stair.Units.Print(t.Top)} − {words.View.Stair.Units.Print(t.Bottom)} = {words.View.Stair.Units.Print(t.Top - t.Bottom)} deep", "",
            words.Up(t.Bottom, "bottom"), words.Up(t.Top, "top")));
        draft.LinedIn($"{board.Part.Id}-tenons-{end}", $"twin tenons into the {newel}", ThingId.Of(board, t), [Path2.Polyline(round)], How(
            $"divide the band into three: a tenon, a gap with its haunch, a tenon, and line them in. Bare-faced: {words.View.Stair.Units.Print(t.Site.Thickness - t.Thickness)} comes off the face side",
            $"{words.View.Stair.Units.Print(t.Top - t.Bottom)} / 3 = {words.View.Stair.Units.Print(t.Third)}; " + (t.Length < whole - 0.05
                ? $"the usual part of the newel would be {words.View.Stair.Units.Print(whole)} long, but it is kept to {words.View.Stair.Units.Print(t.Length)} so as not to meet another joint"
                : $"length, a part of the newel: {(Math.Abs(practice.Tenon.Part - 2.0 / 3) < 1e-9 ? "2/3" : Number.Print(practice.Tenon.Part, 3))} × {words.View.Stair.Units.Print(side)} = {words.View.Stair.Units.Print(t.Length)}"), $"{Published.Thirds}; {Published.TenonLength}",
            new Measure("the shoulder", t.Length, words.Way(t.IsUpper), "tenon"), new Measure("the shoulder, in the gap,", t.Haunch, words.Way(t.IsUpper), "haunch"),
            new Measure("the band's bottom", t.Third, "up, twice", "third")));
        var at = t.Shoulder + t.Points * (t.PegBack - t.Practice.Draw);
        draft.LinedIn($"{board.Part.Id}-pegs-{end}", $"peg holes, {end} tenons", ThingId.Of(board, t), [.. t.PegHeights.Select(z => Path2.Circle(new(at, z), t.Practice.Peg / 2))], How(
            $"mark the peg holes, {words.View.Stair.Units.Print(t.Practice.Peg)} across", $"in the newel they are {words.View.Stair.Units.Print(t.PegBack)} from the shoulder; in the tenon {words.View.Stair.Units.Print(t.Practice.Draw)} nearer, so that the peg draws the shoulder home", Published.DrawBore,
            new Measure("the shoulder", t.PegBack - t.Practice.Draw, words.Way(t.IsUpper), "peg"), words.Up(t.PegHeights[0], "lower peg"), words.Up(t.PegHeights[1], "upper peg")));
    }

    /// <summary>Lower and upper edge at a station of a board.</summary>
    private static (double Low, double High) Span(StringBoard board, double s)
    {
        var (low, high) = (board.LowerEdge.Bounds, board.UpperEdge.Bounds);
        return (
            GraphCut.HeightAt(board.LowerEdge, Math.Clamp(s, low.MinX, low.MaxX)),
            GraphCut.HeightAt(board.UpperEdge, Math.Clamp(s, high.MinX, high.MaxX)));
    }
}
