using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Booklet;
using Rodwright.Rod.Stages;
using Xunit;

namespace Rodwright.Rod.Tests.Booklet;

public sealed class BookletTests
{
    public static TheoryData<string, string> All => RodJobs.Everything("A4", "A3", "A1", "610");

    [Theory, MemberData(nameof(All))]
    public void Nothing_overlaps_anything_on_any_page(string sample, string paper)
    {
        var sheets = BookletSheets.Make(RodJobs.Of(sample, paper));
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where.Centre}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
        foreach (var sheet in sheets)
        {
            foreach (var (mark, _) in FlatMarks.Of(sheet.Marks))
                if (mark is TextMark text) Assert.DoesNotContain(sheet.Reserved, box => box.Overlaps(text.Bounds, 0.1));
        }
    }

    [Theory, MemberData(nameof(All))]
    public void Every_stage_is_told_and_every_step_has_a_box_to_tick(string sample, string paper)
    {
        var rod = RodJobs.Of(sample, paper);
        var sheets = BookletSheets.Make(rod);
        var marks = sheets.SelectMany(s => s.Marks).ToList();
        var words = marks.OfType<TextMark>().Where(t => t.Bold).Select(t => t.Text).ToHashSet();
        var stages = RodStages.Of(rod.Stair).Stages;
        Assert.Equal(sheets.Count, sheets.Select(s => s.Name).Distinct().Count());
        for (var i = 0; i < stages.Length; i++) Assert.Contains($"{i + 1}. {stages[i].Title}", words);
        var boxes = marks.OfType<StrokeMark>().Count(m => m.Layer == Layer.Lettering && m.Path.Closed && Math.Abs(m.Path.Bounds.Width - 4) < 0.001 && Math.Abs(m.Path.Bounds.Height - 4) < 0.001);
        var told = stages.Sum(s => s.Lines.Count(l => l.Telling is null) + s.Lines.Where(l => l.Telling is not null).Select(l => l.Telling!.Id).Distinct().Count());
        Assert.Equal(told, boxes);
    }

    [Fact]
    public void A_booklet_is_A4_upright_unless_larger_sheets_are_asked_for()
    {
        Assert.All(BookletSheets.Make(RodJobs.Of("left-kite-low", "A4")), s => Assert.Equal((210, 297), (s.Paper.Width, s.Paper.Height)));
        Assert.All(BookletSheets.Make(RodJobs.Of("left-kite-low", "610")), s => Assert.Equal((210, 297), (s.Paper.Width, s.Paper.Height)));
        Assert.All(BookletSheets.Make(RodJobs.Of("left-kite-low", "A3")), s => Assert.Equal((420, 297), (s.Paper.Width, s.Paper.Height)));
    }

    [Fact]
    public void Equal_straight_steps_are_told_once_with_a_table()
    {
        var texts = BookletSheets.Make(RodJobs.Of("straight-flight", "A4")).SelectMany(s => s.Marks).OfType<TextMark>().Select(t => t.Text).ToList();
        Assert.Single(texts, t => t.StartsWith("From riser 1's face measure each distance", StringComparison.Ordinal));
        foreach (var k in Enumerable.Range(1, 11)) Assert.Contains(Geometry.Number.Print(k * 235), texts);
    }

    [Fact]
    public void The_same_stair_gives_the_same_pages()
    {
        byte[][] Bytes() => [.. FormatCatalogue.Find("svg")!.Write(new SheetSet("b", "b", BookletSheets.Make(RodJobs.Of("right-kite-top", "A4")))).Select(f => f.Bytes.ToArray())];
        var (a, b) = (Bytes(), Bytes());
        Assert.Equal(a.Length, b.Length);
        for (var i = 0; i < a.Length; i++) Assert.Equal(a[i], b[i]);
    }
}
