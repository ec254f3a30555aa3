using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A landing, explained.</summary>
internal static class LandingFacts
{
    /// <summary>Its two lengths, from a riser's face to the wall string beyond the corner.</summary>
    public static IEnumerable<Fact> Lengths(PickBench bench)
    {
        var plan = bench.Plan;
        if (plan.Turn is not { } turn) yield break;
        var corner = plan.Outer.Edges[0].To;
        foreach (var (words, k, e) in new[] { ("way in", turn.FirstLine, turn.FirstRiser), ("way out", turn.LastLine, turn.LastRiser) })
            yield return Facts.Mm($"length of the landing, {words}", plan.Riser(k).Outer.DistanceTo(corner), Why.Rule("from the riser's face to the face of the wall string it runs up to: the offset, half the inner string and the clear width"), Why.Width,
                Working.Of(e) + Working.Of(plan.InnerThickness) / 2 + plan.ClearWidth);
        foreach (var fact in ClauseFacts.At(bench, w => w.StartsWith("landing", StringComparison.Ordinal))) yield return fact;
    }
}
