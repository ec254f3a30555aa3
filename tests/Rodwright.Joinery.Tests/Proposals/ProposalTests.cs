using CsCheck;
using Rodwright.Joinery.Proposals;
using Rodwright.Properties;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Proposals;

public sealed class ProposalTests
{
    private static readonly Brief Ordinary = Briefs.Of(2603, 3319, 2405, 2641, 1910);

    [Fact]
    public void Every_proposal_set_out_has_no_failing_check_and_a_proof_that_closes() => Briefs.Any.Holds(brief =>
    {
        foreach (var proposal in StairProposals.Propose(brief).Proposals)
        {
            var read = JobFile.Read(JobFile.Write(proposal.Job));
            Assert.Equal(proposal.Job, read.Value);
            var stair = Stair.SetOut(read.Value!).Value!;
            Assert.True(stair.Regulation.Passes);
            Assert.DoesNotContain(stair.Findings, f => f.Severity >= Severity.Breach);
            Assert.True(stair.Prove().Holds);
        }
    }, iter: 150);

    [Fact]
    public void An_ordinary_survey_has_proposals_of_most_families_and_a_reason_for_the_rest()
    {
        var report = StairProposals.Propose(Ordinary);
        Assert.True(report.Proposals.Select(p => p.Family.Id).Distinct().Count() >= 8);
        Assert.Equal(FamilyCatalogue.Ids.Order(), report.Proposals.Select(p => p.Family.Id).Concat(report.Rejected.Select(r => r.Family.Id)).Distinct().Order());
        Assert.Equal(report.Proposals.Select(p => p.Score).Order(), report.Proposals.Select(p => p.Score));
        Assert.All(report.Proposals, p => Assert.Equal(!report.Proposals.Any(o => o.Measures.Beats(p.Measures)), p.Unbeaten));
    }

    /// <summary>Four tapered steps with risers past the newel put the one between them on its arris at some goings: half in the newel, half in the string behind.</summary>
    [Fact]
    public void A_riser_that_would_land_on_an_arris_of_the_newel_is_judged_before_anything_is_joined()
    {
        var wanted = new Wishes { Hand = Hand.Left, Families = ["quarter-winders-low", "quarter-winders-middle", "quarter-winders-high"] };
        Assert.Empty(StairProposals.Propose(Ordinary with { Wishes = wanted }).Dropped);
    }

    [Fact]
    public void The_other_hand_gets_the_mirrored_proposals()
    {
        var (left, right) = (Of(Hand.Left), Of(Hand.Right));
        Assert.NotEmpty(left.Proposals);
        Assert.Equal(left.Proposals.Length, right.Proposals.Length);
        foreach (var (a, b) in left.Proposals.Zip(right.Proposals))
        {
            Assert.Equal((a.Family, a.Measures, a.Score, a.Unbeaten, a.Job.Going, a.Job.Practice.Newel), (b.Family, b.Measures, b.Score, b.Unbeaten, b.Job.Going, b.Job.Practice.Newel));
            Assert.Equal((Hand.Left, Hand.Right), (a.Hand, b.Hand));
            Assert.Equal(a.Job.Layout.Sequence.Select(i => i.Steps), b.Job.Layout.Sequence.Select(i => i.Steps));
        }

        static ProposalReport Of(Hand hand) => StairProposals.Propose(Ordinary with { Wishes = new() { Hand = hand, Families = ["straight", "quarter-winders-middle", "half-landing", "left-then-right"] } });
    }

    [Theory]
    [InlineData("straight")]
    [InlineData("quarter-landing")]
    public void No_better_going_exists_than_the_one_proposed(string family)
    {
        // Ranked by comfort alone, so that better is nearer the ideal; every number of risers and every going tried on the whole stair.
        var wishes = new Wishes { Hand = Hand.Left, Families = [family], Weights = new() { Comfort = 1, Pitch = 0, Headroom = 0, FloorArea = 0, Narrowest = 0, Timber = 0, TaperedSteps = 0 }, Comfort = 640 };
        var brief = Ordinary with { Wishes = wishes };
        var proposed = StairProposals.Propose(brief).Proposals[0];
        var nearest = double.PositiveInfinity;
        for (var risers = 12; risers <= 16; risers++)
        {
            for (var going = 220; going <= 300; going++)
            {
                var off = Math.Abs(2 * 2603.0 / risers + going - 640);
                if (off >= proposed.Measures.ComfortOff - 1e-9) continue;
                foreach (var sequence in Sequences(risers))
                    if (StairProposals.Against(brief.With(new(Hand.Left, [.. sequence]), going, proposed.Job.Width, proposed.Job.Practice.Newel)) is null) nearest = Math.Min(nearest, off);
            }
        }
        Assert.Equal(double.PositiveInfinity, nearest);

        IEnumerable<IEnumerable<LayoutItem>> Sequences(int risers) => family == "straight"
            ? [[new Flight(risers - 1)]]
            : Enumerable.Range(2, risers - 5).Select(b => (IEnumerable<LayoutItem>)[new Flight(b), new Turn(TurnKind.Landing, 1, null, null, ""), new Flight(risers - 2 - b)]);
    }

    [Fact]
    public void What_would_help_does()
    {
        // A straight flight asks for a well of a certain length: measured short of it, it is told by how much.
        var wanted = Ordinary with { Wishes = new() { Hand = Hand.Left, Families = ["straight"] } };
        var brief = WithWell(wanted, 2200);
        var rejected = Assert.Single(StairProposals.Propose(brief).Rejected);
        Assert.Contains("headroom", rejected.DecidedBy, StringComparison.Ordinal);
        var help = rejected.Helps.First(h => h.Bound == Bound.WellLength);
        Assert.Contains("more well", rejected.WouldHelp, StringComparison.Ordinal);
        Assert.Equal("straight", StairProposals.Propose(WithWell(wanted, 2200 + help.By)).Proposals[0].Family.Id);
        Assert.Empty(StairProposals.Propose(WithWell(wanted, 2200 + help.By - 1)).Proposals);
    }

    [Fact]
    public void A_newel_that_would_help_is_named_and_does()
    {
        var brief = Ordinary with { Wishes = new() { Hand = Hand.Left, Families = ["half-winders"], Newels = [69] } };
        var rejected = Assert.Single(StairProposals.Propose(brief).Rejected);
        var help = rejected.Helps.First(h => h.Words.Contains("a newel of", StringComparison.Ordinal));
        Assert.NotEmpty(StairProposals.Propose(brief with { Wishes = brief.Wishes! with { Newels = [69 + help.By] } }).Proposals);
    }

    private static Brief WithWell(Brief brief, double length) =>
        brief with { Survey = brief.Survey with { Well = brief.Survey.Well! with { Length = Readings.Of(length) } } };
}
