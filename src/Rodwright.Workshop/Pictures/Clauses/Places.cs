using System.Globalization;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>Reads where something was found: "step 4", "straight steps".</summary>
internal static class Places
{
    /// <summary>The number in "step 4" or "riser 4"; null where the words are others.</summary>
    public static int? Number(string where, string word) =>
        where.StartsWith(word + " ", StringComparison.Ordinal) && int.TryParse(where.AsSpan(word.Length + 1), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>The step a check speaks of: its own, or for straight steps one in the middle of the longest flight.</summary>
    public static int Step(StairPlan plan, ClauseCheck check) => Number(check.Where, "step") ?? StraightStep(plan);

    /// <summary>A straight step with straight neighbours where there are such; the first step where none is straight.</summary>
    public static int StraightStep(StairPlan plan)
    {
        var straight = Enumerable.Range(1, plan.Risers - 1).Where(Straight).ToList();
        return straight.Count == 0 ? 1 : straight.MaxBy(k => (Math.Min(Run(k, -1), Run(k, 1)), -k));

        bool Straight(int k) => k >= 1 && k < plan.Risers && plan.Steps[k - 1] == StepKind.Straight;

        int Run(int k, int way)
        {
            var n = 0;
            while (Straight(k + way * (n + 1))) n++;
            return n;
        }
    }

    /// <summary>The going of a step as its regulation measures it, mm.</summary>
    public static double Going(StairPlan plan, int step) => plan.Steps[step - 1] switch
    {
        StepKind.Straight => plan.Going,
        StepKind.Tapered => plan.TaperedSteps.First(s => s.Number == step) is var tapered && plan.Regulation.Going == GoingMeasure.Chord ? tapered.GoingChord : tapered.GoingArc,
        _ => plan.Riser(step).Walking.DistanceTo(plan.Riser(step + 1).Walking),
    };
}
