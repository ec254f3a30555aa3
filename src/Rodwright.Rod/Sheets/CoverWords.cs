using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Rod.Sheets;

/// <summary>The cover's words.</summary>
internal static class CoverWords
{
    public static string Kind(Stair stair)
    {
        var job = stair.Job;
        var risers = $"{Number.Print(stair.Plan.Risers, 0)} risers";
        if (job.Layout.Turn is not { } turn) return $"Straight flight, {risers}.";
        var middle = turn.Kind == TurnKind.Landing ? "a quarter landing" : $"a quarter turn of {Number.Print(turn.Steps, 0)} tapered steps";
        return $"Turns to the {(job.Layout.Hand == Hand.Left ? "left" : "right")} going up: {Goings(job.Layout.GoingsBefore)}, {middle}, {Goings(job.Layout.GoingsAfter)}; {risers}.";
    }

    public static IEnumerable<IReadOnlyList<string>> Sizes(Stair stair)
    {
        var (plan, job) = (stair.Plan, stair.Job);
        yield return ["Height, floor to floor", Number.Print(job.Survey.Height, 2)];
        yield return ["Risers", Number.Print(plan.Risers, 0)];
        yield return ["Rise", Number.Print(plan.Rise, 2)];
        yield return ["Going", Number.Print(plan.Going)];
        yield return ["Pitch", $"{Number.Print(plan.Pitch.Degrees, 2)}°"];
        yield return ["Twice the rise and the going", Number.Print(2 * plan.Rise + plan.Going)];
        yield return ["Width over strings", Number.Print(job.Width)];
        yield return ["Clear width", Number.Print(plan.ClearWidth)];
        if (plan.Turn is { } turn)
        {
            yield return ["First and last riser of the turn, outside the newel's centre", $"{Number.Print(turn.FirstRiser)} and {Number.Print(turn.LastRiser)}"];
            if (turn.Steps.Length > 0)
            {
                yield return ["Least tapered going, straight across", Number.Print(turn.Steps.Min(s => s.GoingChord))];
                yield return ["Least narrow end, along the faces", Number.Print(turn.Steps.Min(s => s.NarrowAlongFaces))];
            }
        }
        if (job.ModelScale != 1) yield return ["Model scale", $"1:{Number.Print(1 / job.ModelScale, 2)}"];
        yield return ["Regulation", stair.Regulation.Title];
    }

    public static IReadOnlyList<string> Row(ClauseCheck check)
    {
        var rule = check.Clause.Rule.Title;
        return
        [
            check.Clause.Number,
            check.Where.Length > 0 ? $"{rule} ({check.Where})" : rule,
            check.MeasuredWords,
            check.Reason.Length == 0 ? check.Limit : check.Clause.Limit.IsNone ? check.Reason : $"{check.Limit}; {check.Reason}",
            Outcome(check.Outcome),
            EvidenceWords.Print(check.Clause.Evidence),
        ];
    }

    public static string Outcome(CheckOutcome outcome) => outcome switch
    {
        CheckOutcome.Pass => "pass",
        CheckOutcome.Fail => "FAIL",
        CheckOutcome.Advice => "advice",
        _ => "not checked",
    };

    public static string Severity(Severity severity) => severity switch
    {
        Stairs.Findings.Severity.Breach => "Breach",
        Stairs.Findings.Severity.Advice => "Advice",
        Stairs.Findings.Severity.Error => "Error",
        _ => "Note",
    };

    public static IEnumerable<string> Cautions(Job job)
    {
        yield return "Check every size on site before cutting: the walls are not square, and this stair is.";
        yield return "The local code and licensed practice decide what may be built; the last word is the local authority's.";
        yield return "Trimmers, floors, landings and what holds them up are by others.";
        yield return "Print true-size sheets at 100 %, with no scaling, and measure the bars first.";
        if (job.ModelScale != 1) yield return "This is a teaching model, not a stair to be climbed.";
    }

    private static string Goings(int count) => count switch
    {
        0 => "no straight steps",
        1 => "one straight step",
        _ => $"{Number.Print(count, 0)} straight steps",
    };
}
