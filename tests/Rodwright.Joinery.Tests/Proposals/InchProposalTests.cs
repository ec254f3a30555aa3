using Rodwright.Geometry;
using Rodwright.Joinery.Proposals;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Xunit;

namespace Rodwright.Joinery.Tests.Proposals;

/// <summary>Proposals of a survey in feet and inches are stairs somebody with an inch rule would choose.</summary>
public sealed class InchProposalTests
{
    private static readonly Brief Loft = BriefFile.Read("""
        { "rodwright": 1, "title": "Quincy Mill", "units": "inches", "regulation": "usa-irc-2021",
          "survey": { "floorToFloor": "8' 11 1/4", "walls": [ { "length": "13' 2" }, { "length": "9' 6" } ], "well": { "length": "11' 4", "width": "9' 0", "trimmer": "11 1/2" } } }
        """).Value!;

    private static readonly Lazy<ProposalReport> Report = new(() => StairProposals.Propose(Loft));

    [Fact]
    public void Goings_are_whole_eighths_and_every_other_size_a_whole_sixteenth()
    {
        Assert.True(Report.Value.Proposals.Length >= 6);
        foreach (var job in Report.Value.Proposals.Select(p => p.Job))
        {
            Assert.Same(Units.Inches, job.Units);
            Whole(job.Going, 8);
            Whole(job.Width, 16);
            Whole(job.Practice.Newel, 16);
            foreach (var turn in job.Layout.Sequence.OfType<Turn>())
                if (turn.FirstRiser is { } offset) Whole(offset, 16);
        }

        // The very double that reading it from a file gives.
        static void Whole(double length, int parts) => Assert.Equal(Math.Round(length / 25.4 * parts) * 127 / (5 * parts), length);
    }

    [Fact]
    public void Each_is_written_in_inches_and_reads_back_as_a_stair_that_keeps_its_table()
    {
        foreach (var proposal in Report.Value.Proposals)
        {
            var text = JobFile.Write(proposal.Job);
            Assert.DoesNotContain(".", text.Split("\"going\"")[1].Split("\"modelScale\"")[0], StringComparison.Ordinal);
            var job = JobFile.Read(text).Value!;
            Assert.Equal(proposal.Job, job);
            var stair = Stair.SetOut(job).Value!;
            Assert.True(stair.Regulation.Passes);
            Assert.DoesNotContain(stair.Findings, f => f.Severity >= Severity.Breach);
        }
    }

    [Fact]
    public void Reasons_and_what_would_help_are_told_in_whole_fractions()
    {
        var brief = Loft with { Survey = Loft.Survey with { Well = Loft.Survey.Well! with { Length = Stairs.Surveys.Readings.Of(84 * 25.4) } }, Wishes = Wishes.UsualIn(Units.Inches) with { Hand = Hand.Left } };
        var rejected = StairProposals.Propose(brief).Rejected;
        Assert.Contains(rejected, r => r.WouldHelp.Contains("\" more well", StringComparison.Ordinal));
        foreach (var family in rejected)
        {
            Assert.DoesNotContain(" mm", family.DecidedBy + " " + family.WouldHelp + " ", StringComparison.Ordinal);
            Assert.All(family.Helps.Where(h => h.Bound is Bound.WellLength or Bound.WellWidth or Bound.RoomLength or Bound.RoomWidth), h => Assert.Equal(Math.Round(h.By / 3.175), h.By / 3.175, 9));
        }
    }

    /// <summary>Ranked by comfort alone against an ideal no room is long enough for, a longer going is a better one: the next eighths hold with no split of the flights.</summary>
    [Fact]
    public void No_better_eighth_exists_than_the_one_proposed()
    {
        var weights = new RankingWeights { Comfort = 1, Pitch = 0, Headroom = 0, FloorArea = 0, Narrowest = 0, Timber = 0, TaperedSteps = 0 };
        var brief = Loft with { Wishes = new() { Hand = Hand.Left, Families = ["quarter-landing"], Weights = weights, Comfort = 700 } };
        var best = StairProposals.Propose(brief).Proposals[0];
        Assert.True(best.Measures.Comfort + 3.175 <= 700);
        var straight = best.Job.Layout.Sequence.OfType<Flight>().Sum(f => f.Goings);
        for (var more = 1; more <= 4 && best.Measures.Comfort + 3.175 * more <= 700; more++)
        {
            for (var before = 1; before < straight; before++)
            {
                var job = brief.With(new(Hand.Left, [new Flight(before), best.Job.Layout.Turn!, new Flight(straight - before)]), best.Job.Going + 3.175 * more, best.Job.Width, best.Job.Practice.Newel);
                Assert.NotNull(StairProposals.Against(job));
            }
        }
    }
}
