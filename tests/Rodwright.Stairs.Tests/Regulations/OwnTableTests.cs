using System.Text.Json;
using Json.Schema;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Xunit;

namespace Rodwright.Stairs.Tests.Regulations;

public sealed class OwnTableTests
{
    private static readonly JsonSchema Schema = JsonSchema.FromText(OwnRegulationFile.Schema());

    private static OwnRegulation Good => OwnRegulationFile.Read(BadTables.Good).Value!;

    public static TheoryData<string> Whats => [.. BadTables.All.Select(b => b.What)];

    public static TheoryData<string> Refused => [.. BadTables.Fields.Select(b => b.What)];

    public static TheoryData<string> BeyondTheSchema => [.. BadTables.Contradictions.Select(b => b.What)];

    [Fact]
    public void The_table_that_is_spoilt_here_is_in_order() => Assert.Empty(OwnRegulationFile.Read(BadTables.Good).Findings);

    [Theory]
    [MemberData(nameof(Whats))]
    public void One_wrong_thing_in_a_table_gets_one_finding_that_says_where_and_what_would_help(string what)
    {
        var bad = BadTables.All.Single(b => b.What == what);
        var outcome = OwnRegulationFile.Read(bad.Text);
        Assert.Null(outcome.Value);
        var finding = Assert.Single(outcome.Findings, f => f.Code == bad.Code && f.Where == bad.Where);
        Assert.Single(outcome.Findings);
        Assert.Equal(Severity.Error, finding.Severity);
        Assert.False(string.IsNullOrWhiteSpace(finding.Message));
        Assert.False(string.IsNullOrWhiteSpace(finding.Hint));
        Assert.DoesNotContain("job file", finding.Message + finding.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_code_of_a_table_is_in_the_corpus_and_forty_kinds_are_told_apart()
    {
        // Two tables of one id take two files; the command line has its test.
        var codes = typeof(OwnCodes).GetFields().Select(f => (string)f.GetRawConstantValue()!).Except([OwnCodes.SameId]);
        Assert.Empty(codes.Except(BadTables.All.Select(b => b.Code)));
        Assert.True(BadTables.All.Select(b => b.Code).Distinct().Count() >= 40);
    }

    [Fact]
    public void Codes_of_tables_and_of_jobs_are_all_different()
    {
        var codes = new[] { typeof(OwnCodes), typeof(JobCodes) }.SelectMany(t => t.GetFields()).Select(f => (string)f.GetRawConstantValue()!).ToList();
        Assert.Equal(codes.Count, codes.Distinct().Count());
    }

    [Fact]
    public void Everything_wrong_with_a_table_is_reported_at_once()
    {
        var text = BadTables.Good.Replace("own-heron-mill", "heron").Replace("\"least\": 235", "\"least\": 335").Replace("\"most\": 38", "\"most\": \"NaN\"")
            .Replace("\"room for a heel\"", "\"\"").Replace("\"chord\"", "\"rope\"").Replace("\"most\": 16", "\"most\": 16.5");
        Assert.Equal(
        [
            ("RW1016", "clauses[1].most"), ("RW1023", "clauses[2].source"), ("RW1201", "id"), ("RW1208", "clauses[0].least"), ("RW1217", "clauses[6].most"), ("RW1219", "measures.going"),
        ], OwnRegulationFile.Read(text).Findings.Select(f => (f.Code, f.Where)).Order());
    }

    [Fact]
    public void The_schema_is_a_valid_schema_and_takes_what_the_reader_takes()
    {
        using var schema = JsonDocument.Parse(OwnRegulationFile.Schema());
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.True(IsValid(BadTables.Good));
        Assert.True(IsValid(OwnRegulationFile.Write(Good)));
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_the_reader_refuses_in_a_field_of_a_table_the_schema_refuses_too(string what) =>
        Assert.False(IsValid(BadTables.Fields.Single(b => b.What == what).Text));

    [Theory]
    [MemberData(nameof(BeyondTheSchema))]
    public void A_contradiction_in_a_table_is_the_readers_alone_to_find(string what) =>
        Assert.True(IsValid(BadTables.Contradictions.Single(b => b.What == what).Text));

    [Fact]
    public void A_table_is_written_as_it_was_read() => Assert.Equal(Good, OwnRegulationFile.Read(OwnRegulationFile.Write(Good)).Value);

    [Fact]
    public void A_clause_takes_the_place_of_the_one_it_replaces_and_others_stand_beside_their_kin()
    {
        var (own, given) = (Good.Table(), RegulationCatalogue.Find("england-2013-private")!);
        var at = given.Clauses.ToList().FindIndex(c => c.Rule.Id == "going");
        Assert.Equal(("shop 1", true), (own.Clauses[at].Number, own.Clauses[at].IsOwn));
        Assert.Equal(given.Clauses.Length + 7, own.Clauses.Length);
        Assert.Equal(given.Clauses.Where(c => c.Rule.Id != "going"), own.Clauses.Where(c => !c.IsOwn));
        var pitch = own.Clauses.ToList().FindIndex(c => c.Number == "shop 2");
        Assert.Equal("Table 1.1 note 1", own.Clauses[pitch - 1].Number);
        Assert.Equal((Weight.Advice, Evidence.Own), (own.Clauses[pitch].Weight, own.Clauses[pitch].Evidence));
    }

    [Fact]
    public void An_own_table_says_that_it_is_one_wherever_it_is_printed()
    {
        var table = Good.Table();
        Assert.EndsWith("(the shop's own table)", table.Title, StringComparison.Ordinal);
        Assert.Contains("No published document", table.Standing, StringComparison.Ordinal);
        Assert.Contains("England, Approved Document K", table.Standing, StringComparison.Ordinal);
        Assert.True(table.IsOwn);
        Assert.All(RegulationCatalogue.All, t => Assert.False(t.IsOwn));
    }

    [Fact]
    public void Its_limits_judge_a_stair_and_its_narrow_end_sets_the_turn_out()
    {
        var table = Good.Table();
        Assert.Equal((75, 220), (table.LeastNarrow, table.LeastGoing));
        var plan = Planner.SetOut(Bench.Turned(2600, 240, 4, Bench.Winders(3), 5) with { Regulation = table.Id, Practice = new() { Newel = 140 } }, table).Value!;
        Assert.True(plan.Turn!.Steps.Min(s => s.NarrowAlongFaces) >= 75 - 1e-6);
        Assert.Equal(CheckOutcome.Pass, plan.Check("narrow-along-faces", "shop 3").Outcome);
        Assert.Equal(CheckOutcome.Fail, Judge.Check(Planner.SetOut(Bench.Flight(2600, 13, 230), table).Value!).Checks.First(c => c.Clause.Number == "shop 1").Outcome);
        Assert.Equal(CheckOutcome.Advice, Judge.Check(Planner.SetOut(Bench.Flight(2600, 13, 240), table).Value!).Checks.First(c => c.Clause.Number == "shop 2").Outcome);
        Assert.Equal(CheckOutcome.NotChecked, plan.Check("headroom", "shop 8").Outcome);
    }

    [Fact]
    public void What_a_table_leaves_out_is_as_in_the_one_it_is_based_on()
    {
        foreach (var given in RegulationCatalogue.All)
        {
            var own = new OwnRegulation { Id = "own-x", Title = "x", BasedOn = given.Id }.Table();
            Assert.Equal(given.Clauses, own.Clauses);
            Assert.Equal(
                (given.WalkingLine, given.Going, given.Narrow, given.LeastNarrow, given.LeastGoing, given.TaperedAtLeastStraight, given.Measures),
                (own.WalkingLine, own.Going, own.Narrow, own.LeastNarrow, own.LeastGoing, own.TaperedAtLeastStraight, own.Measures));
        }
    }

    [Fact]
    public void A_clause_that_replaces_a_limit_by_the_same_limit_changes_no_outcome()
    {
        var given = RegulationCatalogue.Find("usa-irc-2021")!;
        var own = new OwnRegulation
        {
            Id = "own-x", Title = "x", BasedOn = given.Id,
            Clauses = [new() { Rule = "nosing", Clause = "R311.7.5.3", Replaces = "R311.7.5.3", Least = 0.75 * Bench.Inch, Most = 1.25 * Bench.Inch, Source = "as printed", Evidence = "text-seen" }],
        };
        foreach (var going in new[] { 260, 279.4 })
        {
            var job = Bench.Flight(2600, 14, going) with { Practice = new() { Nosing = 5 } };
            Assert.Equal(Judge.Check(job.Plan(given.Id)).Checks.Select(c => c.Outcome), Judge.Check(Planner.SetOut(job, own.Table()).Value!).Checks.Select(c => c.Outcome));
        }
    }

    [Fact]
    public void A_job_may_name_a_table_that_is_on_the_shelf_and_is_refused_one_that_is_not()
    {
        var text = Jobs.GoodJob.Text.Replace("england-2013-private", "own-heron-mill");
        Assert.NotNull(JobFile.Read(text).Value);
        Assert.NotNull(JobFile.Read(text, RegulationShelf.Published.With(Good.Table())).Value);
        var finding = Assert.Single(JobFile.Read(text, RegulationShelf.Published).Findings, f => f.Severity == Severity.Error);
        Assert.Equal((JobCodes.Regulation, "regulation"), (finding.Code, finding.Where));
        var near = Assert.Single(JobFile.Read(text.Replace("own-heron-mill", "own-heron-mil"), RegulationShelf.Published.With(Good.Table())).Findings, f => f.Severity == Severity.Error);
        Assert.Contains("own-heron-mill", near.Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shelf_is_a_value_and_takes_no_table_that_poses_as_a_standard()
    {
        var shelf = RegulationShelf.Published.With(Good.Table());
        Assert.Null(RegulationShelf.Published.Find("own-heron-mill"));
        Assert.NotNull(shelf.Find("own-heron-mill"));
        Assert.NotNull(shelf.Find("scotland-private"));
        Assert.Throws<ArgumentException>(() => shelf.With(RegulationCatalogue.All[0]));
    }

    [Theory]
    [InlineData("Our stairs, 2026", "own-our-stairs-2026")]
    [InlineData("  Häuser / 2 ", "own-h-user-2")]
    [InlineData("…", "own-table")]
    public void An_id_is_made_from_a_title(string title, string id)
    {
        Assert.Equal(id, OwnIds.From(title));
        Assert.True(OwnIds.Are(OwnIds.From(title)));
        Assert.True(OwnIds.Are(OwnIds.From(new string('x', 300))));
    }

    private static bool IsValid(string text)
    {
        using var document = JsonDocument.Parse(text);
        return Schema.Evaluate(document.RootElement).IsValid;
    }
}
