using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Outside;

/// <summary>The limits of the International Residential Code in a job in inches, as the code prints them.</summary>
public sealed class InchLimits
{
    [Theory]
    // R311.7.5.1 "7 3/4 inches"; "exceed the smallest by more than 3/8 inch"; R311.7.5.2 "10 inches"; R311.7.5.2.1 "6 inches"; R311.7.5.3 "3/4 inch … 1 1/4 inches";
    // R311.7.3 "12 feet 7 inches"; R311.7.2 "6 feet 8 inches"; R311.7.1 and R311.7.6 "36 inches"; R311.7.8.1 "34 inches … 38 inches".
    [InlineData("rise", "at most 7 3/4\"")]
    [InlineData("uniform-rise", "at most 3/8\"")]
    [InlineData("going", "at least 10\"")]
    [InlineData("tapered-going", "at least 10\"")]
    [InlineData("narrow-straight", "at least 6\"")]
    [InlineData("nosing", "3/4\" to 1 1/4\"")]
    [InlineData("flight-rise", "at most 12' 7\"")]
    [InlineData("headroom", "at least 6' 8\"")]
    [InlineData("clear-width", "at least 36\"")]
    [InlineData("landing", "at least 36\"")]
    [InlineData("handrail", "34\" to 38\"")]
    public void A_limit_is_told_as_the_code_prints_it(string rule, string limit)
    {
        foreach (var table in new[] { "usa-irc-2021", "usa-irc-2024" })
        {
            var plan = Planner.SetOut(Samples.Job("feet-and-inches") with { Regulation = table }, RegulationCatalogue.Find(table)!).Value!;
            var checks = Judge.Check(plan).Checks.Where(c => c.Clause.Rule.Id == rule).ToList();
            Assert.Contains(checks, c => c.Limit == limit);
            // How well a number is known is told in every unit.
            Assert.All(checks, c => Assert.NotEqual("", EvidenceWords.Print(c.Clause.Evidence)));
        }
    }

    [Fact]
    public void A_limit_in_millimetres_is_told_in_inches_with_its_decimals()
    {
        var plan = Planner.SetOut(Samples.Job("feet-and-inches") with { Regulation = "england-2013-private" }, RegulationCatalogue.Find("england-2013-private")!).Value!;
        var rise = Judge.Check(plan).Checks.First(c => c.Clause.Rule.Id == "rise");
        Assert.Equal("5 7/8\" heavy (5.906\") to 8 11/16\" light (8.661\")", rise.Limit);
        Assert.Equal("7 11/16\" light (7.658\")", rise.MeasuredWords);
    }

    [Fact]
    public void In_a_job_in_millimetres_the_codes_own_figure_stands_beside_the_limit()
    {
        var job = Samples.Job("feet-and-inches") with { Units = Units.Millimetres };
        var rise = Judge.Check(Planner.SetOut(job, RegulationCatalogue.Find(job.Regulation)!).Value!).Checks.First(c => c.Clause.Rule.Id == "rise");
        Assert.Equal("at most 196.85 mm (7¾ in)", rise.Limit);
    }
}
