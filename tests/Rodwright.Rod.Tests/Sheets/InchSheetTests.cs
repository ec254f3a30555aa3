using System.Text.RegularExpressions;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Stages;
using Rodwright.Rod.Tables;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Sheets;

/// <summary>Sheets of a job in inches on North American paper.</summary>
public sealed partial class InchSheetTests
{
    private const string Sample = "feet-and-inches";

    /// <summary>Numbers of three digits and more, or with a decimal point, are lengths of millimetres that slipped through; these are none.</summary>
    [GeneratedRegex("[0-9]+\\.[0-9]+\"|[0-9.]+°|[A-Z]+[0-9][0-9.,A-Z]*|[0-9]+ of [0-9]+|1:[0-9]+|20[0-9][0-9] edition|100 %|R311[0-9.]*|2021")]
    private static partial Regex NoLength { get; }

    /// <summary>Books and their pages.</summary>
    [GeneratedRegex("\\([A-Z][^)]*\\)")]
    private static partial Regex Books { get; }

    [GeneratedRegex("[0-9]{3}|[0-9]\\.[0-9]| mm")]
    private static partial Regex Millimetres { get; }

    [Theory]
    [InlineData("Letter")]
    [InlineData("Tabloid")]
    [InlineData("Arch C")]
    [InlineData("Arch D")]
    [InlineData("ANSI D")]
    public void No_sheet_speaks_of_millimetres_and_none_has_faults(string paper)
    {
        var pack = Pack.Draw(RodJobs.Of(Sample, paper), booklet: paper is "Tabloid");
        foreach (var sheet in pack.Set.Sheets.Concat(pack.TrueSize.Sheets).Concat(pack.Booklet?.Sheets ?? []))
        {
            // Tiles cut through words; their whole sheets are judged elsewhere.
            if (!sheet.Name.Contains("tile", StringComparison.Ordinal)) Assert.Empty(SheetCheck.Overlaps(sheet));
            // Pages of books stand in the booklet; its words are judged line by line below.
            if (sheet.Name.StartsWith("booklet", StringComparison.Ordinal)) continue;
            foreach (var text in Texts(sheet.AllMarks)) Assert.False(Millimetres.IsMatch(NoLength.Replace(text, "")), $"{sheet.Name}: {text}");
        }
    }

    [Theory, MemberData(nameof(AllSamples))]
    public void No_sheet_of_any_sample_told_in_inches_says_mm(string name)
    {
        var job = Samples.Job(name) with { Units = Units.Inches };
        var rod = RodJobs.Of(Sample, "Tabloid") with { Stair = Joinery.Stair.SetOut(job).Value! };
        rod = rod with { Proof = rod.Stair.Prove() };
        var pack = Pack.Draw(rod, booklet: true);
        foreach (var sheet in pack.Set.Sheets.Concat(pack.TrueSize.Sheets).Concat(pack.Booklet!.Sheets))
            foreach (var text in Texts(sheet.AllMarks)) Assert.False(Unit().IsMatch(text), $"{sheet.Name}: {text}");
    }

    [Fact]
    public void A_rounded_bottom_step_is_told_in_fractions_of_an_inch()
    {
        var job = JobFile.Read(Samples.Text(Sample).Replace("\"going\":", "\"bottomStep\": { \"shape\": \"bull-nose\" }, \"going\":", StringComparison.Ordinal)).Value!;
        var stair = Joinery.Stair.SetOut(job).Value!;
        Assert.True(stair.Prove().Holds);
        var pack = Pack.Draw(RodJobs.Of(Sample, "Tabloid") with { Stair = stair, Proof = stair.Prove() });
        var texts = pack.Set.Sheets.SelectMany(s => Texts(s.AllMarks)).ToList();
        foreach (var text in texts) Assert.False(Millimetres.IsMatch(NoLength.Replace(text, "")), text);
        Assert.Contains(texts, t => t.Contains("slot of 1/2\"", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("1/16\"", StringComparison.Ordinal) && t.Contains("Thin the riser", StringComparison.Ordinal));
    }

    public static TheoryData<string> AllSamples => [.. Samples.Names];

    // Regulations are quoted as they are written.
    [GeneratedRegex(@"\bmm\b(?!.*judged to 1 mm)")]
    private static partial Regex Unit();

    [Fact]
    public void No_line_of_the_rod_is_found_or_explained_in_millimetres()
    {
        var lines = RodStages.Of(RodJobs.Stair(Sample)).Lines.ToList();
        Assert.True(lines.Count > 150, $"{lines.Count}");
        foreach (var line in lines)
        {
            var words = Books.Replace($"{line.Instruction.What(Units.Inches)} {line.Instruction.Why} {line.Telling?.What} {line.Telling?.Why}", "");
            Assert.False(Millimetres.IsMatch(NoLength.Replace(words, "")), words);
        }
    }

    [Fact]
    public void Every_figure_is_rounded_from_its_own_true_value()
    {
        var rod = RodJobs.Of(Sample, "Arch D");
        var plan = rod.Stair.Plan;
        // Levels of the story rod: k rises of 7.658, not k times 7 11/16.
        var texts = Pack.Draw(rod).Set.Sheets.SelectMany(s => Texts(s.AllMarks)).ToHashSet();
        for (var k = 1; k < plan.Risers; k++) Assert.Contains($"tread {k}  {Units.Inches.Print(k * plan.Rise)}", texts);
        Assert.NotEqual(Units.Inches.Print(13 * plan.Rise), Units.Inches.Print(13 * 7.6875 * 25.4));
        Assert.Contains(texts, t => t.Contains("Each figure to its own nearest 1/16\"", StringComparison.Ordinal));
    }

    [Fact]
    public void The_check_bar_is_four_inches_long_and_prints_true()
    {
        var sheet = Pack.Draw(RodJobs.Of(Sample, "Tabloid")).TrueSize.Sheets[0];
        var bar = CheckBar.Along(new(50, 20), sheet.Units).OfType<StrokeMark>().MaxBy(m => m.Bounds.Width)!;
        Assert.Equal(101.6, bar.Bounds.Width, 0.2);
        Assert.Contains("4\"", Texts(sheet.AllMarks));
        Assert.Equal((431.8, 279.4), (Math.Max(sheet.Paper.Width, sheet.Paper.Height), Math.Min(sheet.Paper.Width, sheet.Paper.Height)));
    }

    [Fact]
    public void Scales_are_those_of_a_scale_rule()
    {
        Assert.True(Scale.TryParse("1 1/2 in", out var wanted, out _));
        var rod = RodJobs.Of(Sample, "Arch E");
        var sheets = Pack.Draw(rod with { Style = rod.Style with { Scale = wanted } }).Set.Sheets;
        Assert.Contains(sheets, s => s.ScaleWords == "1 1/2\" = 1' 0\"");
        Assert.All(sheets.Where(s => s.HasScale), s => Assert.DoesNotContain(":", s.ScaleWords, StringComparison.Ordinal));
    }

    [Fact]
    public void The_parts_list_is_in_feet_and_inches_and_the_ordinates_file_in_decimals()
    {
        var stair = RodJobs.Stair(Sample);
        Assert.All(PartsList.Rows(stair), r => Assert.EndsWith("\"", r[4], StringComparison.Ordinal));
        Assert.Contains(PartsList.Rows(stair), r => r[5] == "11 1/4\"" && r[6] == "1 1/4\"");
        Assert.Contains("\"7.6585\"\"\"", System.Text.Encoding.UTF8.GetString(OrdinateList.File(stair.Kit).Bytes.Span), StringComparison.Ordinal);
    }

    private static IEnumerable<string> Texts(IEnumerable<Mark> marks) => marks.SelectMany(m => m switch
    {
        TextMark text => [text.Text],
        ClipMark clip => Texts(clip.Marks),
        GroupMark group => Texts(group.Marks),
        _ => (IEnumerable<string>)[],
    });
}
