using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A landing, explained.</summary>
internal static class LandingFacts
{
    /// <summary>Its two lengths, from a riser's face to the wall string beyond the corner.</summary>
    public static IEnumerable<Fact> Lengths(PickBench bench, int step)
    {
        var plan = bench.Plan;
        if (plan.TurnOf(step) is not { } turn) yield break;
        var corners = TurnPlaces.Corners(turn);
        foreach (var (words, k, e, corner) in new[] { ("way in", turn.FirstLine, turn.FirstRiser, corners[0]), ("way out", turn.LastLine, turn.LastRiser, corners[^1]) })
            yield return bench.Mm($"length of the landing, {words}", TurnPlaces.Far(plan, turn, plan.Riser(k)).DistanceTo(corner), Why.Rule("from the riser's face to the face of the wall string it runs up to: the offset, half the inner string and the clear width"), Why.Width,
                Working.Of(e) + Reach(plan, turn));
        var name = plan.Turns.Count(t => t.Steps.IsEmpty) == 1 ? "landing," : $"landing of turn {Number.Print(turn.Index + 1, 0)},";
        foreach (var fact in ClauseFacts.At(bench, w => w.StartsWith(name, StringComparison.Ordinal))) yield return fact;
    }

    /// <summary>From a turn's newel to the far faces: half the string on its side, more where two strings pass side by side, and the clear width.</summary>
    public static Working Reach(StairPlan plan, TurnPlan turn)
    {
        var thick = plan.IsInner(turn) ? plan.InnerThickness : plan.OuterThickness;
        var beside = turn.Site.InnerFace - thick / 2;
        var face = Working.Of(thick) / 2;
        return (Math.Abs(beside) > 1e-9 ? face + beside : face) + plan.ClearWidth;
    }
}
