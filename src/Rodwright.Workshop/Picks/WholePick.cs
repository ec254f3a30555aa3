using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Picks;

/// <summary>The whole stair.</summary>
internal static class WholePick
{
    public static Pick? Of(PickBench bench, string id) => id != ThingId.Plan ? null : Draft.Pick(
        id, bench.Job.Title.Length > 0 ? bench.Job.Title : "the stair", "whole stair in plan", [ThingId.WalkingLine, ThingId.Width, ThingId.ClearWidth], All(bench));

    private static IEnumerable<Fact> All(PickBench bench)
    {
        var (plan, job) = (bench.Plan, bench.Job);
        yield return bench.Mm("height, floor to floor", job.Survey.Height, Why.Field(Why.Height), Why.Height, Survey.Mean(job.Survey));
        yield return Facts.Count("risers", plan.Risers, Why.Rule("one more than there are steps: the last riser arrives at the upper floor"), Why.Steps, Working.Of(plan.Risers - 1) + 1);
        yield return bench.Rise();
        if (plan.Steps.Contains(StepKind.Straight))
        {
            yield return bench.Given(Why.Going, plan.Going);
            yield return bench.Pitch();
            yield return bench.Mm("twice the rise and the going", 2 * plan.Rise + plan.Going, Why.Rule("a comfortable stair keeps it about the length of a stride"), "", Working.Of(2) * plan.Rise + plan.Going);
        }
        yield return WidthPick.ClearWidth(bench);
        yield return WalkingFacts.Length(bench);
        foreach (var fact in ClauseFacts.At(bench, w => !w.StartsWith("step ", StringComparison.Ordinal), r => r is "flight-rise" or "risers-per-flight" or "straight-run" or "two-rise-and-going" or "pitch" or "rise" or "going")) yield return fact;
        var report = bench.Stair.Regulation;
        yield return Facts.Words("regulation", $"{report.Count(CheckOutcome.Pass)} kept, {report.Count(CheckOutcome.Fail)} not kept, {report.Count(CheckOutcome.Advice)} to think over", report.Title, "regulation");
        yield return Facts.Words("proof", bench.Proof.Holds ? "it goes together" : "it does not go together yet", Why.Rule("every joint is described on both its parts and proved"));
    }
}
