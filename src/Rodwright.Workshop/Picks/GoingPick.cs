using Rodwright.Geometry;
using Rodwright.Rod.Things;

namespace Rodwright.Workshop.Picks;

/// <summary>The going of a step.</summary>
internal static class GoingPick
{
    public static Pick? Of(PickBench bench, string id) => bench.Number(id, "going-") is not { } k || k == bench.Plan.Risers ? null : Draft.Pick(
        id, $"going of step {Number.Print(k, 0)}", "going, from riser face to riser face on the walking line",
        [ThingId.WalkingLine, .. Relations.Step(bench, k), ThingId.Riser(k + 1)], GoingFacts.Of(bench, k));
}
