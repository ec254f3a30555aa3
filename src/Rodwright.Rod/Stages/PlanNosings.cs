using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>The last stage of the plan: nosings.</summary>
internal static class PlanNosings
{
    public static IEnumerable<Stage> Of(PlanView view)
    {
        var practice = view.Stair.Job.Practice;
        var draft = new StageDraft("plan-nosings", Bench.Plan, PlanGround.Subject, "Plan: nosings, broken lines");
        var once = new Telling(
            "nosings", "nosings",
            $"from every riser's face, {K(1)} to {K(view.Stair.Plan.Risers)}, measure {view.Stair.Units.Print(practice.Nosing)} down the stair at both ends; draw the nosing's edge as a broken line",
            $"the nosing is parallel to its own riser, {view.Stair.Units.Print(practice.Nosing)} in front of it, tapered steps too ({Published.Nosing})");
        foreach (var (k, line) in view.Nosings)
        {
            draft.LinedIn($"nosing-{K(k)}", $"nosing {K(k)}", ThingId.Nosing(k), [line], How(
                "draw the nosing's edge as a broken line, parallel", "the nosing is parallel to its own riser", Published.Nosing,
                new Measure(RiserFace(k), practice.Nosing, "down the stair", "nosing")), once);
        }
        return draft.Done();
    }
}
