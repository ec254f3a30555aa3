using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Proposals;

/// <summary>Proposes the stairs that fit a survey under a regulation.</summary>
public static class Proposer
{
    /// <summary>Proposals of one family, for each hand.</summary>
    private const int OfFamily = 2;

    /// <summary>Everything that fits, and why the rest does not.</summary>
    /// <param name="brief">Survey, regulation, practice and wishes.</param>
    /// <param name="table">The regulation; its id is the brief's.</param>
    /// <param name="confirm">Sets a job out in full: what stands against it, in words, or null.</param>
    public static ProposalReport Propose(Brief brief, Regulation table, Func<Job, string?> confirm)
    {
        var search = new Search(brief, table);
        var range = SearchRange.Of(brief, search.Rules);
        var wishes = brief.Wishes ?? Wishes.UsualIn(brief.Units);
        var ranking = new Ranking(wishes.Weights, wishes.Comfort * brief.ModelScale, search.Rules.Headroom);
        // The judging is one thread's work and fills one table; setting out what comes of it is most of the rest, and each family's own.
        var families = Wanted(wishes).Select(f => new Shortlist(brief, table, search, range, ranking, confirm) is var s ? (Family: f, Shortlist: s, Layouts: s.Layouts(f)) : default).ToArray();
        var held = new List<(Candidate, FullCheck)>[families.Length];
        Parallel.For(0, families.Length, i => held[i] = [.. families[i].Shortlist.Holding(families[i].Family, families[i].Layouts).Take(OfFamily)]);
        var ranked = held.SelectMany(h => h).SelectMany(h => ForHands(brief, table, wishes, h.Item1, h.Item2, ranking))
            .OrderBy(p => p.Score).ThenBy(p => p.Family.Id, StringComparer.Ordinal).ThenBy(p => p.Hand).ToList();
        var rejected = families.Where((_, i) => held[i].Count == 0)
            .Select(f => Rejection.Of(brief, table, search, range, f.Family, f.Layouts.Count > 0 ? f.Shortlist.Against : null, confirm)).ToImmutableArray();
        return new(Unbeaten.Mark(ranked), rejected, [.. families.SelectMany(f => f.Shortlist.Dropped)], search.Judged, ranking);
    }

    private static IEnumerable<Family> Wanted(Wishes wishes) =>
        FamilyCatalogue.All.Where(f => (wishes.Families.Count == 0 || wishes.Families.Contains(f.Id)) && !wishes.Unwanted.Contains(f.Id));

    /// <summary>The candidate to every hand that is wanted. It was set out in full to the first; the other is the same kit mirrored, and is judged in plan.</summary>
    private static IEnumerable<Proposal> ForHands(Brief brief, Regulation table, Wishes wishes, Candidate candidate, FullCheck check, Ranking ranking)
    {
        var measures = Measures.Of(candidate.Measures, ranking.Ideal, check.Headroom, check.Narrowest);
        yield return Of(wishes.Hand ?? Hand.Left);
        if (wishes.Hand is null && FullCheck.Of(candidate.Job(brief, Hand.Right), table).Against is null) yield return Of(Hand.Right);

        Proposal Of(Hand hand) => new(candidate.Family, candidate.Job(brief, hand), measures, ranking.Of(measures), false);
    }
}
