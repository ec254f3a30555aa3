using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Testing;
using Rodwright.Workshop.Pictures;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Workshop.Tests.Tables;

public sealed class TableTests
{
    private readonly MemoryShelf shelf = new(TimeProvider.System);

    private static OwnRegulation Heron(double least) => new()
    {
        Id = "own-heron", Title = "Heron Mill", BasedOn = "england-2013-private",
        Clauses = [new() { Rule = "going", Clause = "shop 1", Replaces = "1.3, Table 1.1", Least = least, Most = 300, Source = "ours" }],
    };

    private static readonly Job Larkmoor = Samples.Job("left-kite-low") with { Regulation = "own-heron" };

    private Task<OwnTableSaved> Keep(double least, int basedOn) => shelf.Tables.Save(OwnTableTexts.Draft(Heron(least), "Ada"), basedOn);

    [Fact]
    public async Task An_open_job_is_judged_by_what_its_table_says_now()
    {
        await Keep(220, 0);
        var card = await shelf.Add(ShelfDrafts.Made(Larkmoor, "made", "Ada"));
        using var session = (await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!;
        Assert.True(session.State.Stair!.Regulation.Passes);
        await Keep(240, 1);
        await session.FollowTables();
        Assert.False(session.State.Stair!.Regulation.Passes);
        await session.Change(session.Wanted.Job with { Going = 245 });
        Assert.Equal(CheckOutcome.Pass, session.State.Stair!.Regulation.Checks.First(c => c.Clause.Number == "shop 1").Outcome);
        Assert.Equal(2, session.Card.Revision);
    }

    [Fact]
    public async Task Nothing_is_set_out_again_when_no_table_has_changed()
    {
        await Keep(220, 0);
        var card = await shelf.Add(ShelfDrafts.Made(Larkmoor, "made", "Ada"));
        using var session = (await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!;
        var before = session.State;
        await session.FollowTables();
        Assert.Same(before, session.State);
    }

    [Fact]
    public async Task A_job_whose_table_is_not_here_is_refused_with_a_finding_and_can_be_given_another()
    {
        var card = await shelf.Add(ShelfDrafts.Made(Larkmoor, "made", "Ada"));
        using var session = (await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!;
        Assert.Null(session.State.Stair);
        Assert.Equal(JobCodes.Regulation, Assert.Single(session.State.Findings, f => f.Severity == Severity.Error).Code);
        await session.Change(session.Wanted.Job with { Regulation = "england-2013-private" });
        Assert.NotNull(session.State.Stair);
    }

    [Fact]
    public async Task Files_of_a_revision_follow_its_table()
    {
        await Keep(220, 0);
        var card = await shelf.Add(ShelfDrafts.Made(Larkmoor, "made", "Ada"));
        var cache = new StairCache(shelf);
        var first = await cache.Of(card.Id, 1);
        Assert.Same(first, await cache.Of(card.Id, 1));
        await Keep(240, 1);
        var second = await cache.Of(card.Id, 1);
        Assert.True(first!.Stair!.Regulation.Passes);
        Assert.False(second!.Stair!.Regulation.Passes);
        Assert.Same(second, await cache.Of(card.Id, 1));
    }

    [Fact]
    public void A_job_is_compared_under_a_table_of_the_shops_own()
    {
        var tables = RegulationShelf.Published.With(Heron(240).Table());
        var comparison = Comparison.Of(Samples.Job("left-kite-low"), "england-2013-private", "own-heron", tables)!;
        Assert.Contains(comparison.Clauses, c => c.Changed);
        Assert.Null(Comparison.Of(Samples.Job("left-kite-low"), "england-2013-private", "own-heron"));
    }

    [Fact]
    public void A_form_reads_as_the_table_it_was_made_from()
    {
        var table = new OwnRegulation
        {
            Id = "own-all", Title = "All kinds", BasedOn = "england-2013-private", Standing = "ours", Measures = new() { Going = "arc", Inset = 300, BothSides = false },
            Clauses =
            [
                new() { Rule = "rise", Clause = "1", Least = 160.5, Most = 200, Source = "s", Evidence = "text-seen", Weight = "advice" },
                new() { Rule = "tapered-going", Clause = "2", AtLeast = "straight-going", Source = "s" },
                new() { Rule = "taper-reach", Clause = "3", StraightGoings = 3.5, Source = "s" },
                new() { Rule = "going", Clause = "4", Replaces = "1.3, Table 1.1", Pairs = [new(155, 220, 245, 260), new(165, 200, 223, 300)], Source = "s" },
                new() { Rule = "handrail", Clause = "5", Source = "s" },
            ],
        };
        Assert.Equal(table, TableForm.Of(table).Read().Value);
        var inches = table with
        {
            BasedOn = "usa-irc-2021", Measures = new() { Inset = 330.2, MiddleBelow = 1000 },
            Clauses = [.. table.Clauses.Where(c => c.Replaces.Length == 0), new() { Rule = "rise", Clause = "6", Replaces = "R311.7.5.1", Most = 196.85, Source = "s" }, new() { Rule = "going", Clause = "7", Least = 254, Most = 3835.4, Source = "s" }],
        };
        Assert.Equal(inches, TableForm.Of(inches).Read().Value);
        Assert.Equal(("13\"", "1000", "7 3/4\"", "160.5"), (TableForm.Of(inches).Measures.Inset, TableForm.Of(inches).Measures.MiddleBelow, TableForm.Of(inches).Clauses[^2].Most, TableForm.Of(inches).Clauses[0].Least));
    }

    [Theory]
    [InlineData("least", "wide", "RW1009")]
    [InlineData("least", "-5", "RW1017")]
    [InlineData("most", "1e300", "RW1021")]
    [InlineData("pairs", "155 to 220", "RW1013")]
    [InlineData("source", "", "RW1023")]
    public void What_is_typed_wrongly_is_refused_where_it_stands(string field, string typed, string code)
    {
        var clause = new ClauseForm { Rule = "going", Clause = "1", Most = field == "pairs" ? "" : "300", Source = "s" };
        clause = field switch { "least" => clause with { Least = typed }, "most" => clause with { Most = typed }, "pairs" => clause with { Pairs = typed }, _ => clause with { Source = typed } };
        var read = (TableForm.After(RegulationCatalogue.All[0]) with { Id = "own-x", Title = "x", Clauses = [clause] }).Read();
        Assert.Contains(read.Findings, f => f.Code == code && f.Where == $"clauses[0].{field}");
    }

    [Fact]
    public void Tables_of_two_units_that_ask_for_the_same_length_are_alike()
    {
        var metric = new OwnRegulation
        {
            Id = "own-metric", Title = "Metric", Measures = new() { MiddleBelow = 0, Inset = 304.8, Going = "chord", Narrow = "straight", TaperedAtLeastStraight = false },
            Clauses = [new() { Rule = "rise", Clause = "1", Most = 196.85, Source = "s" }],
        }.Table();
        var rows = TableComparison.Of(RegulationCatalogue.Find("usa-irc-2024")!, metric).Rows;
        var rise = rows.Single(r => r.Title == "the rise");
        Assert.Equal(Difference.Same, rise.Difference);
        Assert.Equal(["at most 7 3/4\" (196.85 mm)", "at most 196.85 mm"], rise.Cells.Select(c => c.Words));
        Assert.Equal((Difference.Same, "12\" (304.8 mm) from the inner side"), (rows[0].Difference, rows[0].Cells[0].Words));
    }

    [Fact]
    public void A_table_is_the_same_as_itself_and_every_rule_of_three_has_its_row()
    {
        Assert.All(TableComparison.Of(RegulationCatalogue.All[0], RegulationCatalogue.All[0]).Rows, r => Assert.Equal(Difference.Same, r.Difference));
        foreach (var a in RegulationCatalogue.All)
        {
            var three = TableComparison.Of(a, RegulationCatalogue.All[3], RegulationCatalogue.All[13]);
            Assert.Equal(three.Tables.SelectMany(t => t.Clauses).Select(c => c.Rule).Distinct().Count() + 4, three.Rows.Length);
            Assert.All(three.Rows, r => Assert.Equal(3, r.Cells.Length));
            Assert.All(three.Rows, r => Assert.Equal(r.Difference == Difference.Same, r.Cells.Select(c => c.Words).Distinct().Count() == 1));
        }
    }
}
