using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Workshop.Picks;

/// <summary>What a bent riser measures as the flat board it is made from.</summary>
internal static class BentRiserFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, Part part)
    {
        var (step, plan) = (bench.Job.BottomStep, bench.Plan);
        var whole = Working.Of(0.0);
        foreach (var end in plan.RoundedEnds)
        {
            yield return BottomStepPick.Radius(bench, end);
            var bend = (Working.Of(end.Radius) - Working.Of(step.Veneer) / 2) * Working.Pi / 2;
            var round = Tolerance.IsSame(end.Back, end.Radius) ? bend : Working.Of(end.Back - end.Radius) + bend;
            yield return bench.Mm("length round the bend", end.Development(-step.Veneer / 2), Why.Rule("from the newel's face to the spring, in the middle of the veneer, which neither stretches nor is crushed"), "", round);
            yield return bench.Mm("thinned, from its end", end.Development(-step.Veneer / 2) + step.Thinned, Why.Rule("round the bend, the slot of the wedges, and as much again before it"), "bottomStep.wedges", round + 2 * Working.Of(step.Wedges));
            whole = round;
        }
        yield return bench.Mm("thinned to", step.Veneer, Why.Field("bottomStep.veneer"), "bottomStep.veneer");
        var straight = part.Blank.Length - plan.RoundedEnds.Sum(e => e.Development(-step.Veneer / 2));
        yield return bench.Mm("length of the board", part.Blank.Length, Why.Rule("before it is bent: what stays straight, its square end into the string, and the length round the bend"), "", plan.RoundedEnds.Length == 1 ? Working.Of(straight) + whole : Working.Of(straight) + whole + whole);
    }
}
