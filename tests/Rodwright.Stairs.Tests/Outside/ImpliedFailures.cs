using Rodwright.Stairs.Regulations;
using Xunit;
using static Rodwright.Stairs.Tests.Bench;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>Stairs that the documents themselves imply must fail, though each number alone may look in range.</summary>
public sealed class ImpliedFailures
{
    [Fact]
    public void Approved_Document_K_2013_Table_1_1_a_rise_of_220_on_a_going_of_220_is_too_steep()
    {
        var plan = Flight(2640, 12, 220).Plan();
        Assert.Equal(CheckOutcome.Pass, plan.Check("rise").Outcome);
        Assert.Equal(CheckOutcome.Pass, plan.Check("going").Outcome);
        Assert.Equal(CheckOutcome.Fail, plan.Check("pitch").Outcome);
        Assert.Equal(45, plan.Check("pitch").Measured!.Value, 9);
    }

    [Fact]
    public void Scottish_handbook_4_3_2_note_6_rise_220_and_going_225_are_not_used_together()
    {
        var plan = Flight(2640, 12, 225).Plan("scotland-private");
        Assert.Equal(CheckOutcome.Pass, plan.Check("rise").Outcome);
        Assert.Equal(CheckOutcome.Pass, plan.Check("going").Outcome);
        Assert.Equal(CheckOutcome.Fail, plan.Check("pitch").Outcome);
        Assert.Equal(44.4, plan.Check("pitch").Measured!.Value, 0.05);
    }

    [Fact]
    public void IRC_2021_R311_7_5_2_1_winders_radiating_from_a_newel_are_narrower_than_6_inches()
    {
        var plan = Turned(2600, 260, 4, Winders(3, 0, "radiating"), 6).Plan("usa-irc-2021");
        Assert.Equal(CheckOutcome.Fail, plan.Check("narrow-straight").Outcome);
    }

    [Fact]
    public void BS_5395_1_Table_1_a_rise_of_210_is_advised_against()
    {
        Assert.Equal(CheckOutcome.Advice, Flight(2520, 12, 260).Plan("bs-5395-1-2010").Check("rise").Outcome);
        Assert.Equal(CheckOutcome.Pass, Flight(2520, 12, 260).Plan().Check("rise").Outcome);
    }

    [Fact]
    public void Approved_Document_K_2013_a_pace_of_705_is_a_warning_and_in_Scotland_a_failure()
    {
        var job = Flight(2520, 12, 285);
        Assert.Equal(705, job.Plan().Check("two-rise-and-going").Measured!.Value, 9);
        Assert.Equal(CheckOutcome.Advice, job.Plan().Check("two-rise-and-going").Outcome);
        Assert.Equal(CheckOutcome.Fail, job.Plan("scotland-private").Check("two-rise-and-going").Outcome);
    }

    [Theory]
    [InlineData(244.3, CheckOutcome.Fail)]
    [InlineData(244.4, CheckOutcome.Pass)]
    public void Approved_Document_K_2013_a_rise_of_220_needs_a_going_of_244_4(double going, CheckOutcome outcome) =>
        Assert.Equal(outcome, Flight(2640, 12, going).Plan().Check("pitch").Outcome);

    [Theory]
    [InlineData(198.0, CheckOutcome.Pass)]
    [InlineData(198.1, CheckOutcome.Fail)]
    public void Approved_Document_K_2013_a_going_of_220_allows_a_rise_of_198(double rise, CheckOutcome outcome) =>
        Assert.Equal(outcome, Flight(13 * rise, 13, 220).Plan().Check("pitch").Outcome);
}
