using CsCheck;
using Rodwright.Properties;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;
using Rodwright.Stairs.Tests.Headroom;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Surveys;

public sealed class CertaintyTests
{
    private static StairPlan Flight(double height, double wellFrom = -1000)
    {
        var job = Bench.Flight(height, 14, 225);
        return (job with { Survey = job.Survey with { Well = new() { Along = wellFrom, Length = Readings.Of(5000), Width = Readings.Of(1200), Trimmer = Readings.Of(255) } } }).Plan();
    }

    [Fact]
    public void The_rise_is_as_sure_as_the_height_divided_by_the_risers()
    {
        var rise = PlanCertainty.Of(Flight(2520)).Single(c => c.What == "rise");
        Assert.Equal((180.0, 2518.0 / 14, 2522.0 / 14), (rise.Value, rise.Low, rise.High));
    }

    [Fact]
    public void Several_readings_count_with_all_they_say()
    {
        var job = Bench.Flight(2520, 14, 225);
        var rise = PlanCertainty.Of((job with { Survey = job.Survey with { FloorToFloor = [2518, 2522] } }).Plan()).Single(c => c.What == "rise");
        Assert.Equal((2516.0 / 14, 2524.0 / 14), (rise.Low, rise.High));
    }

    [Theory]
    [InlineData(3060, CutVerdict.Safe)]
    [InlineData(3079, CutVerdict.MeasureAgain)]
    [InlineData(3081, CutVerdict.MeasureAgain)]
    [InlineData(3090, CutVerdict.Fails)]
    public void A_rise_near_its_limit_of_220_is_measured_again(double height, CutVerdict verdict)
    {
        var rise = PlanCertainty.Of(Flight(height)).First(c => c.What.StartsWith("the rise, 1.3", StringComparison.Ordinal));
        Assert.Equal(verdict, rise.Verdict);
        Assert.Equal(verdict == CutVerdict.MeasureAgain ? "survey.floorToFloor" : null, rise.Decides?.Path);
    }

    [Fact]
    public void Headroom_near_its_limit_says_which_reading_decides()
    {
        // 2000 is kept by 2: the well, 3 either way along the pitch, costs 2.4; the height 1.7; the trimmer 2.
        var plan = Flight(2520, -20 + 225 * (2265 - 2002 - 180) / 180.0);
        var certain = PlanCertainty.Of(plan).Single(c => c.What.StartsWith("headroom under the trimmer, 1.11", StringComparison.Ordinal));
        Assert.Equal(2002, certain.Value, 1e-6);
        Assert.Equal(CutVerdict.MeasureAgain, certain.Verdict);
        Assert.Equal("survey.well.trimmer", certain.Decides!.Path);
        Assert.Contains("measure again: the trimmer's depth decides it", certain.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void No_readings_within_their_accuracies_leave_what_is_told_and_the_worst_is_reached() => Gen.Select(Rooms.Jobs, Gen.Double[0, 1].Array[24]).Holds((job, parts) =>
    {
        if (job.TryPlan() is not { } plan) return;
        var readings = SurveyReading.Of(job.Survey);
        // Anything in the box: a part of the way from low to high for each reading, many at an end.
        var survey = job.Survey;
        for (var i = 0; i < readings.Length; i++)
        {
            var part = parts[i % parts.Length];
            survey = readings[i].Put(survey, readings[i].Low + (part < 0.3 ? 0 : part > 0.7 ? 1 : part) * (readings[i].High - readings[i].Low));
        }
        var there = plan with { Job = job with { Survey = survey } };
        var report = HeadroomReport.Of(there)!;
        foreach (var certain in PlanCertainty.Of(plan).Where(c => c.What.StartsWith("headroom under", StringComparison.Ordinal)))
        {
            var name = certain.What["headroom under ".Length..].Split(", ")[0];
            if (report.Under.FirstOrDefault(c => c.Under.Name == name) is not { } found) continue;
            Assert.True(found.Least >= certain.Low - 1e-6, $"{certain.What}: {found.Least} is less than {certain.Low}");
            Assert.True(certain.Low <= certain.Value && certain.Value <= certain.High);
        }
        Assert.InRange(there.Rise, PlanCertainty.Of(plan)[0].Low - 1e-9, PlanCertainty.Of(plan)[0].High + 1e-9);
    }, iter: 150);
}
