using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Assembly;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;
using Rodwright.Stairs.Findings;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

/// <summary>What a joiner who works from the sheets looks for.</summary>
public sealed class JoinerReadsTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    private static List<TextMark> Texts(Sheet sheet) => [.. FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<TextMark>()];

    private static string Words(Sheet sheet) => string.Join(' ', Texts(sheet).Select(t => t.Text));

    [Theory, MemberData(nameof(Names))]
    public void Every_title_block_begins_with_a_capital_and_says_when_a_sheet_goes_on(string name)
    {
        var rod = Rods.Sample(name);
        var sheets = StairSheets.Make(rod);
        Sheet[] all = [.. Cover.Make(rod, sheets), .. sheets];
        Assert.All(all, s => Assert.True(char.IsUpper(s.Block!.Piece[0]), s.Block.Piece));
        Assert.All(all, s => Assert.Equal(s.Title.EndsWith(", continued", StringComparison.Ordinal), s.Block!.Piece.EndsWith(", continued", StringComparison.Ordinal)));
    }

    [Theory, MemberData(nameof(Names))]
    public void Every_string_and_newel_has_its_mark_in_plan_and_the_plan_says_rise_going_and_width(string name)
    {
        var rod = Rods.Sample(name);
        var plan = PlanSheets.Make(rod)[0];
        var texts = Texts(plan).Select(t => t.Text.Split(' ')[0]).ToHashSet();
        foreach (var part in rod.Stair.Kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel)) Assert.Contains(part.Mark, texts);
        Assert.Contains("Width over strings", Words(plan), StringComparison.Ordinal);
        Assert.Contains("risers of", Words(plan), StringComparison.Ordinal);
        Assert.DoesNotContain(": going:", Words(plan), StringComparison.Ordinal);
    }

    [Theory, InlineData("double-kite"), InlineData("dog-leg")]
    public void Where_two_flights_lie_back_to_back_each_newel_strings_mark_is_on_its_own_side(string name)
    {
        var texts = Texts(PlanSheets.Make(Rods.Sample(name))[0]);
        double Of(string mark) => texts.Single(t => t.Text == mark).At.X;
        var walls = Of("W1") - Of(name == "double-kite" ? "W3" : "W2");
        Assert.True((Of("F1") - Of("F2")) * Math.Sign(walls) > 3);
    }

    [Theory, MemberData(nameof(Names))]
    public void No_heading_of_the_ordinates_breaks_within_a_word(string name)
    {
        var texts = TableSheets.Ordinates(Rods.Sample(name)).SelectMany(Texts).Select(t => t.Text).ToList();
        Assert.NotEqual(0, texts.Count(t => t == "z"));
        // The narrowest column but one, and the narrowest: every table that has a height has a depth.
        Assert.Equal(texts.Count(t => t == "z"), texts.Count(t => t == "deep"));
    }

    [Theory, MemberData(nameof(Names))]
    public void No_line_passes_through_the_word_grain(string name)
    {
        foreach (var sheet in PieceSheets.Make(Rods.Sample(name)))
        {
            var lines = FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<StrokeMark>().Where(s => s.Layer == Layer.Hidden || s.Layer == Layer.Nosing || s.Layer == Layer.Centre).ToList();
            foreach (var grain in Texts(sheet).Where(t => t.Text.EndsWith("grain", StringComparison.Ordinal)))
                Assert.DoesNotContain(lines, l => l.Bounds.Height < 0.01 && l.Bounds.Grown(0.05).Overlaps(grain.Bounds));
        }
    }

    [Theory, MemberData(nameof(Names))]
    public void A_riser_sheet_speaks_of_ends_at_full_size_only_where_it_draws_them(string name)
    {
        foreach (var sheet in PieceSheets.Make(Rods.Sample(name)).Where(s => s.Name.StartsWith("risers", StringComparison.Ordinal)))
            Assert.Equal(Texts(sheet).Exists(t => t.Text == "full size"), Words(sheet).Contains("the ends of the top", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_figure_of_the_taper_table_in_sixteenths_stands_on_one_line()
    {
        var table = TaperTable.Of(Rods.Sample("feet-and-inches").Stair.Plan, 2.5)!;
        var texts = table.Draw(new(0, 0), 1000).Marks.OfType<TextMark>().Where(t => t.Text.EndsWith('"')).ToList();
        Assert.NotEmpty(texts);
        Assert.DoesNotContain(texts, t => t.Text.StartsWith("13/16", StringComparison.Ordinal) || t.Text.StartsWith("11/16", StringComparison.Ordinal));
    }

    [Fact]
    public void A_note_says_what_can_be_done_and_only_what_pinches_is_freed()
    {
        var rod = Rods.Sample("loft-under-slope");
        var cover = string.Join(' ', Cover.Make(rod, StairSheets.Make(rod)).Select(Words));
        Assert.Contains(rod.Stair.Findings, f => f.Severity == Severity.Note && f.Hint.Length > 0);
        Assert.Equal(rod.Stair.Findings.Count(f => f.Severity != Severity.Note && f.Hint.Length > 0), cover.Split("What would free it").Length - 1);
    }

    [Theory, MemberData(nameof(Names))]
    public void The_order_of_assembly_tells_each_number_once_and_no_run_of_two(string name)
    {
        foreach (var stage in AssemblyOrder.Of(RodJobs.Stair(name).Kit))
        {
            Assert.DoesNotMatch(@"(?i)\b(tread|riser|peg) \d", stage.Words);
            foreach (System.Text.RegularExpressions.Match run in System.Text.RegularExpressions.Regex.Matches($"{stage.Title} {stage.Words}", @"[TR]?(\d+) to [TR]?(\d+)"))
                Assert.True(int.Parse(run.Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture) > int.Parse(run.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture) + 1, run.Value);
        }
    }

    [Fact]
    public void A_string_that_stands_on_a_landing_says_landing()
    {
        var sheet = StairSheets.Make(Rods.Sample("open-well")).Single(s => s.Block!.Mark == "W2");
        Assert.DoesNotContain(Texts(sheet), t => t.Text.StartsWith("floor", StringComparison.Ordinal));
        Assert.Equal(2, Texts(sheet).Count(t => t.Text.StartsWith("landing", StringComparison.Ordinal)));
    }

    [Theory, MemberData(nameof(Names))]
    public void A_detail_shows_more_than_the_plan_beside_it(string name)
    {
        var plan = PlanSheets.Make(Rods.Sample(name))[0];
        Assert.DoesNotContain(Texts(plan), t => t.Text.EndsWith(", " + plan.Scale.Told(plan.Units), StringComparison.Ordinal));
    }

    [Theory, MemberData(nameof(Names))]
    public void Nothing_in_a_title_block_is_cut_short(string name)
    {
        foreach (var sheet in StairSheets.Make(Rods.Sample(name)))
            Assert.DoesNotContain(FlatMarks.Of(sheet.AllMarks).Select(m => m.Mark).OfType<TextMark>(), t => t.Text.EndsWith('…'));
    }

    [Fact]
    public void A_narrow_end_of_two_corners_is_not_drawn_again()
    {
        var sheet = PieceSheets.Make(Rods.Sample("wide-two-lines")).Single(s => s.Name == "tread-4");
        Assert.DoesNotContain(Texts(sheet), t => t.Text.StartsWith("narrow end", StringComparison.Ordinal));
        Assert.Contains(Texts(sheet), t => t.Text == "A");
    }

    [Fact]
    public void No_length_in_feet_and_inches_is_broken_over_two_lines_of_a_table()
    {
        foreach (var sheet in StairSheets.Make(Rods.Sample("feet-and-inches")).Where(s => s.Name.StartsWith("ordinates", StringComparison.Ordinal) || s.Name.StartsWith("parts", StringComparison.Ordinal)))
            Assert.DoesNotContain(Texts(sheet), t => System.Text.RegularExpressions.Regex.IsMatch(t.Text, @"^\d+' \d+$"));
    }
}
