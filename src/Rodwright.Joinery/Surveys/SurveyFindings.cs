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
        [.. Room(plan, report), .. Over(plan, report), .. Openings(plan, report), .. Scribing(plan, report), .. WayIn(plan.Units, report)];

    private static IEnumerable<Finding> Room(StairPlan plan, SurveyReport report)
    {
        foreach (var fit in report.Walls.Where(f => f.Least < -0.5))
            yield return new("RW2701", Severity.Breach, $"survey.walls[{fit.Wall}]", $"the stair stands {plan.Units.With(-fit.Least, 1)} in {fit.Name}", $"make the stair {plan.Units.With(-fit.Least, 1)} shorter that way: a shorter going, a step fewer in that flight, or a narrower stair");
        if (plan.Job.Survey.Place.From is null && plan.Job.Survey.Walls.Count > 0 && RoomFrame.Of(plan).From is < 0 and var from)
            yield return new("RW2702", Severity.Breach, "survey.walls", $"standing in its corner the stair begins {plan.Units.With(-from, 1)} before the beginning of its wall", $"shorten it by {plan.Units.With(-from, 1)}: a shorter going, or a step fewer before the turn");
        for (var i = 0; i < plan.Job.Survey.Walls.Count - 1; i++)
        {
            if (plan.Job.Survey.Walls[i].Corner is null && report.Scribing.Any(s => s.Wall == i + 1))
                yield return new("RW2703", Severity.Note, $"survey.walls[{i}].corner", $"the corner at the end of {RoomShape.NameOf(plan.Job.Survey.Walls[i], i)} was not measured; it is taken as square", plan.Units.IsInches ? "mark 3 and 4 feet from the corner and measure across: 5 feet when it is square" : "mark 600 and 800 from the corner and measure across: 1000 when it is square");
        }
    }

    private static IEnumerable<Finding> Over(StairPlan plan, SurveyReport report)
    {
        if (report.Headroom is { ArrivalCovered: > 0 and var deep })
            yield return new("RW2704", Severity.Breach, "survey.well", $"the well ends {plan.Units.With(deep, 1)} before the top riser: the floor would lie on the top step", $"make the well {plan.Units.With(deep, 1)} longer there, or let the stair arrive {plan.Units.With(deep, 1)} sooner");
    }

    private static IEnumerable<Finding> Openings(StairPlan plan, SurveyReport report)
    {
        foreach (var fit in report.Openings)
        {
            var (where, words) = ($"survey.walls[{fit.Wall}].openings[{fit.Index}]", $"the {fit.Opening.Words} in {RoomShape.NameOf(plan.Job.Survey.Walls[fit.Wall], fit.Wall)}");
            if (!fit.IsClear)
                yield return new("RW2705", Severity.Breach, where, $"{words} has {plan.Units.With(fit.Clear!.Value, 1)} of clear floor before step {Number.Print(fit.Step, 0)}; {plan.Units.With(fit.Opening.Depth, 1)} is wanted", $"begin the stair {plan.Units.With(fit.Opening.Depth - fit.Clear.Value, 1)} further away, or let the leaf swing out");
            if (fit.Crossed)
                yield return new("RW2706", Severity.Breach, where, $"the string against the wall runs across {words}", "move the stair along the wall, or keep a string away from this wall");
        }
    }

    private static IEnumerable<Finding> Scribing(StairPlan plan, SurveyReport report)
    {
        var allowance = plan.Job.Practice.Scribing;
        foreach (var gap in report.Scribing.Where(g => g.Widest > allowance + 0.005))
            yield return new("RW2707", Severity.Breach, $"string {gap.String}",
                $"{gap.Name} leaves a gap of {plan.Units.With(gap.Widest, 1)} behind {gap.String}, at {plan.Units.With(gap.S, 1)} along it and {plan.Units.With(gap.Z, 1)} up; {plan.Units.With(allowance, 1)} may be scribed", "pack the string out straight and cover the gap, have the wall straightened, or take a thicker string and raise practice.scribing");
    }

    private static IEnumerable<Finding> WayIn(Units units, SurveyReport report)
    {
        foreach (var stuck in report.WayIn.Where(v => !v.Passes))
        {
            var index = report.WayIn.Select(v => v.Stop).Distinct().ToList().IndexOf(stuck.Stop);
            var most = stuck.Longest is > 0 and var longest ? $"; of its section no more than {units.With(longest, 1)} in length passes" : "; its section is too large";
            yield return stuck.Piece.Together
                ? new("RW2708", Severity.Note, $"survey.wayIn[{index}]", $"{stuck.Piece.Mark} put together, {Size(units, stuck.Piece)}, does not pass the {stuck.Stop.Words}{most}", "carry it in as strings and steps, and put it together inside")
                : new("RW2709", Severity.Breach, $"survey.wayIn[{index}]", $"{stuck.Piece.Mark}, {Size(units, stuck.Piece)}, does not pass the {stuck.Stop.Words}{most}", "another way in, through a window for instance; or joint the piece inside the house");
        }
    }

    private static string Size(Units units, WayInPiece piece) => $"{units.Print(piece.Length)} × {units.Print(piece.Width)} × {units.Print(piece.Thickness)}";
}
