using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Timber;

/// <summary>The boards of one material and thickness.</summary>
/// <param name="Material">Timber or sheet material.</param>
/// <param name="Thickness">Sawn, mm.</param>
/// <param name="IsSheet">Whether it is sheets.</param>
/// <param name="Boards">Each board.</param>
/// <param name="Uncut">Pieces there is no board for.</param>
/// <param name="Cost">Of what is bought.</param>
/// <param name="Bound">No plan costs less: over every way of ripping boards along their whole length and cutting the strips to length, slanted pieces either cut off square or head to tail in the pairs that save most, of widths that are alike or differ by no more than 13, 26 or 60 mm.</param>
/// <param name="IsProven">Whether no better plan of that kind exists.</param>
/// <param name="Gap">How much dearer it may be than the best there is, as a share of the bound; where nothing has a price, how much longer.</param>
public sealed record SectionPlan(
    string Material, double Thickness, bool IsSheet, ImmutableArray<PlannedBoard> Boards, ImmutableArray<Wood> Uncut, double Cost, double Bound, bool IsProven, double Gap)
{
    /// <summary>How good it is, in bench words: "proven best", "within 1.3 % of the bound".</summary>
    public string Claim => IsProven ? "proven best" : double.IsFinite(Gap) ? $"within {Number.Print(Math.Ceiling(Gap * 1000) / 10)} % of the bound" : "not bounded";

    /// <summary>
    /// No plan buys less length, mm: the least cost at the dearest price of a metre there is. Where every board of the section costs the same by the metre it is as good a bound as that of the cost.
    /// </summary>
    public double LengthBound { get; init; }

    /// <summary>Length bought, all boards end to end, mm.</summary>
    public double BoughtLength => Boards.Where(b => b.IsBought).Sum(b => b.Length);
}
