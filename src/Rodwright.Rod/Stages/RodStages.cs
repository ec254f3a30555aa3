using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Stages;

/// <summary>
/// Draws the rod as a joiner does, line by line (setting-out.md 11). One list: a printed booklet, a walk through the rod on a screen, and a marking scheme
/// all read it.
/// </summary>
public static class RodStages
{
    /// <summary>The stages of a stair, of its own hand; the same stair always gives the same list.</summary>
    public static RodStageList Of(Stair stair)
    {
        var plan = new PlanView(stair);
        return new(
        [
            .. PlanGround.Of(plan),
            .. PlanRisers.Of(plan),
            .. PlanTurn.Of(plan),
            .. PlanNosings.Of(plan),
            .. StringView.All(stair, wall: true).Concat(StringView.All(stair, wall: false)).SelectMany(StringStages.Of),
            .. stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel).SelectMany(p => NewelStages.Of(stair, p)),
            .. stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread).SelectMany(p => TaperedStages.Of(stair, p)),
        ]);
    }
}
