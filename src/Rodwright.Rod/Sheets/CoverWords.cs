using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
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
        var course = Course.Of(job.Layout);
        if (course.Turns.IsEmpty) return $"Straight flight, {risers}.";
        var hands = course.Turns.Select(t => Side(job.Layout.HandOf(t))).ToList();
        var oneHand = hands.Distinct().Count() == 1;
        var items = new List<string> { Goings(course.Goings[0]) };
        for (var i = 0; i < course.Turns.Length; i++)
        {
            items.Add(TurnWords.Kind(course.Turns[i]) + (oneHand ? "" : $" to the {hands[i]}"));
            // Two turns that follow one another have nothing between them to tell of.
            if (course.Goings[i + 1] > 0 || i == course.Turns.Length - 1) items.Add(Goings(course.Goings[i + 1]));
        }
        var way = oneHand ? $"Turns to the {hands[0]} going up" : "Going up";
        return $"{way}: {string.Join(", ", items)}; {risers}.";

        static string Side(Hand hand) => hand == Hand.Left ? "left" : "right";
    }

    public static IEnumerable<IReadOnlyList<string>> Sizes(Stair stair)
    {
        var (plan, job) = (stair.Plan, stair.Job);
        yield return ["Height, floor to floor", plan.Units.Print(job.Survey.Height, 2)];
        yield return ["Risers", Number.Print(plan.Risers, 0)];
        yield return ["Rise", plan.Units.Print(plan.Rise, 2)];
        yield return ["Going", plan.Units.Print(plan.Going)];
        yield return ["Pitch", $"{Number.Print(plan.Pitch.Degrees, 2)}°"];
        yield return ["Twice the rise and the going", plan.Units.Print(2 * plan.Rise + plan.Going)];
        yield return ["Width over strings", plan.Units.Print(job.Width)];
        yield return ["Clear width", plan.Units.Print(plan.ClearWidth)];
        foreach (var turn in plan.Turns)
            yield return [$"First and last riser of {TurnWords.The(plan, turn)}, outside the newel's centre", $"{plan.Units.Print(turn.FirstRiser)} and {plan.Units.Print(turn.LastRiser)}"];
        if (plan.TaperedSteps.ToList() is { Count: > 0 } steps)
        {
            yield return ["Least tapered going, straight across", plan.Units.Print(steps.Min(s => s.GoingChord))];
            yield return ["Least narrow end, along the faces", plan.Units.Print(steps.Min(s => s.NarrowAlongFaces))];
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

    /// <summary>What was found, and what to do about it: what pinches is freed, a note only says what could be done otherwise.</summary>
    public static string Told(Finding finding)
    {
        var hint = finding.Hint.TrimEnd('.');
        var said = $"{Severity(finding.Severity)}. {Sentence.Begin(finding.Message.TrimEnd('.'))}.";
        return hint.Length == 0 ? said : finding.Severity == Stairs.Findings.Severity.Note ? $"{said} {Sentence.Begin(hint)}." : $"{said} What would free it: {hint}.";
    }

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
