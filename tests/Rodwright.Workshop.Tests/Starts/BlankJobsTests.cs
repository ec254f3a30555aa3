using Rodwright.Joinery;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Workshop.Starts;

namespace Rodwright.Workshop.Tests.Starts;

public sealed class BlankJobsTests
{
    public static TheoryData<BlankKind, Hand> Kinds
    {
        get
        {
            var data = new TheoryData<BlankKind, Hand>();
            foreach (var kind in Enum.GetValues<BlankKind>())
                foreach (var hand in Enum.GetValues<Hand>()) data.Add(kind, hand);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void An_ordinary_house_begins_with_a_stair_that_complies_and_goes_together(BlankKind kind, Hand hand)
    {
        var outcome = BlankJobs.Make(new("Rookhope Cottage", "2598, 2601", "860", "england-2013-private", kind, hand));
        var stair = Stair.SetOut(outcome.Value!).Value!;
        Assert.DoesNotContain(stair.Findings, f => f.Severity >= Severity.Breach);
        Assert.True(stair.Prove().Holds);
        Assert.Equal(hand, stair.Job.Layout.Hand);
    }

    [Fact]
    public void Every_regulation_can_be_begun_with()
    {
        foreach (var table in RegulationCatalogue.All)
        {
            var outcome = BlankJobs.Make(new("Rookhope Cottage", "2600", "1000", table.Id, BlankKind.Straight, Hand.Left));
            Assert.Equal(table.Id, outcome.Value!.Regulation);
        }
    }

    [Theory]
    [InlineData("", "2600", "860", "title")]
    [InlineData("A stair", "two metres", "860", "survey.floorToFloor")]
    [InlineData("A stair", "2600", "-5", "width")]
    [InlineData("A stair", "2500, 2600", "860", "survey.floorToFloor")]
    public void What_was_typed_wrongly_is_told_by_its_field(string title, string height, string width, string field)
    {
        var outcome = BlankJobs.Make(new(title, height, width, "england-2013-private", BlankKind.TurnLow, Hand.Left));
        Assert.Null(outcome.Value);
        Assert.Contains(outcome.Findings, f => f.Where.StartsWith(field, StringComparison.Ordinal));
    }
}
