using System.Collections.Frozen;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Workshop.Pictures.Clauses;

namespace Rodwright.Workshop.Pictures;

/// <summary>Pictures of where the clauses of a regulation are measured.</summary>
public static class ClausePictures
{
    private static readonly FrozenDictionary<string, Func<PlanView, ClauseCheck, Sketch>> Kinds = new Dictionary<string, Func<PlanView, ClauseCheck, Sketch>>
    {
        [RiseRule.Instance.Id] = RisePictures.Rise,
        [UniformRiseRule.Instance.Id] = RisePictures.Uniform,
        [GoingRule.Instance.Id] = GoingPictures.Straight,
        [UniformGoingRule.Instance.Id] = GoingPictures.UniformStraight,
        [TaperedGoingRule.Instance.Id] = GoingPictures.Tapered,
        [UniformTaperedGoingRule.Instance.Id] = GoingPictures.UniformTapered,
        [GreatestGoingRule.Instance.Id] = GoingPictures.Greatest,
        [OuterGoingRule.Instance.Id] = GoingPictures.Outer,
        [PitchRule.Instance.Id] = PitchPicture.Draw,
        [TaperedPitchRule.Instance.Id] = PitchPicture.Draw,
        [TwoRiseAndGoingRule.Instance.Id] = TwoRiseAndGoingPicture.Draw,
        [NarrowAlongFacesRule.Instance.Id] = NarrowPictures.AlongFaces,
        [NarrowStraightRule.Instance.Id] = NarrowPictures.Straight,
        [NarrowTreadWidthRule.Instance.Id] = NarrowPictures.TreadWidth,
        [NosingRule.Instance.Id] = NosingPicture.Draw,
        [ClearWidthRule.Instance.Id] = WidthPicture.Draw,
        [LandingRule.Instance.Id] = LandingPicture.Draw,
        [HeadroomRule.Instance.Id] = HeadroomPicture.Draw,
        [HeadroomMiddleRule.Instance.Id] = HeadroomPicture.Draw,
        [HeadroomSideRule.Instance.Id] = HeadroomPicture.Draw,
        [FlightRiseRule.Instance.Id] = FlightPictures.Rise,
        [RisersPerFlightRule.Instance.Id] = FlightPictures.Risers,
        [StraightRunRule.Instance.Id] = FlightPictures.Risers,
        [FirstRiseRule.Instance.Id] = RisePictures.Uniform,
        [TaperedPerQuarterRule.Instance.Id] = TaperedRunPictures.Count,
        [WalkingBendRule.Instance.Id] = TaperedRunPictures.Bend,
        [TaperReachRule.Instance.Id] = TaperedRunPictures.Reach,
        [HandrailHeightRule.Instance.Id] = RailPictures.Height,
        [GuardingHeightRule.Instance.Id] = RailPictures.Height,
        [LandingGuardingRule.Instance.Id] = RailPictures.Landing,
        [GuardingGapRule.Instance.Id] = RailPictures.Gap,
        [LandingGapRule.Instance.Id] = RailPictures.Gap,
        [HandrailSidesRule.Instance.Id] = RailPictures.Sides,
        [OuterHandrailRule.Instance.Id] = RailPictures.Outer,
    }.ToFrozenDictionary();

    /// <summary>
    /// Where a clause was measured, on 72 × 50 mm with lettering 3.5 high: the measured distance or angle dimensioned with its value. The measured lines
    /// carry the id "measured", things counted the id "counted". Null where nothing was measured.
    /// </summary>
    /// <param name="stair">The stair that was judged.</param>
    /// <param name="check">How the clause came out on it.</param>
    public static Picture? Of(Stair stair, ClauseCheck check) => Draw(stair, check)?.Picture;

    /// <summary>The picture with its placement, so that what is drawn can be measured; null likewise.</summary>
    internal static Sketch? Draw(Stair stair, ClauseCheck check) =>
        check.Measured is not null && Kinds.TryGetValue(check.Clause.Rule.Id, out var draw) ? draw(new PlanView(stair), check) : null;
}
