using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Ids of everything that can be picked on a stair.</summary>
internal static class PickIds
{
    public static ImmutableArray<string> Of(Stair stair, RodStageList stages)
    {
        var ids = new List<string> { ThingId.Plan, ThingId.WalkingLine, ThingId.MarginLine, ThingId.Floor, ThingId.UpperFloor, ThingId.Width, ThingId.ClearWidth };
        if (!stair.Plan.Newels.IsEmpty) ids.Add(ThingId.CentreLine);
        if (HasCorner(stair.Plan)) ids.Add(ThingId.Corner);
        if (HasOuterWall(stair)) ids.Add(ThingId.WallOuter);
        if (HasInnerWall(stair)) ids.Add(ThingId.WallInner);
        if (stair.Plan.Steps.Contains(StepKind.Landing)) ids.Add(ThingId.Landing);
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

    /// <summary>Whether a wall stands on the outer side; the outside of a turn always has one.</summary>
    public static bool HasOuterWall(Stair stair) => stair.Plan.Turn is not null || stair.Job.OuterSide == SideKind.Wall;

    public static bool HasInnerWall(Stair stair) => stair.Job.InnerSide == SideKind.Wall;

    /// <summary>Whether two wall strings meet in the corner of the room.</summary>
    public static bool HasCorner(StairPlan plan) => plan.Turn is not null;
}
