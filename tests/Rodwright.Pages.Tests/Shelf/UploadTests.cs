using System.Text;
using Bunit;
using Microsoft.AspNetCore.Components.Forms;
using Rodwright.Pages.Shelf;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Testing;

namespace Rodwright.Pages.Tests.Shelf;

public sealed class UploadTests
{
    public static TheoryData<string> Bad => [.. BadFiles.All.Keys];

    [Theory]
    [MemberData(nameof(Bad))]
    public void A_bad_file_is_refused_with_what_is_wrong_and_what_would_help(string name)
    {
        var outcome = UploadedJob.Of(BadFiles.All[name], RegulationShelf.Published);
        Assert.Null(outcome.Value);
        Assert.All(outcome.Findings, f =>
        {
            Assert.Matches("^RW[0-9]{4}$", f.Code);
            Assert.True(f.Message.Length is > 5 and < 1000, f.Message);
            Assert.NotEmpty(f.Hint);
        });
    }

    [Fact]
    public void There_are_enough_of_them() => Assert.True(BadFiles.All.Count >= 60, $"{BadFiles.All.Count}");

    [Theory]
    [MemberData(nameof(Bad))]
    public void The_page_tells_it_stores_nothing_and_runs_nothing(string name)
    {
        using var page = Bench.Page();
        var made = 0;
        var upload = page.Render<UploadJob>(p => p.Add(u => u.OnMade, _ => made++));
        upload.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(BadFiles.All[name], "../../../etc/<script>alert(1)</script>.stair.json"));
        upload.WaitForElement(".refusals");
        Assert.Equal(0, made);
        Assert.Empty(upload.FindAll("script, img, iframe"));
        Assert.DoesNotContain("onerror=alert(1)>", upload.Markup);
    }

    [Fact]
    public void A_file_too_large_is_not_even_read()
    {
        using var page = Bench.Page();
        var upload = page.Render<UploadJob>();
        upload.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary(new byte[UploadedJob.Most + 1], "large.stair.json"));
        upload.WaitForAssertion(() => Assert.Contains("nothing over 500000 is read", upload.Markup));
    }

    [Fact]
    public void A_good_file_becomes_a_job_whatever_it_is_called_with_or_without_a_byte_order_mark()
    {
        foreach (var start in new byte[][] { [], [0xEF, 0xBB, 0xBF] })
        {
            using var page = Bench.Page();
            Job? made = null;
            var upload = page.Render<UploadJob>(p => p.Add(u => u.OnMade, m => made = m.Job));
            upload.FindComponent<InputFile>().UploadFiles(InputFileContent.CreateFromBinary([.. start, .. Encoding.UTF8.GetBytes(Samples.Text("left-kite-low"))], "..\\..\\con"));
            upload.WaitForAssertion(() => Assert.NotNull(made));
            Assert.Equal(Samples.Job("left-kite-low"), made);
        }
    }

    [Fact]
    public void Markup_in_a_title_stays_a_title()
    {
        var text = Samples.Text("left-kite-low").Replace("Larkmoor Barn", "<b onclick=alert(1)>Barn</b>", StringComparison.Ordinal);
        Assert.StartsWith("<b onclick=alert(1)>Barn</b>", UploadedJob.Of(Encoding.UTF8.GetBytes(text), RegulationShelf.Published).Value!.Title);
    }
}
