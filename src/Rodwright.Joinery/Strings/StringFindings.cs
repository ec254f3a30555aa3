using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>What pinches in the strings: one finding for each stock, naming the strings, with sizes that keep every rule at once.</summary>
internal static class StringFindings
{
    // A foot further out than this before the first riser is worth a look at doors and skirtings, mm (common practice; a straight flight's is about 165).
    private const double FarFoot = 300;

    public static void Report(StairPlan plan, IReadOnlyList<(Development Development, StringEdges Edges)> strings, List<Finding> findings)
    {
        var (practice, units) = (plan.Job.Practice, plan.Units);
        var shortCover = strings.Min(s => s.Edges.LeastNosingCover) is var cover && cover < practice.NosingCover - 0.005 ? practice.NosingCover - cover : 0;
        foreach (var stock in strings.GroupBy(s => s.Development.Sites[0].IsWall))
        {
            var width = stock.First().Development.Sites[0].Width;
            var narrow = stock.Where(s => s.Edges.LeastWidth > width + 0.05).ToList();
            if (narrow.Count == 0) continue;
            var least = narrow.Max(s => s.Edges.LeastWidth);
            // What a larger margin asks for, and what a smaller one may still give.
            var spare = cover - practice.NosingCover;
            var margin = practice.Margin - (least - width);
            var (field, board) = (Field(stock.Key), units.Up(least + units.Up(shortCover), 5));
            var isMarginEnough = least - width <= spare && margin > 0;
            findings.Add(new("RW4001", Severity.Breach, field,
                $"{Names(narrow)}: a board {units.Print(width)} wide is too narrow for the straight steps; with a margin of {units.Print(practice.Margin)} and {units.Print(practice.CoverBelow)} below the housings {units.Print(least)} is needed",
                $"a board {units.Print(board)} wide" + (isMarginEnough ? $", or a margin of {units.Print(units.Down(margin))}" : ""))
            {
                Remedies =
                [
                    .. Enumerable.Range(0, 6).Select(i => Remedy.Of($"{(stock.Key ? "wall" : "newel")} strings {units.Print(board + units.Nearby(5) * i)} wide", FieldChange.To(field, board + units.Nearby(5) * i))),
                    .. isMarginEnough ? new[] { Remedy.Of($"a margin of {units.Print(units.Down(margin))}", FieldChange.To("practice.margin", units.Down(margin))) } : [],
                ],
            });
        }
        if (shortCover > 0)
        {
            var margin = units.Up(practice.Margin + shortCover);
            findings.Add(new("RW4002", Severity.Breach, "practice.margin",
                $"{Names(strings.Where(s => s.Edges.LeastNosingCover < practice.NosingCover - 0.005))}: a nosing comes within {units.Print(cover)} of the upper edge; {units.Print(practice.NosingCover)} is wanted",
                $"a margin of {units.Print(margin)}, on boards at least {units.Print(units.Up(strings.Max(s => s.Edges.LeastWidth) + margin - practice.Margin))} wide")
            {
                Remedies = [.. Enumerable.Range(0, 6).Select(i => Margin(margin + units.Nearby(2) * i))],
            });
        }
        Remedy Margin(double margin)
        {
            // Boards that would come out too narrow under the larger margin are widened with it.
            var wider = strings.GroupBy(s => s.Development.Sites[0].IsWall)
                .Select(stock => (IsWall: stock.Key, Has: stock.First().Development.Sites[0].Width, Wants: units.Up(stock.Max(s => s.Edges.LeastWidth) + margin - practice.Margin, 5)))
                .Where(b => b.Wants > b.Has).ToList();
            var words = $"a margin of {units.Print(margin)}" + string.Concat(wider.Select(b => $", {(b.IsWall ? "wall" : "newel")} strings {units.Print(b.Wants)} wide"));
            return new(words, [FieldChange.To("practice.margin", margin), .. wider.Select(b => FieldChange.To(Field(b.IsWall), b.Wants))]);
        }
        foreach (var (development, edges) in strings)
        {
            var site = development.Sites[0];
            var reach = site.Face.Station(site.Inner ? plan.Riser(site.FirstRiser).Inner : plan.Riser(site.FirstRiser).Outer) - edges.Upper.Vertices[0].At.X;
            if (site.Lower.Kind != StringEndKind.Foot || site.Lower.Level > 0 || reach <= FarFoot) continue;
            findings.Add(new("RW4009", Severity.Advice, site.Name,
                $"at the flat pitch of the tapered steps its foot reaches {units.Print(reach)} in front of the first riser before it meets the skirting",
                "see that it clears doors there, or begin with a straight step")
            {
                Remedies = plan.Turn is { FirstLine: 1 } && Course.Of(plan.Job.Layout) is { } course && course.Goings[1] > 0
                    ? [Remedy.Of("the stair begun with a straight step", ChangesOfSteps.Sequence(course with { Goings = course.Goings.SetItem(0, 1).SetItem(1, course.Goings[1] - 1) }))]
                    : [],
            });
        }
        foreach (var (development, edges) in strings)
        {
            var site = development.Sites[0];
            var foot = edges.Upper.Vertices[0].At.Y - site.Lower.Level;
            if (site.Lower.Kind != StringEndKind.Foot || foot >= practice.SkirtingAt(site.Lower.Level) - Tolerance.Joint) continue;
            findings.Add(new("RW4012", Severity.Advice, site.Name,
                $"the skirting, {units.Print(practice.SkirtingAt(site.Lower.Level))} high, stands higher than the string in front of its first nosing; the foot is cut plumb {units.Print(practice.NosingCover)} before the nosing, {units.Print(foot)} high",
                $"let the skirting die on the string's end, or a skirting of {units.Print(units.Down(foot))}")
            {
                Remedies = foot >= 0 ? [Remedy.Of($"a skirting of {units.Print(units.Down(foot))}", FieldChange.To("practice.skirting", units.Down(foot)))] : [],
            });
        }
        foreach (var (development, edges) in strings.Where(_ => practice.SkirtingJoint != SkirtingJoint.Plumb))
        {
            var (site, top, floor) = (development.Sites[0], edges.Upper.Vertices[0], edges.Lower.Vertices[0].At);
            if (site.Lower.Kind != StringEndKind.Foot || (practice.SkirtingJoint == SkirtingJoint.Mitred ? floor.X > top.At.X + Tolerance.Joint : top.Bulge != 0)) continue;
            findings.Add(new("RW4018", Severity.Note, site.Name,
                practice.SkirtingJoint == SkirtingJoint.Mitred ? "its foot leaves no room on the floor for a mitre with the skirting; it is cut plumb" : "its upper edge is too short, or too low, at the foot to be eased into the skirting; it is cut plumb there",
                practice.SkirtingJoint == SkirtingJoint.Mitred ? "a wider string, or a lower skirting" : "a shorter easing above it (practice.easing), or a lower skirting"));
        }
        if (practice.Tread > practice.FloorBoards + Tolerance.Same)
        {
            findings.Add(new("RW4008", Severity.Advice, "practice.floorBoards",
                $"nosing pieces are {units.Print(practice.Tread)} thick on a floor of {units.Print(practice.FloorBoards)}",
                $"rebate their undersides {units.Print(practice.Tread - practice.FloorBoards)} over the trimmer, from {units.Print(practice.Nosing + practice.Riser + practice.Packing)} behind the nosing on"));
        }
    }

    private static string Field(bool isWall) => isWall ? "practice.wallString.width" : "practice.newelString.width";

    /// <summary>Outlines that cross themselves: the sizes given cannot be one board.</summary>
    public static void Impossible(StairPlan plan, IEnumerable<StringBoard> boards, List<Finding> findings)
    {
        foreach (var board in boards.Where(b => !Region.IsSimple(b.Outline)))
        {
            var (practice, units) = (plan.Job.Practice, plan.Units);
            findings.Add(new("RW4011", Severity.Error, board.Site.Name,
                $"its outline crosses itself: a board {units.Print(board.Site.Width)} wide with a margin of {units.Print(practice.Margin)}, skirting {units.Print(practice.Skirting)} high, a level head of {units.Print(practice.HeadLevel)} and floor boards of {units.Print(practice.FloorBoards)} cannot end as it should",
                "a lower skirting, a shorter level head, thinner floor boards or a wider board, in proportion to the steps")
            {
                Remedies = [.. Proportioned(units, practice, board.Site)],
            });
        }
    }

    /// <summary>The skirting lower, the level head shorter, the board wider, each step by step.</summary>
    private static IEnumerable<Remedy> Proportioned(Units units, Practice practice, StringSite site)
    {
        foreach (var part in new[] { 0.75, 0.5, 0.25, 0 })
            yield return Remedy.Of($"a skirting of {units.Print(units.Down(part * practice.Skirting))}", FieldChange.To("practice.skirting", units.Down(part * practice.Skirting)));
        foreach (var part in new[] { 0.75, 0.5, 0.25, 0 })
            yield return Remedy.Of($"a level head of {units.Print(units.Down(part * practice.HeadLevel))}", FieldChange.To("practice.headLevel", units.Down(part * practice.HeadLevel)));
        for (var wider = units.Nearby(20); wider <= 200; wider += units.Nearby(20))
            yield return Remedy.Of($"{(site.IsWall ? "wall" : "newel")} strings {units.Print(site.Width + wider)} wide", FieldChange.To(Field(site.IsWall), site.Width + wider));
    }

    /// <summary>Pieces to joint on that are wider than the board itself, and so are glued up first.</summary>
    public static void WidePieces(Units units, IEnumerable<StringBoard> boards, List<Finding> findings)
    {
        foreach (var board in boards)
        {
            foreach (var piece in board.Part.Blank.JointedUp.Where(p => p.Width > board.Site.Width + Tolerance.Print))
            {
                findings.Add(new("RW4010", Severity.Note, board.Site.Name,
                    $"piece {board.Site.Mark}{piece.Mark} to joint on is {units.Print(piece.Width)} wide, wider than the {units.Print(board.Site.Width)} of the board",
                    $"glue it up from {Number.Print(Math.Ceiling(piece.Width / board.Site.Width))} boards"));
            }
        }
    }

    private static string Names(IEnumerable<(Development Development, StringEdges Edges)> strings) =>
        string.Join(", ", strings.SelectMany(s => s.Development.Sites).Select(s => s.Mark));
}
