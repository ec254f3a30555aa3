using CsCheck;
using Rodwright.Properties;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Regulations;

public sealed class ReportTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    private static readonly string[] AskedOfEveryTable = ["headroom", "handrail", "guarding", "end-landings"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_sample_keeps_its_regulation(string name)
    {
        var job = Samples.Job(name);
        var plan = Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!);
        Assert.Empty(plan.Findings);
        var report = Judge.Check(plan.Value!);
        Assert.Empty(report.Findings);
        Assert.True(report.Passes);
        Assert.True(plan.Value!.Pitch.Degrees <= 42);
    }

    [Fact]
    public void The_teaching_stair_goes_on_one_board_of_1800_by_1200_at_true_size()
    {
        var job = Samples.Job("half-scale-teaching");
        var plan = Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value!;
        var corner = plan.Outer.Edges[0].To;
        // The plan in one corner of the board, the wall strings, unrolled, in the opposite one: the string begins low where the plan hangs high.
        var (planWide, planDeep) = (corner.X + job.Practice.WallString.Thickness + job.Practice.Newel / 2 - plan.RiserLines[^1].Outer.X, corner.Y + job.Practice.WallString.Thickness + job.Practice.Newel / 2);
        var (stringLong, stringHigh) = (plan.Outer.Length, job.Survey.Height + job.Practice.Skirting);
        Assert.InRange(planWide, 500, 620);
        Assert.InRange(planDeep, 500, 620);
        Assert.InRange(stringLong, 1000, 1200);
        Assert.InRange(stringHigh, 500, 650);
        Assert.True(1200 - planDeep > 2 * job.Rise + job.Practice.WallString.Width);
    }

    [Fact]
    public void Every_generated_job_is_set_out_and_every_clause_answered() => Generated.All.Holds(job =>
    {
        var table = RegulationCatalogue.Find(job.Regulation)!;
        var plan = Planner.SetOut(job, table);
        Assert.NotNull(plan.Value);
        var report = Judge.Check(plan.Value);
        Assert.Equal(table.Clauses, report.Checks.Select(c => c.Clause));
        Assert.Equal(report.Count(CheckOutcome.Fail), report.Findings.Count(f => f.Severity == Severity.Breach));
        Assert.Equal(report.Count(CheckOutcome.Advice), report.Findings.Count(f => f.Severity == Severity.Advice));
        foreach (var check in report.Checks)
        {
            Assert.Equal(check.Outcome == CheckOutcome.NotChecked, check.Reason.Length > 0);
            if (check.Outcome != CheckOutcome.NotChecked) Assert.True(double.IsFinite(check.Measured!.Value));
        }
    }, iter: 5000);

    [Fact]
    public void A_mirrored_stair_gets_the_same_report() => Generated.All.Holds(job =>
    {
        var plan = Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value!;
        var (left, right) = (Judge.Check(plan), Judge.Check(plan.Mirrored()));
        Assert.Equal(left.Checks.Select(c => (c.Outcome, c.Where)), right.Checks.Select(c => (c.Outcome, c.Where)));
    }, iter: 1000);

    [Fact]
    public void Ids_of_tables_are_those_of_the_job_file_and_all_different() =>
        Assert.Equal(
            [
                "australia-ncc-2022", "bs-5395-1-2010", "bs-5395-1-2010-normal-use", "bs-5395-1-2010-two-way",
                "din-18065-2020", "din-18065-2020-additional", "din-18065-2020-other",
                "england-2013-general-access", "england-2013-private", "england-2013-utility", "ireland-2014-private", "northern-ireland-2012-private",
                "scotland-any-other", "scotland-private", "uk-warranty-2024", "uk-warranty-2024-scotland", "usa-irc-2021", "usa-irc-2024",
                "wales-1998-institutional", "wales-1998-other", "wales-1998-private",
            ],
            RegulationCatalogue.All.Select(r => r.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_table_says_what_it_measures_and_what_it_does_not_check()
    {
        foreach (var table in RegulationCatalogue.All)
        {
            Assert.Contains("narrow end", table.Measures, StringComparison.Ordinal);
            Assert.Contains("chord", table.Measures, StringComparison.Ordinal);
            Assert.NotEmpty(table.Standing);
            Assert.Empty(AskedOfEveryTable.Except(table.Clauses.Select(c => c.Rule.Id)));
            Assert.All(table.Clauses, c => Assert.True(c.Number.Length > 0 && c.Source.Length > 0));
        }
    }

    [Fact]
    public void A_number_known_from_memory_alone_fails_no_stair() =>
        Assert.All(RegulationCatalogue.All.SelectMany(t => t.Clauses).Where(c => c.Evidence == Evidence.Memory && c.Rule is not UnmeasuredRule),
            c => Assert.Equal(Weight.Advice, c.Weight));

    [Fact]
    public void A_code_of_practice_only_advises() =>
        Assert.All(RegulationCatalogue.Find("bs-5395-1-2010")!.Clauses.Where(c => c.Rule is not UnmeasuredRule), c => Assert.Equal(Weight.Advice, c.Weight));

    [Fact]
    public void Every_rule_in_a_table_is_in_the_catalogue_and_every_rule_in_the_catalogue_is_asked_for()
    {
        var asked = RegulationCatalogue.All.SelectMany(t => t.Clauses).Select(c => c.Rule.Id).Distinct().Order();
        Assert.Equal(RuleCatalogue.Measured.Concat(RuleCatalogue.Unmeasured).Select(r => r.Id).Order(), asked);
    }

    [Fact]
    public void Codes_of_findings_are_all_different() =>
        Assert.Equal(RuleCatalogue.Measured.Length, RuleCatalogue.Measured.Select(r => r.Code).Distinct().Count());

    [Fact]
    public void A_model_scales_lengths_and_leaves_angles_and_numbers_alone()
    {
        var full = Bench.Flight(2600, 13, 225).Plan("scotland-private");
        var half = (Bench.Flight(1300, 13, 112.5) with { ModelScale = 0.5 }).Plan("scotland-private");
        foreach (var (a, b) in Judge.Check(full).Checks.Zip(Judge.Check(half).Checks))
        {
            var scale = a.Clause.Rule.Unit == RuleUnit.Millimetres && a.Clause.Limit.Scales && a.Clause.Limit.Reference == LimitReference.None ? 0.5 : 1;
            if (a.Clause.Limit.Reference != LimitReference.None) continue;
            Assert.Equal(a.Range.Least * scale, b.Range.Least);
            Assert.Equal(a.Range.Most * scale, b.Range.Most);
        }
        Assert.Equal(CheckOutcome.Pass, half.Check("rise").Outcome);
        Assert.Equal(full.Check("pitch").Measured, half.Check("pitch").Measured);
    }

    [Fact]
    public void American_limits_are_exact_inches_and_printed_in_both()
    {
        var check = Bench.Flight(2600, 14, 260).Plan("usa-irc-2021").Check("rise");
        Assert.Equal(7.75 * 25.4, check.Range.Most);
        Assert.Equal("at most 196.85 mm (7¾ in)", check.Limit);
    }

    [Fact]
    public void Treads_of_eleven_inches_need_no_nosing_in_America()
    {
        var job = Bench.Flight(2600, 14, 279.4) with { Practice = new() { Nosing = 5 } };
        Assert.Equal(CheckOutcome.NotChecked, job.Plan("usa-irc-2021").Check("nosing").Outcome);
        Assert.Equal(CheckOutcome.Fail, (job with { Going = 279.3 }).Plan("usa-irc-2021").Check("nosing").Outcome);
    }

    [Fact]
    public void The_remedies_for_pitch_keep_the_limit()
    {
        var plan = Bench.Flight(2640, 12, 230).Plan();
        var hint = Judge.Check(plan).Findings.Single(f => f.Code == "RW3003").Hint;
        Assert.Equal("a going of 245 mm brings the pitch to 41.92°; one riser more, 13 of 203.08 mm, to 41.44°", hint);
        Assert.Equal(CheckOutcome.Pass, Bench.Flight(2640, 12, 245).Plan().Check("pitch").Outcome);
        Assert.Equal(CheckOutcome.Pass, Bench.Flight(2640, 13, 230).Plan().Check("pitch").Outcome);
    }

    [Fact]
    public void A_landing_breaks_the_flight()
    {
        var plan = Bench.Turned(4000, 240, 7, Bench.Landing, 12).Plan("scotland-private");
        Assert.Equal(CheckOutcome.Pass, plan.Check("risers-per-flight").Outcome);
        Assert.Equal(13, plan.Check("risers-per-flight").Measured);
        Assert.Equal("upper flight", plan.Check("risers-per-flight").Where);
        var whole = Bench.Turned(4000, 240, 7, Bench.Winders(3), 12).Plan("scotland-private");
        Assert.Equal(CheckOutcome.Advice, whole.Check("risers-per-flight").Outcome);
    }

    [Fact]
    public void A_wide_stair_is_measured_on_two_lines()
    {
        var plan = (Bench.Turned(2600, 225, 4, Bench.Winders(3, 30), 5) with { Width = 1200 }).Plan();
        var check = plan.Check("outer-going");
        Assert.NotEqual(CheckOutcome.NotChecked, check.Outcome);
        Assert.True(check.Measured > plan.Turn!.Steps[0].GoingChord);
        Assert.Equal(CheckOutcome.Fail, plan.Check("greatest-going").Outcome);
    }
}
