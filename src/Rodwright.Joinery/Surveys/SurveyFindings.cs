using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Joinery.Surveys;

/// <summary>What the room pinches, in bench words: RW27xx.</summary>
internal static class SurveyFindings
{
    public static IEnumerable<Finding> Of(StairPlan plan, SurveyReport report) =>
        [.. Room(plan, report), .. Over(report), .. Openings(plan, report), .. Scribing(plan, report), .. WayIn(report)];

    private static IEnumerable<Finding> Room(StairPlan plan, SurveyReport report)
    {
        foreach (var fit in report.Walls.Where(f => f.Least < -0.5))
            yield return new("RW2701", Severity.Breach, $"survey.walls[{fit.Wall}]", $"the stair stands {Mm(-fit.Least)} in {fit.Name}", $"make the stair {Mm(-fit.Least)} shorter that way: a shorter going, a step fewer in that flight, or a narrower stair");
        if (plan.Job.Survey.Place.From is null && plan.Job.Survey.Walls.Count > 0 && RoomFrame.Of(plan).From is < 0 and var from)
            yield return new("RW2702", Severity.Breach, "survey.walls", $"standing in its corner the stair begins {Mm(-from)} before the beginning of its wall", $"shorten it by {Mm(-from)}: a shorter going, or a step fewer before the turn");
        for (var i = 0; i < plan.Job.Survey.Walls.Count - 1; i++)
        {
            if (plan.Job.Survey.Walls[i].Corner is null && report.Scribing.Any(s => s.Wall == i + 1))
                yield return new("RW2703", Severity.Note, $"survey.walls[{i}].corner", $"the corner at the end of {RoomShape.NameOf(plan.Job.Survey.Walls[i], i)} was not measured; it is taken as square", "mark 600 and 800 from the corner and measure across: 1000 when it is square");
        }
    }

    private static IEnumerable<Finding> Over(SurveyReport report)
    {
        if (report.Headroom is { ArrivalCovered: > 0 and var deep })
            yield return new("RW2704", Severity.Breach, "survey.well", $"the well ends {Mm(deep)} before the top riser: the floor would lie on the top step", $"make the well {Mm(deep)} longer there, or let the stair arrive {Mm(deep)} sooner");
    }

    private static IEnumerable<Finding> Openings(StairPlan plan, SurveyReport report)
    {
        foreach (var fit in report.Openings)
        {
            var (where, words) = ($"survey.walls[{fit.Wall}].openings[{fit.Index}]", $"the {fit.Opening.Words} in {RoomShape.NameOf(plan.Job.Survey.Walls[fit.Wall], fit.Wall)}");
            if (!fit.IsClear)
                yield return new("RW2705", Severity.Breach, where, $"{words} has {Mm(fit.Clear!.Value)} of clear floor before step {Number.Print(fit.Step, 0)}; {Mm(fit.Opening.Depth)} is wanted", $"begin the stair {Mm(fit.Opening.Depth - fit.Clear.Value)} further away, or let the leaf swing out");
            if (fit.Crossed)
                yield return new("RW2706", Severity.Breach, where, $"the string against the wall runs across {words}", "move the stair along the wall, or keep a string away from this wall");
        }
    }

    private static IEnumerable<Finding> Scribing(StairPlan plan, SurveyReport report)
    {
        var allowance = plan.Job.Practice.Scribing;
        foreach (var gap in report.Scribing.Where(g => g.Widest > allowance + 0.005))
            yield return new("RW2707", Severity.Breach, $"string {gap.String}",
                $"{gap.Name} leaves a gap of {Mm(gap.Widest)} behind {gap.String}, at {Mm(gap.S)} along it and {Mm(gap.Z)} up; {Mm(allowance)} may be scribed", "pack the string out straight and cover the gap, have the wall straightened, or take a thicker string and raise practice.scribing");
    }

    private static IEnumerable<Finding> WayIn(SurveyReport report)
    {
        foreach (var stuck in report.WayIn.Where(v => !v.Passes))
        {
            var index = report.WayIn.Select(v => v.Stop).Distinct().ToList().IndexOf(stuck.Stop);
            var most = stuck.Longest is > 0 and var longest ? $"; of its section {Mm(longest)} passes" : "; its section is too large";
            yield return stuck.Piece.Together
                ? new("RW2708", Severity.Note, $"survey.wayIn[{index}]", $"{stuck.Piece.Mark} put together, {Size(stuck.Piece)}, does not pass the {stuck.Stop.Words}{most}", "carry it in as strings and steps, and put it together inside")
                : new("RW2709", Severity.Breach, $"survey.wayIn[{index}]", $"{stuck.Piece.Mark}, {Size(stuck.Piece)}, does not pass the {stuck.Stop.Words}{most}", "another way in, through a window for instance; or joint the piece inside the house");
        }
    }

    private static string Size(WayInPiece piece) => $"{Number.Print(piece.Length)} x {Number.Print(piece.Width)} x {Number.Print(piece.Thickness)}";

    private static string Mm(double value) => Number.Print(value) + " mm";
}
