using Rodwright.Stairs.Proposals;
using Xunit;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>Printed examples of sharing a height out among risers. Inches are kept as inches: the split knows no unit.</summary>
public sealed class PublishedHeights
{
    [Fact]
    public void Army_subcourse_EN5156_fig_2_37_ninety_four_inches_near_seven_are_thirteen_risers()
    {
        var split = RiserSplit.Nearest(94, 7);
        Assert.Equal(13, split.Risers);
        Assert.Equal(7.23, split.Rise, 2);
    }

    [Fact]
    public void Navy_NAVEDTRA_14044_fig_6_15_disregards_the_fraction_fifteen_risers()
    {
        var split = RiserSplit.Disregarding(8 * 12 + 11, 7);
        Assert.Equal(15, split.Risers);
        Assert.Equal(107.0 / 15, split.Rise, 12);
    }

    [Fact]
    public void Encyclopedia_of_Architecture_1852_thirteen_feet_four_at_about_seven_are_twenty_three_rises()
    {
        var split = RiserSplit.NotAbove(13 * 12 + 4, 7);
        Assert.Equal(23, split.Risers);
        Assert.InRange(split.Rise, 6.9, 6.9999); // "somewhat less than 7"
    }

    [Fact]
    public void Carpenters_Guide_figs_51_52_nine_feet_four_are_sixteen_rises_of_seven() =>
        Assert.Equal(new RiserSplit(16, 7), RiserSplit.NotAbove(9 * 12 + 4, 7));

    [Fact]
    public void Hodgson_and_Williams_fig_33_seven_feet_are_twelve_risers_of_seven() =>
        Assert.Equal(new RiserSplit(12, 7), RiserSplit.NotAbove(84, 7));

    [Fact]
    public void Maker_measuring_guide_one_hundred_and_four_inches_up_to_eight_and_a_quarter_are_thirteen_of_eight() =>
        Assert.Equal(new RiserSplit(13, 8), RiserSplit.NotAbove(104, 8.25));

    [Fact]
    public void Teaching_set_1050_near_170_are_six_risers_of_175() => Assert.Equal(new RiserSplit(6, 175), RiserSplit.Nearest(1050, 170));

    [Fact]
    public void Viollet_le_Duc_four_and_a_half_metres_at_150_are_thirty_steps() => Assert.Equal(30, RiserSplit.NotAbove(4500, 150).Risers);

    [Fact]
    public void Colombian_site_sheet_levels_60_50_to_63_38_are_sixteen_rises_of_180()
    {
        var split = RiserSplit.NotAbove((63.38 - 60.50) * 1000, 180);
        Assert.Equal(16, split.Risers);
        Assert.Equal(180, split.Rise, 9);
    }

    [Fact]
    public void Every_count_in_a_range_is_offered_and_no_other()
    {
        var splits = RiserSplit.Between(2600, 150, 220);
        Assert.Equal([12, 13, 14, 15, 16, 17], splits.Select(s => s.Risers));
        Assert.All(splits, s => Assert.Equal(2600, s.Risers * s.Rise, 9));
    }

    [Theory]
    [InlineData(7.5, 10)]
    [InlineData(6.5, 12)]
    public void Army_subcourse_EN5156_twice_the_rise_and_the_tread_are_25_inches(double rise, double tread)
    {
        Assert.Equal(tread, StepRule.Pace(25).GoingFor(rise), 12);
        Assert.Equal(rise, StepRule.Pace(25).RiseFor(tread), 12);
    }

    [Theory]
    [InlineData(8, 8)]
    [InlineData(9, 7.5)]
    [InlineData(10, 7)]
    public void Hodgson_and_Williams_twice_the_rise_and_the_tread_are_24_inches(double tread, double rise)
    {
        Assert.Equal(rise, StepRule.Pace(24).RiseFor(tread), 12);
        Assert.Equal(tread, StepRule.Pace(24).GoingFor(rise), 12);
    }

    [Fact]
    public void Building_Trades_Pocketbook_rule_3_rise_times_tread_is_66_square_inches()
    {
        Assert.Equal(6, StepRule.Product(66).RiseFor(11), 12);
        Assert.Equal(9 + 3.0 / 7, StepRule.Product(66).GoingFor(7), 12);
    }
}
