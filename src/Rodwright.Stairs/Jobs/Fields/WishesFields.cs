using System.Collections.Immutable;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="Wishes"/>.</summary>
internal static class WishesFields
{
    private static readonly ImmutableArray<string> Hands = ["left", "right", "either"];

    public static ImmutableArray<Field<Wishes>> All { get; } =
    [
        new NumberField<Wishes>("comfort", "twice the rise and the going, ideal", new(50, 900, "mm"), "what proposals are measured against; 630 is about the 63 cm of DIN 18065, 625 the middle of 550 to 700",
            w => w.Comfort, (w, v) => w with { Comfort = v }),
        new ReadingsField<Wishes>("widths", "widths over the strings", new(60, 3000, "mm"), 12, "one, or several to choose from; left out: the width of the job, or 860",
            w => [.. w.Widths], (w, v) => w with { Widths = [.. v] }, required: false),
        new ReadingsField<Wishes>("newels", "sides of the newels", new(40, 300, "mm"), 12, "one, or several to choose from; left out: practice.newel and the larger sizes a timber yard keeps",
            w => [.. w.Newels], (w, v) => w with { Newels = [.. v] }, required: false),
        new ChoiceField<Wishes>("hand", "hand wanted", Hands, JobCodes.Hand, "hand", "which way the stair is to turn going up; left out: either",
            w => w.Hand switch { Hand.Left => "left", Hand.Right => "right", _ => "either" }, (w, v) => w with { Hand = v == "either" ? null : (Hand)Hands.IndexOf(v) }),
        Families("families", "families of layouts wanted", "left out: every one", w => w.Families, (w, v) => w with { Families = v }),
        Families("unwanted", "families of layouts not wanted", "left out: none", w => w.Unwanted, (w, v) => w with { Unwanted = v }),
        new GroupField<Wishes, RankingWeights>("weights", "weights of the ranking", "how much each measure counts; 0 leaves it out", w => w.Weights, (w, v) => w with { Weights = v },
        [
            Weight("comfort", "weight of comfort", "for every 60 mm off the ideal", w => w.Comfort, (w, v) => w with { Comfort = v }),
            Weight("pitch", "weight of the pitch", "for every 10 degrees above 30", w => w.Pitch, (w, v) => w with { Pitch = v }),
            Weight("headroom", "weight of headroom", "for 300 mm short of 300 more than is asked", w => w.Headroom, (w, v) => w with { Headroom = v }),
            Weight("floorArea", "weight of the floor taken", "for every 2 square metres", w => w.FloorArea, (w, v) => w with { FloorArea = v }),
            Weight("narrowest", "weight of the narrowest end", "for 100 mm short of 100", w => w.Narrowest, (w, v) => w with { Narrowest = v }),
            Weight("timber", "weight of the timber", "for every tenth of a cubic metre", w => w.Timber, (w, v) => w with { Timber = v }),
            Weight("taperedSteps", "weight of tapered steps", "for every one", w => w.TaperedSteps, (w, v) => w with { TaperedSteps = v }),
        ]),
    ];

    private static NumberField<RankingWeights> Weight(string name, string label, string source, Func<RankingWeights, double?> get, Func<RankingWeights, double, RankingWeights> set) =>
        new(name, label, new(0, 100, ""), source, get, set);

    // Asked for when it is needed: the catalogue of families is no part of what a job file is read with.
    private static WordsField<Wishes> Families(string name, string label, string source, Func<Wishes, Surveys.ListOf<string>> get, Func<Wishes, Surveys.ListOf<string>, Wishes> set) =>
        new(name, label, () => FamilyCatalogue.Ids, JobCodes.Family, "family of layouts", source, get, set);
}
