using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Ids of everything that can be picked on a stair.</summary>
internal static class PickIds
{
    public static ImmutableArray<string> Of(Stair stair, RodStageList stages)
    {
        var ids = new List<string> { ThingId.Plan, ThingId.WalkingLine, ThingId.MarginLine, ThingId.Floor, ThingId.UpperFloor, ThingId.Width, ThingId.ClearWidth };
        if (!stair.Plan.Newels.IsEmpty) ids.Add(ThingId.CentreLine);
        ids.AddRange(TurnPlaces.Corners(stair.Plan).Select(c => c.Id));
        ids.AddRange(Walls(stair.Plan));
        ids.AddRange(Landings(stair.Plan).Select(k => ThingId.Level(stair.Plan, k)));
        for (var k = 1; k <= stair.Plan.Risers; k++)
        {
            ids.Add(ThingId.Riser(k));
            ids.Add(ThingId.Nosing(k));
            if (k < stair.Plan.Risers) ids.Add(ThingId.Going(k));
        }
        foreach (var part in stair.Kit.Parts)
        {
            ids.Add(ThingId.Of(part));
            ids.AddRange(part.Cuts.Select(c => ThingId.Of(part, c)));
        }
        ids.AddRange(stages.Lines.Select(l => l.Of));
        return [.. ids.Distinct()];
    }

    /// <summary>Ids of the walls there are: of the outer side, the inner side, both or none.</summary>
    public static IEnumerable<string> Walls(StairPlan plan) => PlanWall.Of(plan).Select(w => w.Id).Distinct();

    /// <summary>Steps that are landings, from the bottom up.</summary>
    public static IEnumerable<int> Landings(StairPlan plan) => Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] == StepKind.Landing);
}
