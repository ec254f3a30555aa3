using Rodwright.Geometry;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs;

/// <summary>What is wished for of a stair that is still to be chosen. A stair that is set out takes no notice of them.</summary>
public sealed record Wishes
{
    /// <summary>Nothing in particular wished for, in a job of a unit: the ideal is a whole number of its steps.</summary>
    public static Wishes UsualIn(Units units) => units.IsInches ? InchUsual.Wishes : new();

    /// <summary>Twice the rise and the going together, as it walks best, mm; default 630, about 63 cm (standards.md 10).</summary>
    public double Comfort { get; init; } = 630;

    /// <summary>Widths over the strings to choose from, mm; none for the job's own width or, without one, 860.</summary>
    public ListOf<double> Widths { get; init; } = [];

    /// <summary>Sides of newels to choose from, mm; none for the practice's own and the larger ones a timber yard keeps.</summary>
    public ListOf<double> Newels { get; init; } = [];

    /// <summary>The hand wanted; null for either.</summary>
    public Hand? Hand { get; init; }

    /// <summary>Ids of the families to choose from; none for every one.</summary>
    public ListOf<string> Families { get; init; } = [];

    /// <summary>Ids of families that are not wanted.</summary>
    public ListOf<string> Unwanted { get; init; } = [];

    /// <summary>How much each measure counts in the ranking.</summary>
    public RankingWeights Weights { get; init; } = new();
}
