using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Findings;

/// <summary>Limits of a regulation or of practice that are not kept: the stair is drawn all the same, the finding says what pinches and what would free it.</summary>
public class BreachTests
{
    private static Job Kite => Samples.Job("left-kite-low");

    private static Job WithTurn(Job job, Turn turn) => job with { Layout = job.Layout with { Sequence = [.. job.Layout.Sequence.Select(i => i is Turn ? turn : i)] } };

    public static TheoryData<string, Job, string, string> Breaches => new()
    {
        { "RW4001", Kite with { Practice = Kite.Practice with { WallString = new(32, 245) } }, "too narrow", "270" },
        { "RW4001", Kite with { Practice = Kite.Practice with { NewelString = new(32, 250) } }, "too narrow", "wide" },
        { "RW2101", Kite with { Practice = Kite.Practice with { Newel = 69 } }, "narrow ends of", "newel of" },
        { "RW2101", WithTurn(Kite, new(TurnKind.Winders, 6, null, null, "equal-goings")), "going of", "quarter landing" },
        { "RW2101", WithTurn(Kite, new(TurnKind.Winders, 3, 10, 10, "equal-goings")), "narrow ends of", "let the risers be solved" },
        { "RW2101", WithTurn(Kite, new(TurnKind.Winders, 4, null, null, "radiating")), "narrow ends of", "newel" },
        { "RW4002", Kite with { Practice = Kite.Practice with { Margin = 30 } }, "nosing", "margin of" },
        { "RW4003", WithTurn(Kite, new(TurnKind.Winders, 4, null, null, "equal-goings")) with { Practice = Kite.Practice with { Housing = 14, Riser = 9 } }, "full depth of", "thick" },
        { "RW4004", Samples.Job("quarter-landing") with { Practice = Samples.Job("quarter-landing").Practice with { Newel = 72 } }, "tenon", "a newel of" },
        { "RW4013", Kite with { Practice = Kite.Practice with { Newel = 60, NewelString = new(40, 280) } }, "10 proud of its strings", "newel housings 10 deep" },
        { "RW3003", Kite with { Going = 222 }, "pitch", "" },
        { "RW3002", Kite with { Going = 210 }, "going", "" },
        { "RW3001", Kite with { Survey = new() { FloorToFloor = [2900] } }, "rise", "" },
    };

    [Theory]
    [MemberData(nameof(Breaches))]
    public void A_breach_is_found_explained_and_drawn(string code, Job job, string says, string hint)
    {
        var outcome = Stair.SetOut(job);
        Assert.NotNull(outcome.Value);
        var finding = outcome.Findings.FirstOrDefault(f => f.Code == code);
        Assert.True(finding is not null, string.Join("\n", outcome.Findings));
        Assert.Equal(Severity.Breach, finding.Severity);
        Assert.Contains(says, finding.Message, StringComparison.OrdinalIgnoreCase);
        Assert.Contains(hint, finding.Hint, StringComparison.OrdinalIgnoreCase);
        Assert.NotEmpty(finding.Hint);
        Assert.NotEmpty(outcome.Value.Kit.Parts);
    }

    [Theory]
    [InlineData(18, 12)]
    [InlineData(25, 12)]
    [InlineData(14, 9)]
    public void A_riser_of_the_thickness_named_keeps_its_end(double housing, double riser)
    {
        var job = WithTurn(Kite, new(TurnKind.Winders, 4, null, null, "equal-goings")) with { Practice = Kite.Practice with { Newel = 120, NewelHousing = housing, Riser = riser } };
        var finding = Stair.SetOut(job).Findings.First(f => f.Code == "RW4003" && f.Message.Contains("inner", StringComparison.Ordinal));
        var thick = double.Parse(System.Text.RegularExpressions.Regex.Match(finding.Hint, "a riser ([0-9.]+) thick").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(thick > riser);
        Assert.DoesNotContain(Stair.SetOut(job with { Practice = job.Practice with { Riser = thick } }).Findings, f => f.Code == "RW4003" && f.Where == finding.Where && f.Message.Contains("inner", StringComparison.Ordinal));
    }

    [Fact]
    public void Remedies_named_for_a_turn_that_does_not_fit_do_free_it()
    {
        var tight = Kite with { Practice = Kite.Practice with { Newel = 69 } };
        var hint = Stair.SetOut(tight).Findings.First(f => f.Code == "RW2101").Hint;
        var newel = double.Parse(System.Text.RegularExpressions.Regex.Match(hint, "a newel of ([0-9.]+)").Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.DoesNotContain(Stair.SetOut(tight with { Practice = tight.Practice with { Newel = newel } }).Findings, f => f.Code == "RW2101");
        Assert.Contains(Stair.SetOut(tight with { Practice = tight.Practice with { Newel = 75 } }).Findings, f => f.Code == "RW2101");
    }
}
