using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations;

/// <summary>Sets a job out in plan with a remedy's changes, to see whether it does what it says. Never offers remedies itself, so that a trial ends.</summary>
internal static class Trial
{
    /// <summary>The remedies after which a job can be set out in plan without the finding of a code.</summary>
    public static ImmutableArray<Remedy> Freeing(Job job, Regulation regulation, string code, IEnumerable<Way> ways) =>
        First(ways, r => Plan(job, regulation, r) is { Value: not null } tried && tried.Findings.All(f => f.Code != code));

    /// <summary>The remedies after which a stair keeps every clause of its table that a rule is measured for.</summary>
    public static ImmutableArray<Remedy> Keeping(StairPlan plan, Rule rule, IEnumerable<Way> ways) =>
        First(ways, r => Plan(plan.Job, plan.Regulation, r)?.Value is { } tried && Judge.Keeps(tried, rule));

    private static ImmutableArray<Remedy> First(IEnumerable<Way> ways, Func<Remedy, bool> holds) =>
        [.. ways.Select(w => w.First(holds)).OfType<Remedy>().DistinctBy(r => r.Words)];

    private static Outcome<StairPlan>? Plan(Job job, Regulation regulation, Remedy remedy)
    {
        var changed = JobChanges.Draft(job, remedy.Changes);
        return changed.Value is { } tried && tried != job ? Planner.Draft(tried, regulation) : null;
    }
}
