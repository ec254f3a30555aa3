using System.Collections.Concurrent;
using CsCheck;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Findings;

/// <summary>A remedy that can be pressed does what it says: set out afterwards, the stair exists and the finding is gone.</summary>
public class RemedyTests
{
    [Fact]
    public void Every_remedy_that_is_offered_holds()
    {
        var (found, remedied, offered, brings) = (new ConcurrentDictionary<string, int>(), new ConcurrentDictionary<string, int>(), new ConcurrentDictionary<string, int>(), new ConcurrentDictionary<string, int>());
        var wrong = new ConcurrentBag<string>();
        // The same jobs every time, so that what is found wrong is found again.
        Parallel.For(1, 1 + Count, i =>
        {
            var job = Pressed.Jobs.Generate(new PCG((uint)i, 20261203), null, out _);
            // Only what the reader takes.
            if (JobFile.Read(JobFile.Write(job)).Value is not { } read) return;
            var set = Stair.SetOut(read);
            foreach (var finding in set.Findings)
            {
                Tally(found, finding.Code);
                var remedies = RemedyTrial.For(read, finding);
                if (!remedies.IsEmpty) Tally(remedied, finding.Code);
                foreach (var remedy in remedies)
                {
                    Tally(offered, finding.Code);
                    Assert.NotEmpty(remedy.Words);
                    if (!RemedyTrial.Frees(read, finding, remedy))
                    {
                        wrong.Add($"job {i}: {finding.Code} at {finding.Where}: {remedy.Words}");
                        continue;
                    }
                    if (set.Value is { } stair && RemedyTrial.Brings(stair, remedy) is not []) Tally(brings, finding.Code);
                }
            }
        });
        var report = string.Join("\n", found.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p =>
            $"{p.Key}: found {p.Value}, with remedies {remedied.GetValueOrDefault(p.Key)}, remedies {offered.GetValueOrDefault(p.Key)}, of which bring another breach {brings.GetValueOrDefault(p.Key)}"));
        TestContext.Current.SendDiagnosticMessage(report);
        Assert.True(wrong.IsEmpty, $"{wrong.Count} wrong:\n{string.Join("\n", wrong.Order(StringComparer.Ordinal).Take(40))}\n{report}");
        Assert.True(remedied.Count >= 20, report);
    }

    private const int Count = 100;

    [Fact]
    public void What_would_free_a_job_that_is_refused_does_free_it()
    {
        var (codes, offered) = (new ConcurrentDictionary<string, int>(), new ConcurrentDictionary<string, int>());
        Parallel.For(1, 1001, i =>
        {
            var job = Pressed.Impossible.Generate(new PCG((uint)i, 20261204), null, out _);
            var refused = JobFile.Read(JobFile.Write(job));
            if (refused.Value is not null) return;
            foreach (var finding in refused.Findings.Where(f => f.Severity == Severity.Error))
            {
                Tally(codes, finding.Code);
                foreach (var remedy in finding.Remedies)
                {
                    Tally(offered, finding.Code);
                    var after = JobChanges.Apply(job, remedy.Changes);
                    Assert.DoesNotContain(after.Findings, f => f.Code == finding.Code);
                    Assert.Empty(after.Findings.Where(f => f.Severity == Severity.Error).Select(f => f.Code).Except(refused.Findings.Select(f => f.Code)));
                }
            }
        });
        var report = string.Join("\n", codes.OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => $"{p.Key}: found {p.Value}, remedies {offered.GetValueOrDefault(p.Key)}"));
        TestContext.Current.SendDiagnosticMessage(report);
        Assert.True(offered.Count >= 12, report);
    }

    [Fact]
    public void A_stair_that_does_not_go_together_has_a_breach_that_says_why()
    {
        var failed = 0;
        Parallel.For(1, 601, i =>
        {
            var job = Pressed.Impossible.Generate(new PCG((uint)i, 20261205), null, out _);
            if (JobFile.Read(JobFile.Write(job)).Value is not { } read || Stair.SetOut(read).Value is not { } stair || stair.Prove().Holds) return;
            Interlocked.Increment(ref failed);
            Assert.Contains(stair.Findings, f => f.Severity == Severity.Breach && f.Code is "RW2101" or "RW4001" or "RW4002" or "RW4003" or "RW4004" or "RW4006" or "RW4007" or "RW4013" or "RW4015" or "RW4016" or "RW4017");
        });
        Assert.True(failed > 0);
    }

    [Theory]
    [InlineData(0.6, 10, 88)]
    [InlineData(0.9, 10, 119)]
    [InlineData(0.9, 10, 136)]
    public void Mortices_of_a_turn_s_newel_stay_clear_of_one_another_and_of_the_housings_beyond(double part, double clearance, double newel)
    {
        var landing = Samples.Job("quarter-landing");
        var job = landing with { Practice = landing.Practice with { Newel = newel, Tenon = landing.Practice.Tenon with { Part = part, MorticeClearance = clearance } } };
        Assert.True(Set(job).Prove().Holds);
        Assert.True(Set(job with { Layout = job.Layout with { Sequence = [new Flight(0), .. job.Layout.Sequence.Skip(1)] }, Survey = new() { FloorToFloor = [1830] } }).Prove().Holds);

        static Stair Set(Job job) => Stair.SetOut(job).Value!;
    }

    public static TheoryData<string, Job, string> Refused => new()
    {
        { "RW2002", Kite with { Regulation = "usa-irc-2021", Width = 300 }, "wide" },
        { "RW2003", Kite with { Going = 230, Practice = Kite.Practice with { Newel = 240 }, Layout = Layout(1, new(TurnKind.Winders, 3, 0, 0, "equal-goings"), 8) }, "the turn one step up" },
        { "RW2004", Kite with { Layout = Layout(0, new(TurnKind.Winders, 4, 82, null, "equal-goings"), 8) }, "35 outside" },
    };

    private static Job Kite => Samples.Job("left-kite-low");

    private static Layout Layout(int before, Turn turn, int after) => new(Hand.Left, [new Flight(before), turn, new Flight(after)]);

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_cannot_be_set_out_is_freed_by_a_remedy(string code, Job job, string says)
    {
        var read = JobFile.Read(JobFile.Write(job)).Value!;
        var outcome = Stair.SetOut(read);
        Assert.Null(outcome.Value);
        var finding = outcome.Findings.First(f => f.Code == code);
        var remedies = RemedyTrial.For(read, finding);
        Assert.True(remedies.Any(r => r.Words.Contains(says, StringComparison.Ordinal)), $"{finding.Message}: {string.Join("; ", remedies.Select(r => r.Words))}");
        Assert.All(remedies, r => Assert.NotNull(Stair.SetOut(JobChanges.Apply(read, r.Changes).Value!).Value));
    }

    [Fact]
    public void A_draft_finds_the_same_as_setting_out()
    {
        var job = Samples.Job("left-kite-low") with { Practice = Samples.Job("left-kite-low").Practice with { Newel = 69, Margin = 30 } };
        Assert.Equal(Stair.SetOut(job).Findings.Select(f => (f.Code, f.Where, f.Message)), Stair.Draft(job).Findings.Select(f => (f.Code, f.Where, f.Message)));
    }

    [Theory]
    [InlineData("RW2101", "a newel of 90")]
    [InlineData("RW2101", "2 tapered steps in the turn, with goings of 331.7")]
    [InlineData("RW2101", "a quarter landing in place of the tapered steps")]
    [InlineData("RW4002", "a margin of 39")]
    public void A_small_newel_and_a_small_margin_are_freed_by_named_remedies(string code, string words)
    {
        var job = Samples.Job("left-kite-low") with { Practice = Samples.Job("left-kite-low").Practice with { Newel = 69, Margin = 30 } };
        var finding = Stair.SetOut(job).Findings.First(f => f.Code == code);
        var remedies = RemedyTrial.For(job, finding);
        Assert.True(remedies.Any(r => r.Words == words), string.Join("; ", remedies.Select(r => r.Words)));
    }

    private static void Tally(ConcurrentDictionary<string, int> counts, string code) => counts.AddOrUpdate(code, 1, (_, n) => n + 1);
}
