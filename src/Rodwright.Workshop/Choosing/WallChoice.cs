using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Choosing;

/// <summary>Which cards of a wall are looked at, and in what order.</summary>
public sealed record WallChoice
{
    /// <summary>Id of the only family wanted; empty for every one.</summary>
    public string Family { get; init; } = "";

    /// <summary>The only hand wanted; null for either.</summary>
    public Hand? Hand { get; init; }

    /// <summary>Whether only what nothing else beats is wanted.</summary>
    public bool OnlyUnbeaten { get; init; }

    /// <summary>Whether stairs with tapered steps are left out.</summary>
    public bool NoTapered { get; init; }

    /// <summary>The order.</summary>
    public WallOrder Order { get; init; }

    /// <summary>The cards of a wall that are wanted, in order; equals by their rank.</summary>
    public ImmutableArray<WallCard> Of(ProposalWall wall) => [.. wall.Cards.Where(Wants).OrderBy(Burden).ThenBy(c => c.Rank)];

    private bool Wants(WallCard card) => (Family.Length == 0 || card.Proposal.Family.Id == Family) && (Hand is null || card.Proposal.Hand == Hand)
        && (!OnlyUnbeaten || card.Proposal.Unbeaten) && (!NoTapered || card.Proposal.Measures.TaperedSteps == 0);

    private double Burden(WallCard card)
    {
        var m = card.Proposal.Measures;
        return Order switch
        {
            WallOrder.Comfort => m.ComfortOff,
            WallOrder.Pitch => m.PitchDegrees,
            WallOrder.Headroom => -(m.Headroom ?? double.PositiveInfinity),
            WallOrder.FloorArea => m.FloorArea,
            WallOrder.Narrowest => -(m.Narrowest ?? double.PositiveInfinity),
            WallOrder.Timber => m.Timber,
            WallOrder.TaperedSteps => m.TaperedSteps,
            _ => card.Rank,
        };
    }
}
