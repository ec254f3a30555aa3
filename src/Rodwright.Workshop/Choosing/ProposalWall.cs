using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Proposals;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Choosing;

/// <summary>The proposals for a brief as they hang on a wall, each with its small plan, and what does not fit. Immutable.</summary>
/// <param name="Brief">What they were asked for.</param>
/// <param name="Table">The regulation they keep.</param>
/// <param name="Report">As proposed.</param>
/// <param name="Cards">Best first.</param>
public sealed record ProposalWall(Brief Brief, Regulation Table, ProposalReport Report, ImmutableArray<WallCard> Cards)
{
    /// <summary>Proposes, and draws the plans. Takes some tenths of a second: call it where nobody waits.</summary>
    /// <exception cref="ArgumentException">The brief names a regulation that is not among the tables.</exception>
    public static ProposalWall Of(Brief brief, RegulationShelf tables)
    {
        var report = StairProposals.Propose(brief, tables);
        var cards = new WallCard?[report.Proposals.Length];
        Parallel.For(0, cards.Length, i =>
        {
            if (Stair.Draft(report.Proposals[i].Job, shelf: tables).Value is { } stair) cards[i] = new(i + 1, report.Proposals[i], JobPictures.Card(stair));
        });
        return new(brief, tables.Find(brief.Regulation)!, report, [.. cards.OfType<WallCard>()]);
    }

    /// <summary>Families that hang on it, in the order of the catalogue.</summary>
    public IEnumerable<Family> Families => FamilyCatalogue.All.Where(f => Cards.Any(c => c.Proposal.Family == f));

    /// <summary>Headroom above what the regulation asks, mm; null when it was not measured or nothing is asked.</summary>
    public double? HeadroomLeft(WallCard card) => Report.Ranking.HeadroomAsked > 0 ? card.Proposal.Measures.Headroom - Report.Ranking.HeadroomAsked : null;
}
