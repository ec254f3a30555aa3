using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

public sealed class SheetFiguresTests
{
    private static List<string> Texts(Sheet sheet) => [.. FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<TextMark>().Select(t => t.Text)];

    [Fact]
    public void The_plan_prints_the_check_values()
    {
        var texts = Texts(PlanSheets.Make(Rods.Sample("left-kite-low", "A1", "1:5"))[0]);
        // setting-out.md 2.2: going 233.728 by chords, narrow ends 50, 35.355 straight across, kite 725.65 along the walls; e 30 both sides.
        foreach (var figure in new[] { "233.7", "50.0", "35.4", "725.6", "30", "860", "796", "N2 90 × 90" }) Assert.Contains(figure, texts);
        // The second riser meets the wall string 449.175 beyond the newel's centre, which lies 480 from the first riser.
        Assert.Contains("929.2  riser 4", texts);
    }

    [Fact]
    public void Mirrored_stairs_print_the_same_figures()
    {
        var left = Samples.Job("right-kite-top") is var job ? job with { Layout = job.Layout with { Hand = Stairs.Jobs.Hand.Left }, Sides = new(job.Sides.Right, job.Sides.Left) } : null!;
        Assert.Equal(Figures(left), Figures(job));

        static List<string> Figures(Stairs.Jobs.Job job)
        {
            var rod = Rods.Of(job, "A1", "1:10");
            return [.. StairSheets.Make(rod).SelectMany(Texts).Select(t => string.Join(' ', t.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)))
                .Where(t => !t.Contains("left", StringComparison.Ordinal) && !t.Contains("right", StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
        }
    }

    [Theory, InlineData("left-kite-low"), InlineData("right-kite-top")]
    public void Drawn_outlines_are_the_parts_to_scale(string name)
    {
        var rod = Rods.Sample(name, "A1", "1:5");
        foreach (var sheet in StringSheets.Walls(rod).Concat(StringSheets.Newels(rod)))
        {
            var drawn = FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<StrokeMark>().Where(s => s.Layer == Layer.OutlineToCut).ToList();
            Assert.NotEmpty(drawn);
            foreach (var stroke in drawn)
            {
                var outline = rod.Stair.Kit.Find(stroke.Of!).FaceSide.Outline;
                Assert.Equal(outline.Length, stroke.Path.Length * sheet.Scale.Ratio, 1e-6);
                Assert.Equal(outline.Area, stroke.Path.Area * sheet.Scale.Ratio * sheet.Scale.Ratio, 1e-3);
            }
        }
    }

    [Fact]
    public void Wall_strings_climb_to_the_left_on_paper_for_a_left_hand_stair_and_to_the_right_for_its_mirror()
    {
        Assert.Equal(-1, StringView.All(Rods.Sample("left-kite-low").Stair, wall: true).Single().Sense);
        Assert.Equal(1, StringView.All(Rods.Sample("right-kite-top").Stair, wall: true).Single().Sense);
        Assert.All(StringView.All(Rods.Sample("left-kite-low").Stair, wall: false), v => Assert.Equal(1, v.Sense));
    }

    [Fact]
    public void Boards_that_fit_only_alone_get_a_sheet_each()
    {
        var sheets = StringSheets.Walls(Rods.Sample("left-kite-low", "A1", "1:5"));
        Assert.Equal(["wall-string-1", "wall-string-2"], sheets.Select(s => s.Name));
        Assert.All(sheets, s => Assert.Equal(5, s.Scale.Ratio));
    }

    [Fact]
    public void The_teaching_stair_has_plan_and_wall_strings_on_one_large_sheet()
    {
        var rod = RodSheets.Make(Rods.Sample("half-scale-teaching", "1800x1200")).Single();
        var drawn = FlatMarks.Of(rod.Marks).Select(m => m.Mark).ToList();
        Assert.Contains(drawn, m => m.Of == "wall-string-1" && m.Layer == Layer.OutlineToCut);
        Assert.Contains(drawn, m => m.Of == "walking-line");
        Assert.Empty(RodSheets.Make(Rods.Sample("left-kite-low", "A4")));
    }
}
