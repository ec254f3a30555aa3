using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations;

/// <summary>Judges a stair by the table it was set out under.</summary>
public static class Judge
{
    /// <summary>Every clause of the plan's regulation, and a finding for each that is not kept.</summary>
    public static RegulationReport Check(StairPlan plan)
    {
        var table = plan.Regulation;
        var checks = ImmutableArray.CreateBuilder<ClauseCheck>(table.Clauses.Length);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var clause in table.Clauses)
        {
            var check = Check(plan, clause);
            checks.Add(check);
            if (check.Outcome is CheckOutcome.Fail or CheckOutcome.Advice) findings.Add(Say(plan, check));
        }
        return new(table.Id, table.Title, table.Measures, checks.MoveToImmutable(), findings.ToImmutable());
    }

    private static ClauseCheck Check(StairPlan plan, Clause clause)
    {
        var range = clause.Limit.On(plan, clause.Rule.Unit);
        var words = clause.Limit.Words(clause.Rule, range);
        if (clause.Except(plan) is { } exception) return new(clause, CheckOutcome.NotChecked, null, range, words, "", exception);
        Measurement? worst = null;
        foreach (var measurement in clause.Rule.Measure(plan))
            if (worst is not { } so || Worse(range, measurement.Value, so.Value)) worst = measurement;
        if (worst is not { } found) return new(clause, CheckOutcome.NotChecked, null, range, words, "", clause.Rule.Nothing);
        if (range is { Least: null, Most: null })
            return new(clause, CheckOutcome.NotChecked, found.Value, range, words, found.Where, "for information: no limit is set for it");
        var outcome = range.Holds(found.Value) ? CheckOutcome.Pass : clause.Weight == Weight.Limit ? CheckOutcome.Fail : CheckOutcome.Advice;
        return new(clause, outcome, found.Value, range, words, found.Where, "");
    }

    /// <summary>Nearer to failing; where there is no limit, smaller. Of equals, whatever their rounding, the lowest step stands.</summary>
    private static bool Worse(LimitRange range, double a, double b) =>
        range is { Least: null, Most: null } ? a < b - Tolerance.Same : range.Spare(a) < range.Spare(b) - Tolerance.Same;

    private static Finding Say(StairPlan plan, ClauseCheck check)
    {
        var rule = check.Clause.Rule;
        var failed = check.Outcome == CheckOutcome.Fail;
        var at = new Measurement(check.Where, check.Measured!.Value);
        var source = $"{plan.Regulation.Title}, {check.Clause.Number}";
        var doubt = check.Clause.Evidence == Evidence.Memory ? "; not checked against the document" : "";
        return new(rule.Code, failed ? Severity.Breach : Severity.Advice, check.Where,
            $"{rule.Title} is {rule.Print(at.Value)}; {check.Limit} is {(failed ? "allowed" : "advised")} ({source}{doubt})",
            rule.Remedy(plan, check.Range, at));
    }
}
