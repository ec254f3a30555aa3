using System.Collections.Immutable;
using CsCheck;
using Rodwright.Joinery.Proposals;
using Rodwright.Properties;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Proposals;

public sealed class ProposalProperties
{
    private static readonly RankingWeights ComfortAlone = new() { Comfort = 1, Pitch = 0, Headroom = 0, FloorArea = 0, Narrowest = 0, Timber = 0, TaperedSteps = 0 };

    /// <summary>A made-up survey with one family, hand, width and newel wanted: chosen from quickly, so that there may be thousands.</summary>
    private static readonly Gen<Brief> Narrowed =
        from brief in Briefs.Any
        from family in Gen.Int[0, FamilyCatalogue.Ids.Length - 1]
        from left in Gen.Bool
        from width in Gen.Int[800, 960]
        from newel in Gen.OneOf(90.0, 95, 100, 110, 120)
        select brief with { Wishes = new() { Families = [FamilyCatalogue.Ids[family]], Hand = left ? Hand.Left : Hand.Right, Widths = [width], Newels = [newel] } };

    public static TheoryData<string> Families => [.. FamilyCatalogue.Ids];

    [Fact]
    public void Every_proposal_set_out_has_no_failing_check_and_a_proof_that_closes()
    {
        var proposed = 0;
        Narrowed.Holds(brief =>
        {
            foreach (var proposal in StairProposals.Propose(brief).Proposals)
            {
                var stair = Stair.SetOut(proposal.Job).Value!;
                Assert.True(stair.Regulation.Passes);
                Assert.DoesNotContain(stair.Findings, f => f.Severity >= Severity.Breach);
                Assert.True(stair.Prove().Holds);
                Interlocked.Increment(ref proposed);
            }
        }, iter: 5000);
        Assert.True(proposed > 2500, $"only {proposed} were proposed");
    }

    [Fact]
    public void A_mirrored_survey_gives_mirrored_proposals() => Narrowed.Holds(brief =>
    {
        var table = RegulationCatalogue.Find(brief.Regulation)!;
        var (one, other) = (Of(brief.Wishes!.Hand!.Value), Of(brief.Wishes.Hand == Hand.Left ? Hand.Right : Hand.Left));
        Assert.Equal(one.Proposals.Length, other.Proposals.Length);
        Assert.Equal(one.Rejected.Select(r => (r.DecidedBy, r.WouldHelp)), other.Rejected.Select(r => (r.DecidedBy, r.WouldHelp)));
        foreach (var (a, b) in one.Proposals.Zip(other.Proposals))
        {
            Assert.Equal((a.Measures, a.Score, a.Unbeaten, a.Job.Going, a.Job.Practice.Newel), (b.Measures, b.Score, b.Unbeaten, b.Job.Going, b.Job.Practice.Newel));
            Assert.NotEqual(a.Hand, b.Hand);
            Assert.Equal(a.Job.Layout.Sequence.Select(i => i.Steps), b.Job.Layout.Sequence.Select(i => i.Steps));
            Assert.Equal((a.Job.Sides.Left, a.Job.Sides.Right), (b.Job.Sides.Right, b.Job.Sides.Left));
        }

        ProposalReport Of(Hand hand) => Proposer.Propose(brief with { Wishes = brief.Wishes! with { Hand = hand } }, table, _ => null);
    }, iter: 5000);

    /// <summary>
    /// Ranked by comfort against an ideal that every room is too short for, a longer going is a better one: none of the next ones holds on the whole stair, with the risers of the flights split any way
    /// the family allows, wherever the solver puts the risers of the turns.
    /// </summary>
    [Theory]
    [MemberData(nameof(Families))]
    public void No_better_going_exists_for_a_family_than_the_one_proposed(string id)
    {
        var family = FamilyCatalogue.Find(id)!;
        var wishes = new Wishes { Hand = Hand.Left, Families = [id], Weights = ComfortAlone, Comfort = 700 };
        var brief = Briefs.Of(2603, 3319, 2405, 2641, 2400) with { Wishes = wishes };
        var proposed = StairProposals.Propose(brief).Proposals;
        Assert.NotEmpty(proposed);
        foreach (var best in proposed.Take(1))
        {
            var turns = best.Job.Layout.Sequence.OfType<Turn>().ToList();
            var straight = best.Job.Layout.Sequence.OfType<Flight>().Sum(f => f.Goings);
            for (var more = 1; more <= 8 && best.Measures.Comfort + more <= 700; more++)
            {
                foreach (var goings in Splits(straight, turns.Count + 1))
                {
                    if (turns.Count > 0 && !family.Holds(goings[0], straight)) continue;
                    if (goings.Skip(1).SkipLast(1).Any(n => n < family.LeastBetween)) continue;
                    var job = brief.With(new(Hand.Left, [.. Sequence(goings, turns)]), best.Job.Going + more, best.Job.Width, best.Job.Practice.Newel);
                    Assert.True(StairProposals.Against(job) is not null, $"going {best.Job.Going} is proposed, {job.Going} holds with flights {string.Join(' ', goings)}");
                }
            }
        }
    }

    private static IEnumerable<LayoutItem> Sequence(ImmutableArray<int> goings, List<Turn> turns)
    {
        for (var i = 0; i < goings.Length; i++)
        {
            if (goings[i] > 0 || turns.Count == 0) yield return new Flight(goings[i]);
            if (i < turns.Count) yield return turns[i] with { FirstRiser = turns[i].Kind == TurnKind.Landing ? turns[i].FirstRiser : null, LastRiser = turns[i].Kind == TurnKind.Landing ? turns[i].LastRiser : null };
        }
    }

    private static IEnumerable<ImmutableArray<int>> Splits(int straight, int flights) => flights == 1
        ? [[straight]]
        : Enumerable.Range(0, straight + 1).SelectMany(n => Splits(straight - n, flights - 1).Select(rest => rest.Insert(0, n)));
}
