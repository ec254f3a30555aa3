using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Tests.Pictures;

public sealed class ComparisonTests
{
    private const string England = "england-2013-private";
    private const string Scotland = "scotland-private";
    private const string Usa = "usa-irc-2021";

    [Fact]
    public void A_regulation_against_itself_changes_nothing() => Generated.Jobs.Holds(job =>
    {
        if (Comparison.Of(job, job.Regulation, job.Regulation) is not { } same) return;
        Assert.Empty(same.Geometry);
        Assert.All(same.Clauses, c => Assert.False(c.Changed, c.Words));
        Assert.All(same.Clauses, c => Assert.DoesNotContain("; was ", c.Words));
    }, iter: 60, threads: 1);

    [Fact]
    public void Every_clause_of_the_new_table_is_told_with_its_outcome_and_measurement_now() => Generated.Jobs.Holds(job =>
    {
        foreach (var after in RegulationCatalogue.All)
        {
            if (Comparison.Of(job, job.Regulation, after.Id) is not { } comparison) continue;
            Assert.Equal(after.Id, comparison.After.Id);
            var report = Stair.SetOut(job with { Regulation = after.Id }).Value!.Regulation;
            Assert.True(comparison.Clauses.Length >= report.Checks.Length);
            foreach (var (check, change) in report.Checks.Zip(comparison.Clauses))
            {
                Assert.Contains(check.Clause.Rule.Title, change.Title);
                if (check.Outcome == CheckOutcome.Fail) Assert.StartsWith("not kept: ", change.Words);
                if (check.Measured is not null) Assert.Contains(check.MeasuredWords, change.Words);
            }
        }
    }, iter: 30, threads: 1);

    [Fact]
    public void A_stair_that_keeps_one_table_and_breaks_another_says_so_with_both_limits()
    {
        var job = Samples.Job("left-kite-low");
        var comparison = Comparison.Of(job, England, Usa)!;
        var rise = comparison.Clauses.First(c => c.Title.StartsWith("the rise (", StringComparison.Ordinal));
        Assert.True(rise.Changed);
        Assert.Equal("not kept: 200 mm where at most 196.85 mm (7¾ in) is allowed; was kept, 150 to 220 mm is allowed", rise.Words);
        Assert.Contains(comparison.Clauses, c => c.Changed && c.Words.StartsWith("asked for no longer; was kept: ", StringComparison.Ordinal));
    }

    [Fact]
    public void Geometry_tells_what_moves_and_by_how_much()
    {
        var job = Samples.Job("left-kite-low");
        var (was, now) = (Set.Out(job with { Regulation = England }).Plan, Set.Out(job with { Regulation = Usa }).Plan);
        var words = Comparison.Of(job, England, Usa)!.Geometry;
        Assert.Contains($"the walking line runs 304.8 (was {Number.Print(was.WalkingRadius - was.InnerThickness / 2, 2)}) from the inner string's face", words);
        Assert.Contains(words, w => w.StartsWith("the turn's first riser, riser 3, stands ", StringComparison.Ordinal) && w.Contains(Number.Print(now.Turn!.FirstRiser, 2)));
        Assert.Contains(words, w => w.StartsWith("step 4: going on the walking line ", StringComparison.Ordinal) && w.Contains($"(was {Number.Print(was.Turn!.Steps[1].GoingChord, 2)})"));
        Assert.Empty(Comparison.Of(Samples.Job("straight-flight"), England, Scotland)!.Geometry);
    }

    [Fact]
    public void Without_a_table_or_without_a_stair_there_is_nothing_to_compare()
    {
        var job = Samples.Job("left-kite-low");
        Assert.Null(Comparison.Of(job, England, "nowhere-1999"));
        Assert.Null(Comparison.Of(job, "nowhere-1999", England));
        Assert.Null(Comparison.Of(job with { Width = 300 }, England, Usa));
    }
}
