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
    public static RegulationReport Check(StairPlan plan) => Report(plan, Telling.Words);

    /// <summary>The same report, its findings without hints: to follow a drag, and to try remedies.</summary>
    public static RegulationReport Draft(StairPlan plan) => Report(plan, Telling.Bare);

    /// <summary>The same report, its findings of one code with remedies that were tried in plan.</summary>
    public static RegulationReport Advise(StairPlan plan, string code) => Report(plan, Telling.RemediesFor(code));

    private static RegulationReport Report(StairPlan plan, Telling telling)
    {
        var table = plan.Regulation;
        var checks = ImmutableArray.CreateBuilder<ClauseCheck>(table.Clauses.Length);
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var clause in table.Clauses)
        {
            var check = Check(plan, clause);
            checks.Add(check);
            if (check.Outcome is CheckOutcome.Fail or CheckOutcome.Advice) findings.Add(Say(plan, check, telling));
        }
        return new(table.Id, table.Title, table.Measures, checks.MoveToImmutable(), findings.ToImmutable());
    }

    /// <summary>Whether a stair keeps every clause, advice too, that a rule is measured for.</summary>
    internal static bool Keeps(StairPlan plan, Rule rule) =>
        plan.Regulation.Clauses.Where(c => c.Rule.Code == rule.Code).All(c => Check(plan, c).Outcome is CheckOutcome.Pass or CheckOutcome.NotChecked);

    /// <summary>
    /// What all clauses for one rule allow together, so that a remedy for one does not leave the next broken; the clause's own range where they contradict one another.
    /// </summary>
    private static LimitRange Together(StairPlan plan, Rule rule, LimitRange own)
    {
        var (least, most) = (own.Least, own.Most);
        foreach (var clause in plan.Regulation.Clauses.Where(c => c.Rule == rule && c.Except(plan) is null))
        {
            var range = clause.Limit.On(plan, rule.Unit);
            least = range.Least > least || least is null ? range.Least : least;
            most = range.Most < most || most is null ? range.Most : most;
        }
        return least > most ? own : new(least, most);
    }

    private static ClauseCheck Check(StairPlan plan, Clause clause)
    {
        var range = clause.Limit.On(plan, clause.Rule.Unit);
        var words = clause.Limit.Words(clause.Rule, range, plan.Units);
        if (clause.Except(plan) is { } exception) return new(clause, CheckOutcome.NotChecked, null, range, words, "", exception) { Units = plan.Units };
        Measurement? worst = null;
        foreach (var measurement in clause.Rule.Measure(plan))
            if (worst is not { } so || Worse(range, measurement.Value, so.Value)) worst = measurement;
        if (worst is not { } found) return new(clause, CheckOutcome.NotChecked, null, range, words, "", clause.Rule.Nothing) { Units = plan.Units };
        if (range is { Least: null, Most: null })
            return new(clause, CheckOutcome.NotChecked, found.Value, range, words, found.Where, "for information: no limit is set for it") { Units = plan.Units };
        var outcome = range.Holds(found.Value) ? CheckOutcome.Pass : clause.Weight == Weight.Limit ? CheckOutcome.Fail : CheckOutcome.Advice;
        return new(clause, outcome, found.Value, range, words, found.Where, "") { Units = plan.Units };
    }

    /// <summary>Nearer to failing; where there is no limit, smaller. Of equals, whatever their rounding, the lowest step stands.</summary>
    private static bool Worse(LimitRange range, double a, double b) =>
        range is { Least: null, Most: null } ? a < b - Tolerance.Same : range.Spare(a) < range.Spare(b) - Tolerance.Same;

    private static Finding Say(StairPlan plan, ClauseCheck check, Telling telling)
    {
        var rule = check.Clause.Rule;
        var failed = check.Outcome == CheckOutcome.Fail;
        var at = new Measurement(check.Where, check.Measured!.Value);
        var source = $"{plan.Regulation.Title}, {check.Clause.Number}";
        var doubt = check.Clause.Evidence == Evidence.Memory ? "; not checked against the document" : "";
        var advice = telling.Hints ? rule.Remedy(plan, Together(plan, rule, check.Range), at) : "";
        return new(rule.Code, failed ? Severity.Breach : Severity.Advice, check.Where,
            $"{rule.Title} is {rule.Print(at.Value, plan.Units)}; {check.Limit} is {(failed ? "allowed" : "advised")} ({source}{doubt})", advice.Words)
        {
            Remedies = telling.Remedies(rule.Code) ? Trial.Keeping(plan, rule, advice.Ways) : [],
        };
    }
}
