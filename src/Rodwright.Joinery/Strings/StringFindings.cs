using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>What pinches in the strings: one finding for each stock, naming the strings, with sizes that keep every rule at once.</summary>
internal static class StringFindings
{
    // A foot further out than this before the first riser is worth a look at doors and skirtings, mm (common practice; a straight flight's is about 165).
    private const double FarFoot = 300;

    public static void Report(StairPlan plan, IReadOnlyList<(Development Development, StringEdges Edges)> strings, List<Finding> findings)
    {
        var practice = plan.Job.Practice;
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
            findings.Add(new("RW4001", Severity.Breach, stock.Key ? "practice.wallString.width" : "practice.newelString.width",
                $"{Names(narrow)}: a board {Number.Print(width)} wide is too narrow for the straight steps; with a margin of {Number.Print(practice.Margin)} and {Number.Print(practice.CoverBelow)} below the housings {Number.Print(least)} is needed",
                $"a board {Number.Print(Math.Ceiling((least + Math.Ceiling(shortCover)) / 5) * 5)} wide"
                + (least - width <= spare && margin > 0 ? $", or a margin of {Number.Print(Math.Floor(margin))}" : "")));
        }
        if (shortCover > 0)
        {
            var margin = Math.Ceiling(practice.Margin + shortCover);
            findings.Add(new("RW4002", Severity.Breach, "practice.margin",
                $"{Names(strings.Where(s => s.Edges.LeastNosingCover < practice.NosingCover - 0.005))}: a nosing comes within {Number.Print(cover)} of the upper edge; {Number.Print(practice.NosingCover)} is wanted",
                $"a margin of {Number.Print(margin)}, on boards at least {Number.Print(Math.Ceiling(strings.Max(s => s.Edges.LeastWidth) + margin - practice.Margin))} wide"));
        }
        foreach (var (development, edges) in strings)
        {
            var site = development.Sites[0];
            var reach = site.Face.Station(site.Inner ? plan.Riser(1).Inner : plan.Riser(1).Outer) - edges.Upper.Vertices[0].At.X;
            if (site.Lower.Kind != StringEndKind.Foot || site.Lower.Level > 0 || reach <= FarFoot) continue;
            findings.Add(new("RW4009", Severity.Advice, site.Name,
                $"at the flat pitch of the tapered steps its foot reaches {Number.Print(reach)} in front of the first riser before it meets the skirting",
                "see that it clears doors there, or begin with a straight step"));
        }
        if (practice.Tread > practice.FloorBoards + Tolerance.Same)
        {
            findings.Add(new("RW4008", Severity.Advice, "practice.floorBoards",
                $"nosing pieces are {Number.Print(practice.Tread)} thick on a floor of {Number.Print(practice.FloorBoards)}",
                $"rebate their undersides {Number.Print(practice.Tread - practice.FloorBoards)} over the trimmer, from {Number.Print(practice.Nosing + practice.Riser + practice.Packing)} behind the nosing on"));
        }
    }

    private static string Names(IEnumerable<(Development Development, StringEdges Edges)> strings) =>
        string.Join(", ", strings.SelectMany(s => s.Development.Sites).Select(s => s.Mark));
}
