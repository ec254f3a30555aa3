using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;
using Xunit;
using static Rodwright.Stairs.Tests.Bench;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>The numbers of the tables beside what the documents, or the texts that quote them, print.</summary>
public sealed class PublishedLimits
{
    /// <summary>Table, rule, clause; least and most, empty for none; how well it is known; and where it is printed.</summary>
    [Theory]
    // Approved Document K 2013, Table 1.1: "Private stair 150 220 220 300", "Utility stair 150 190 250 400", "General access 150 170 250 400".
    [InlineData("england-2013-private", "rise", "Table 1.1", 150.0, 220.0, Evidence.TextSeen)]
    [InlineData("england-2013-private", "going", "Table 1.1", 220.0, 300.0, Evidence.TextSeen)]
    [InlineData("england-2013-utility", "rise", "Table 1.1", 150.0, 190.0, Evidence.TextSeen)]
    [InlineData("england-2013-utility", "going", "Table 1.1", 250.0, 400.0, Evidence.TextSeen)]
    [InlineData("england-2013-general-access", "rise", "Table 1.1", 150.0, 170.0, Evidence.TextSeen)]
    [InlineData("england-2013-general-access", "going", "Table 1.1", 250.0, 400.0, Evidence.TextSeen)]
    // Note 1 "maximum pitch for a private stair is 42°"; footnote "The normal relationship": 550 to 700.
    [InlineData("england-2013-private", "pitch", "Table 1.1 note 1", null, 42.0, Evidence.TextSeen)]
    [InlineData("england-2013-private", "two-rise-and-going", "Table 1.1 note *", 550.0, 700.0, Evidence.TextSeen)]
    // Diagram 1.1 "BUILDINGS OTHER THAN DWELLINGS … Max 25mm overlap"; 1.23a "minimum of 1200mm on each landing".
    [InlineData("england-2013-utility", "nosing", "Diagram 1.1", null, 25.0, Evidence.TextSeen)]
    [InlineData("england-2013-general-access", "landing", "1.23a", 1200.0, null, Evidence.TextSeen)]
    [InlineData("england-2013-utility", "risers-per-flight", "1.18", null, 16.0, Evidence.Memory)]
    [InlineData("england-2013-general-access", "risers-per-flight", "1.18", null, 12.0, Evidence.Memory)]
    // LABC Warranty "Minimum tread width to a winder 50"; the handbook on section K likewise.
    [InlineData("england-2013-private", "narrow-tread-width", "Diagram 1.9", 50.0, null, Evidence.Secondary)]
    // NHBC Standards 6.6.6: headroom 2000.
    [InlineData("england-2013-private", "headroom", "1.11", 2000.0, null, Evidence.Secondary)]
    // Approved Document K 1998: 1.3a to 1.3c, 1.5, 1.18 "going of tapered treads should measure at least 50mm", 1.27 "between 900mm and 1000mm".
    [InlineData("wales-1998-private", "rise", "1.3a", 155.0, 220.0, Evidence.TextSeen)]
    [InlineData("wales-1998-private", "pitch", "1.4", null, 42.0, Evidence.Secondary)]
    [InlineData("wales-1998-institutional", "rise", "1.3b", 135.0, 180.0, Evidence.TextSeen)]
    [InlineData("wales-1998-institutional", "going", "1.3b", 280.0, 340.0, Evidence.TextSeen)]
    [InlineData("wales-1998-other", "rise", "1.3c", 150.0, 190.0, Evidence.TextSeen)]
    [InlineData("wales-1998-other", "going", "1.3c", 250.0, 320.0, Evidence.TextSeen)]
    [InlineData("wales-1998-private", "two-rise-and-going", "1.5", 550.0, 700.0, Evidence.TextSeen)]
    [InlineData("wales-1998-private", "narrow-along-faces", "1.18", 50.0, null, Evidence.TextSeen)]
    [InlineData("wales-1998-private", "handrail", "1.27", 900.0, 1000.0, Evidence.TextSeen)]
    // Technical Standards Part S 3.3: "Private stair 220 225 42º", "Any other stair 170 250 34º"; handbook 4.3.2 note 5; S3.12; S3.19.
    [InlineData("scotland-private", "rise", "S3.3", null, 220.0, Evidence.TextSeen)]
    [InlineData("scotland-private", "going", "S3.3", 225.0, null, Evidence.TextSeen)]
    [InlineData("scotland-private", "pitch", "S3.3", null, 42.0, Evidence.TextSeen)]
    [InlineData("scotland-private", "two-rise-and-going", "note 5", 550.0, 700.0, Evidence.TextSeen)]
    [InlineData("scotland-private", "narrow-along-faces", "S3.12", 50.0, null, Evidence.TextSeen)]
    [InlineData("scotland-private", "landing", "S3.19", 900.0, null, Evidence.TextSeen)]
    [InlineData("scotland-private", "clear-width", "4.3.3", 900.0, null, Evidence.TextSeen)]
    [InlineData("scotland-any-other", "rise", "S3.3", null, 170.0, Evidence.TextSeen)]
    [InlineData("scotland-any-other", "going", "S3.3", 250.0, null, Evidence.TextSeen)]
    [InlineData("scotland-any-other", "pitch", "S3.3", null, 34.0, Evidence.TextSeen)]
    [InlineData("scotland-any-other", "landing", "S3.19", 1200.0, null, Evidence.TextSeen)]
    // Technical Guidance Document K 2014, Table 1: maximum rise, minimum going, maximum pitch (other texts), and optimum values (memory).
    [InlineData("ireland-2014-private", "rise", "1.1.3", null, 220.0, Evidence.Secondary)]
    [InlineData("ireland-2014-private", "going", "1.1.3", 220.0, null, Evidence.Secondary)]
    [InlineData("ireland-2014-private", "pitch", "1.1.3", null, 42.0, Evidence.Secondary)]
    [InlineData("ireland-2014-private", "rise", "optimum", null, 175.0, Evidence.Memory)]
    [InlineData("ireland-2014-private", "going", "optimum", 250.0, null, Evidence.Memory)]
    [InlineData("ireland-2014-private", "pitch", "optimum", null, 35.0, Evidence.Memory)]
    // Technical Booklet H 2012, section 3: from memory.
    [InlineData("northern-ireland-2012-private", "rise", "section 3", null, 220.0, Evidence.Memory)]
    [InlineData("northern-ireland-2012-private", "going", "section 3", 220.0, null, Evidence.Memory)]
    [InlineData("northern-ireland-2012-private", "pitch", "section 3", null, 42.0, Evidence.Memory)]
    // International Residential Code 2021 R311.7 and 2024 R318.7, in inches.
    [InlineData("usa-irc-2021", "rise", "R311.7.5.1", null, 7.75 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "rise", "R318.7.5.1", null, 7.75 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "uniform-rise", "R318.7.5.1", null, 0.375 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "going", "R318.7.5.2", 10 * Inch, null, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "tapered-going", "R318.7.4", 10 * Inch, null, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "narrow-straight", "R318.7.5.2.1", 6 * Inch, null, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "uniform-tapered-going", "R318.7.5.2.1", null, 0.375 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "nosing", "R318.7.5.3", 0.75 * Inch, 1.25 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "flight-rise", "R318.7.3", null, 151 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "clear-width", "R318.7.1", 36 * Inch, null, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "headroom", "R318.7.2", 80 * Inch, null, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "handrail", "R320.2", 34 * Inch, 38 * Inch, Evidence.TextSeen)]
    [InlineData("usa-irc-2024", "guarding", "R321.1", 34 * Inch, null, Evidence.TextSeen)]
    // NCC Housing Provisions Table 11.2.2a as NCC volume 1 Table D3D14 and BCA part 3.9.1 state it.
    [InlineData("australia-ncc-2022", "rise", "11.2.2a", 115.0, 190.0, Evidence.Secondary)]
    [InlineData("australia-ncc-2022", "going", "11.2.2a", 240.0, 355.0, Evidence.Secondary)]
    [InlineData("australia-ncc-2022", "two-rise-and-going", "11.2.2a", 550.0, 700.0, Evidence.Secondary)]
    [InlineData("australia-ncc-2022", "risers-per-flight", "3.9.1", 2.0, 18.0, Evidence.Secondary)]
    [InlineData("australia-ncc-2022", "tapered-per-quarter", "3.9.1", null, 3.0, Evidence.Secondary)]
    // DIN 18065 as published summaries state it.
    [InlineData("din-18065-2020", "rise", "boundary", 140.0, 200.0, Evidence.Secondary)]
    [InlineData("din-18065-2020", "going", "boundary", 230.0, 370.0, Evidence.Secondary)]
    [InlineData("din-18065-2020", "clear-width", "boundary", 800.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020-other", "rise", "boundary", 140.0, 190.0, Evidence.Secondary)]
    [InlineData("din-18065-2020-other", "going", "boundary", 260.0, 370.0, Evidence.Secondary)]
    [InlineData("din-18065-2020-other", "clear-width", "boundary", 1000.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020-additional", "going", "boundary", 210.0, 370.0, Evidence.Secondary)]
    [InlineData("din-18065-2020-additional", "clear-width", "boundary", 500.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020", "two-rise-and-going", "step rule", 590.0, 650.0, Evidence.Secondary)]
    [InlineData("din-18065-2020", "first-rise", "tolerances", null, 15.0, Evidence.Secondary)]
    [InlineData("din-18065-2020", "uniform-rise", "tolerances", null, 5.0, Evidence.Secondary)]
    [InlineData("din-18065-2020", "walking-bend", "walking line", 300.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020", "narrow-along-faces", "winders", 50.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020-other", "narrow-along-faces", "winders", 100.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020", "nosing", "undercut", 30.0, null, Evidence.Secondary)]
    [InlineData("din-18065-2020", "risers-per-flight", "flights", 3.0, 18.0, Evidence.Secondary)]
    // BS 5395-1:2010 Table 1: "Private stair 150 200 250 400 800 900 1 000"; normal use 150 to 180, 300 to 450, 1000; footnote A 1000; 3 to 20 rises.
    [InlineData("bs-5395-1-2010", "rise", "Table 1", 150.0, 200.0, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010", "going", "Table 1", 250.0, 400.0, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010", "clear-width", "Table 1", 800.0, null, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010", "risers-per-flight", "Table 1", 3.0, 20.0, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010-two-way", "clear-width", "fn A", 1000.0, null, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010-normal-use", "rise", "Table 1", 150.0, 180.0, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010-normal-use", "going", "Table 1", 300.0, 450.0, Evidence.TextSeen)]
    [InlineData("bs-5395-1-2010-normal-use", "clear-width", "Table 1", 1000.0, null, Evidence.TextSeen)]
    // NHBC Standards 6.6.8 (2024): 220, 220 (225 in Scotland), 42°, 550 to 700, narrow end 50, floor finish 12; 6.6.6: 2000.
    [InlineData("uk-warranty-2024", "rise", "6.6.8", null, 220.0, Evidence.TextSeen)]
    [InlineData("uk-warranty-2024", "going", "6.6.8", 220.0, null, Evidence.TextSeen)]
    [InlineData("uk-warranty-2024-scotland", "going", "6.6.8", 225.0, null, Evidence.TextSeen)]
    [InlineData("uk-warranty-2024", "first-rise", "6.6.8", null, 12.0, Evidence.TextSeen)]
    [InlineData("uk-warranty-2024", "narrow-along-faces", "6.6.8", 50.0, null, Evidence.TextSeen)]
    [InlineData("uk-warranty-2024", "headroom", "6.6.6", 2000.0, null, Evidence.TextSeen)]
    public void A_table_holds_the_number_that_is_printed(string table, string rule, string clause, double? least, double? most, Evidence evidence)
    {
        var row = Assert.Single(RegulationCatalogue.Find(table)!.Clauses.Where(c => c.Rule.Id == rule && c.Number.Contains(clause, StringComparison.Ordinal)
            && (c.Limit.Least, c.Limit.Most) == (least, most)));
        Assert.Equal(evidence, row.Evidence);
    }

    /// <summary>Where the documents differ in kind: middle and two points or one, chord, narrow end as what, tapered no less than straight.</summary>
    [Theory]
    // Approved Document K 1998 1.18: "narrower than 1m measure in the middle", "1m or wider measure 270mm from each side"; narrow end a going; 2013: a tread width (Goring p.125, LABC).
    [InlineData("england-2013-private", 1000, 270, true, NarrowMeasure.TreadWidth, true)]
    [InlineData("wales-1998-private", 1000, 270, true, NarrowMeasure.AlongFaces, true)]
    [InlineData("scotland-private", 1000, 270, true, NarrowMeasure.AlongFaces, true)]
    [InlineData("ireland-2014-private", 1000, 270, true, NarrowMeasure.AlongFaces, true)]
    [InlineData("northern-ireland-2012-private", 1000, 270, true, NarrowMeasure.AlongFaces, true)]
    // IRC R311.7.4: 12 in from the inside of the turn, one point; R311.7.5.2.1: need not match straight treads.
    [InlineData("usa-irc-2021", 0, 12 * Inch, false, NarrowMeasure.Straight, false)]
    [InlineData("usa-irc-2024", 0, 12 * Inch, false, NarrowMeasure.Straight, false)]
    // BCA 3.9.1: winders may differ from the straight treads, all equal.
    [InlineData("australia-ncc-2022", 1000, 270, true, NarrowMeasure.AlongFaces, false)]
    // DIN 18065:2020-08: one line in the walking zone; "Der Auftritt entspricht der Sehne".
    [InlineData("din-18065-2020", 1000, 500, false, NarrowMeasure.AlongFaces, true)]
    public void A_table_measures_where_its_document_does(string table, double middleBelow, double inset, bool both, NarrowMeasure narrow, bool atLeastStraight)
    {
        var regulation = RegulationCatalogue.Find(table)!;
        Assert.Equal(new(middleBelow, inset, both), regulation.WalkingLine);
        Assert.Equal((GoingMeasure.Chord, narrow, atLeastStraight), (regulation.Going, regulation.Narrow, regulation.TaperedAtLeastStraight));
    }

    [Theory]
    // Approved Document K 1998, 1.3a: either box; a rise of 160 with a going of 240 lies in neither.
    [InlineData(155, 245, CheckOutcome.Pass)]
    [InlineData(155, 260, CheckOutcome.Pass)]
    [InlineData(160, 240, CheckOutcome.Fail)]
    [InlineData(160, 261, CheckOutcome.Fail)]
    [InlineData(164.9, 300, CheckOutcome.Fail)]
    [InlineData(165, 223, CheckOutcome.Pass)]
    [InlineData(165, 300, CheckOutcome.Pass)]
    [InlineData(180, 222.9, CheckOutcome.Fail)]
    [InlineData(200, 223, CheckOutcome.Pass)]
    [InlineData(200.1, 244.9, CheckOutcome.Fail)]
    [InlineData(200.1, 245, CheckOutcome.Pass)]
    [InlineData(220, 245, CheckOutcome.Pass)]
    [InlineData(220, 261, CheckOutcome.Fail)]
    public void Wales_1_3a_a_pair_is_allowed_in_either_box(double rise, double going, CheckOutcome outcome)
    {
        var plan = Flight(rise * 13, 13, going).Plan("wales-1998-private");
        Assert.Equal(CheckOutcome.Pass, plan.Check("rise").Outcome);
        Assert.Equal(outcome, plan.Check("going", "1.3a").Outcome);
    }

    [Theory]
    [InlineData(154.9)]
    [InlineData(220.1)]
    public void Wales_1_3a_a_rise_outside_both_boxes_is_not_allowed_with_any_going(double rise) =>
        Assert.Equal(CheckOutcome.Fail, Flight(rise * 13, 13, 250).Plan("wales-1998-private").Check("rise").Outcome);

    [Fact]
    public void IRC_2024_asks_what_2021_asked_under_numbers_of_its_own()
    {
        var (old, now) = (RegulationCatalogue.Find("usa-irc-2021")!, RegulationCatalogue.Find("usa-irc-2024")!);
        Assert.Equal(old.Clauses.Select(c => (c.Rule.Id, c.Limit.Least, c.Limit.Most, c.Weight)).Where(c => c.Id != "lighting"), now.Clauses.Select(c => (c.Rule.Id, c.Limit.Least, c.Limit.Most, c.Weight)).Where(c => c.Id != "lighting"));
        Assert.All(old.Clauses, c => Assert.True(c.Number.StartsWith("R311.7", StringComparison.Ordinal) || c.Number.StartsWith("R312", StringComparison.Ordinal)));
        Assert.All(now.Clauses, c => Assert.True(c.Number.StartsWith("R318.7", StringComparison.Ordinal) || c.Number.StartsWith("R321", StringComparison.Ordinal)));
    }

    [Fact]
    public void DIN_18065_an_undercut_of_30_is_not_asked_for_from_a_going_of_260_on()
    {
        Assert.Equal(CheckOutcome.Fail, Flight(2600, 14, 259).Plan("din-18065-2020").Check("nosing").Outcome);
        Assert.Equal(CheckOutcome.NotChecked, Flight(2600, 14, 260).Plan("din-18065-2020").Check("nosing").Outcome);
    }

    [Fact]
    public void Northern_Ireland_alone_asks_for_a_rail_on_the_outside_of_tapered_steps() =>
        Assert.Equal(["northern-ireland-2012-private", "uk-warranty-2024", "uk-warranty-2024-scotland"],
            RegulationCatalogue.All.Where(t => t.Clauses.Any(c => c.Rule.Id == "outer-handrail")).Select(t => t.Id));

    [Fact]
    public void BCA_3_9_1_a_quarter_turn_of_four_winders_is_one_too_many()
    {
        Assert.Equal(CheckOutcome.Pass, Turned(2600, 260, 4, Winders(3, 30), 6).Plan("australia-ncc-2022").Check("tapered-per-quarter").Outcome);
        var four = Turned(2600, 260, 4, Winders(4, 30), 6).Plan("australia-ncc-2022").Check("tapered-per-quarter");
        Assert.Equal((CheckOutcome.Fail, 4), (four.Outcome, four.Measured));
    }

    // Goring, Manual of Purpose-Made Woodworking Joinery, fig. 6.27: 2950 in 16 risers, going 220: legal in England, too short a going for Scotland and for BS 5395-1.
    [Theory]
    [InlineData("england-2013-private", "going", CheckOutcome.Pass)]
    [InlineData("england-2013-private", "pitch", CheckOutcome.Pass)]
    [InlineData("england-2013-private", "two-rise-and-going", CheckOutcome.Pass)]
    [InlineData("scotland-private", "going", CheckOutcome.Fail)]
    [InlineData("wales-1998-private", "going", CheckOutcome.Fail)]
    [InlineData("bs-5395-1-2010", "going", CheckOutcome.Advice)]
    [InlineData("australia-ncc-2022", "going", CheckOutcome.Fail)]
    [InlineData("din-18065-2020", "going", CheckOutcome.Fail)]
    public void Goring_6_27_under_the_tables(string table, string rule, CheckOutcome outcome)
    {
        var plan = Flight(2950, 16, 220).Plan(table);
        Assert.Equal(184.375, plan.Rise, 9);
        Assert.Equal(outcome, plan.Check(rule).Outcome);
    }

    // US Army EN5156, fig. 2-37: 94 in, 13 risers of 7.23 in, tread 10½ in: within the code of 2021 and of 2024.
    [Theory]
    [InlineData("usa-irc-2021")]
    [InlineData("usa-irc-2024")]
    public void EN5156_2_37_keeps_rise_and_tread_of_the_residential_code(string table)
    {
        var plan = Flight(94 * Inch, 13, 10.5 * Inch).Plan(table);
        Assert.Equal((CheckOutcome.Pass, CheckOutcome.Pass), (plan.Check("rise").Outcome, plan.Check("going").Outcome));
    }

    // Teaching set of a closed-riser stair: 1050 in 6 risers of 175, going 290, 2R + G = 640: within the step rule of DIN 18065.
    [Fact]
    public void The_teaching_sets_stair_keeps_the_step_rule_of_DIN_18065()
    {
        var check = Flight(1050, 6, 290).Plan("din-18065-2020").Check("two-rise-and-going");
        Assert.Equal((CheckOutcome.Pass, 640), (check.Outcome, check.Measured));
    }
}
