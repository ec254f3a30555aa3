using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Tests.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Stairs.Tests.Proposals;

public sealed class BriefFileTests
{
    private const string Text = """{ "rodwright": 1, "title": "Loft", "regulation": "scotland-private", "survey": { "floorToFloor": 2600 } }""";

    [Fact]
    public void A_job_without_a_layout_is_a_brief_and_no_job()
    {
        var brief = BriefFile.Read(Text).Value!;
        Assert.Equal(("Loft", "scotland-private", 2600.0, (double?)null), (brief.Title, brief.Regulation, brief.Survey.Height, brief.Width));
        Assert.Equal(["going", "layout", "width"], JobFile.Read(Text).Findings.Select(f => f.Where).Order());
    }

    [Fact]
    public void A_whole_job_is_a_brief_too() => Assert.Equal(Brief.Of(Samples.Job("left-kite-low")).Survey, BriefFile.Read(Samples.Text("left-kite-low")).Value!.Survey);

    [Fact]
    public void Everything_wrong_is_found_at_once() => Assert.Equal(
        [("RW1007", "colour"), ("RW1009", "wishes.comfort"), ("RW1012", "survey"), ("RW1028", "layout.hand"), ("RW1140", "wishes.families[0]")],
        BriefFile.Read("""
            { "rodwright": 1, "title": "Loft", "regulation": "scotland-private", "survey": 3, "colour": 1,
              "layout": { "hand": "up", "sequence": [{ "flight": 12 }] }, "wishes": { "comfort": "much", "families": ["spiral"] } }
            """).Findings.Select(f => (f.Code, f.Where)).Order());

    [Fact]
    public void Practice_is_judged_although_there_is_no_layout() =>
        Assert.Contains(BriefFile.Read(Text.Replace("2600 }", "2600 }, \"practice\": { \"housing\": 40 }", StringComparison.Ordinal)).Findings, f => f.Where == "practice.housing");

    [Fact]
    public void Wishes_are_kept_with_the_job()
    {
        var job = JobFile.Read(GoodJob.Text).Value! with { Wishes = new() { Comfort = 620, Widths = [850, 900], Newels = [100], Hand = Hand.Right, Families = ["straight"], Unwanted = ["half-winders"], Weights = new() { Pitch = 2 } } };
        Assert.Equal(job, JobFile.Read(JobFile.Write(job)).Value);
    }
}
