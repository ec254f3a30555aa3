using Rodwright.Geometry;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Layouts;

/// <summary>A job and the same job told in inches are one stair.</summary>
public sealed class InchTwinTests
{
    [Fact]
    public void A_job_in_inches_is_to_the_last_bit_the_stair_of_the_same_job_in_millimetres() => Generated.Jobs.Holds(job =>
    {
        // By way of the file: what is written in inches reads back without loss.
        var twin = JobFile.Read(JobFile.Write(job with { Units = Units.Inches })).Value!;
        Assert.Equal(job with { Units = Units.Inches }, twin);
        var (metric, inches) = (Stair.SetOut(job), Stair.SetOut(twin));
        Assert.Equal(metric.Value is null, inches.Value is null);
        Assert.Equal(metric.Findings.Select(f => (f.Code, f.Severity, f.Where)), inches.Findings.Select(f => (f.Code, f.Severity, f.Where)));
        if (metric.Value is not { } a || inches.Value is not { } b) return;
        Assert.Equal(a.Plan.RiserLines, b.Plan.RiserLines);
        Assert.Equal(a.Regulation.Checks.Select(c => (c.Outcome, c.Measured)), b.Regulation.Checks.Select(c => (c.Outcome, c.Measured)));
        Assert.Equal(a.Kit.Parts.Select(p => (p.Id, p.Blank.Length, p.Blank.Width, p.Blank.Thickness)), b.Kit.Parts.Select(p => (p.Id, p.Blank.Length, p.Blank.Width, p.Blank.Thickness)));
        Assert.Equal(a.Kit.Parts.SelectMany(p => p.Faces).SelectMany(f => f.Outline.Vertices), b.Kit.Parts.SelectMany(p => p.Faces).SelectMany(f => f.Outline.Vertices));
        Assert.Equal(a.Kit.Parts.SelectMany(p => p.Cuts).Select(c => (c.Id, c.Depth)), b.Kit.Parts.SelectMany(p => p.Cuts).Select(c => (c.Id, c.Depth)));
    }, iter: 150);

    [Fact]
    public void No_finding_of_a_job_in_inches_speaks_of_millimetres() => Generated.Jobs.Holds(job =>
    {
        var outcome = Stair.SetOut(job with { Units = Units.Inches });
        foreach (var finding in outcome.Findings)
        {
            var words = $" {finding.Message} {finding.Hint} {string.Join(' ', finding.Remedies.Select(r => r.Words))} ";
            Assert.DoesNotContain(" mm", words, StringComparison.Ordinal);
        }
    }, iter: 150);

    [Fact]
    public void Remedies_of_a_job_in_inches_do_what_they_say()
    {
        var job = Samples.Job("feet-and-inches") with { Width = 660.4 };
        foreach (var finding in Stair.SetOut(job).Findings)
        {
            foreach (var change in finding.Remedies.SelectMany(r => r.Changes).Where(c => c.Path is "width" or "practice.newel"))
            {
                // What is told is what is set: whole sixteenths.
                var value = double.Parse(change.Json!, System.Globalization.CultureInfo.InvariantCulture);
                Assert.DoesNotContain("heavy", Units.Inches.Print(value, 2), StringComparison.Ordinal);
                Assert.DoesNotContain("light", Units.Inches.Print(value, 2), StringComparison.Ordinal);
            }
        }
    }
}
