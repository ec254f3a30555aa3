using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Findings;

/// <summary>Stairs whose pieces are in one another's way: the proof does not close, a finding says where and by how much, and its remedies make the proof close.</summary>
public sealed class PinchTests
{
    public static TheoryData<string, Job, string, string, string> Pinched => new()
    {
        { "RW4015", Set("""[ { "flight": 1 }, { "turn": "half-winders", "steps": 4 }, { "flight": 7 } ]""", newel: 120), "bottom newel", "passes through it", "the turn" },
        { "RW4015", Set("""[ { "flight": 2 }, { "turn": "half-landing" }, { "flight": 9 } ]""", newel: 120), "bottom newel", "of height", "the turn" },
        { "RW4016", Inches(11), "turn newel", "beside its housing", "outside the newel's centre" },
        { "RW4017", Set("""[ { "flight": 7 }, { "turn": "winders", "steps": 4, "method": "balanced-scale", "sharedBefore": 2, "sharedAfter": 3 }, { "flight": 5 } ]""", width: 1138), "step", "off square", "the taper shared with" },
    };

    [Theory]
    [MemberData(nameof(Pinched))]
    public void What_does_not_go_together_is_told_with_remedies_that_free_it(string code, Job job, string where, string says, string freedBy)
    {
        var stair = Stair.SetOut(job).Value!;
        Assert.False(stair.Prove().Holds);
        var finding = stair.Findings.First(f => f.Code == code);
        Assert.Equal(Severity.Breach, finding.Severity);
        Assert.StartsWith(where, finding.Where, StringComparison.Ordinal);
        Assert.Contains(says, finding.Message, StringComparison.Ordinal);
        var remedies = RemedyTrial.For(job, finding);
        Assert.Contains(remedies, r => r.Words.Contains(freedBy, StringComparison.Ordinal));
        foreach (var remedy in remedies)
        {
            var after = Stair.SetOut(JobChanges.Apply(job, remedy.Changes).Value!).Value!;
            Assert.DoesNotContain(after.Findings, f => f.Code == code && f.Where == finding.Where);
        }
    }

    [Fact]
    public void The_other_hand_is_told_the_same()
    {
        foreach (var row in Pinched)
        {
            var job = row.Data.Item2;
            var other = job with { Layout = job.Layout with { Hand = job.Layout.Hand == Hand.Left ? Hand.Right : Hand.Left }, Sides = new(job.Sides.Right, job.Sides.Left) };
            Assert.Equal(Stair.SetOut(job).Value!.Kit.Findings.Select(f => (f.Code, f.Where, f.Message)), Stair.SetOut(other).Value!.Kit.Findings.Select(f => (f.Code, f.Where, f.Message)));
        }
    }

    private static Job Inches(double first)
    {
        var job = Samples.Job("feet-and-inches");
        return job with
        {
            Practice = job.Practice with { Newel = 4.5 * 25.4 },
            Layout = job.Layout with { Sequence = [.. job.Layout.Sequence.Select(i => i is Turn t ? t with { FirstRiser = first * 25.4 } : i)] },
        };
    }

    private static Job Set(string sequence, double newel = 90, double width = 860) => JobFile.Read($$"""
        { "rodwright": 1, "title": "layout", "regulation": "england-2013-private", "survey": { "floorToFloor": [2800] },
          "layout": { "hand": "left", "sequence": {{sequence}} }, "going": 225, "width": {{width}}, "practice": { "newel": {{newel}} } }
        """).Value!;
}
