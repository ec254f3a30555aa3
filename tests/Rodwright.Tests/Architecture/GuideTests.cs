using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Stairs.Shops;
using Xunit;

namespace Rodwright.Tests.Architecture;

/// <summary>The guide to the job file says what the reader does: its table is made from the same descriptions.</summary>
public class GuideTests
{
    private static string Guide => File.ReadAllText(Path.Combine(House.Root, "docs", "guide", "job-file.md"));

    private static string ShopGuide => File.ReadAllText(Path.Combine(House.Root, "docs", "guide", "shop-file.md"));

    private static string OwnGuide => File.ReadAllText(Path.Combine(House.Root, "docs", "guide", "regulation-file.md"));

    [Fact]
    public void The_guide_lists_every_field_as_it_is()
    {
        var table = string.Join("\n", JobFields.Descriptions.Select(Row));
        Assert.True(Guide.Contains(table, StringComparison.Ordinal), "docs/guide/job-file.md should hold this table:\n\n" + table);
    }

    [Fact]
    public void The_guide_to_the_regulation_file_lists_every_field_as_it_is()
    {
        var table = string.Join("\n", OwnFields.Descriptions.Select(Row));
        Assert.True(OwnGuide.Contains(table, StringComparison.Ordinal), "docs/guide/regulation-file.md should hold this table:\n\n" + table);
    }

    [Fact]
    public void The_guide_to_the_shop_file_lists_every_field_as_it_is()
    {
        var table = string.Join("\n", ShopFields.Descriptions.Select(Row));
        Assert.True(ShopGuide.Contains(table, StringComparison.Ordinal), "docs/guide/shop-file.md should hold this table:\n\n" + table);
    }

    [Fact]
    public void The_example_in_the_guide_to_the_shop_file_reads_as_a_shop()
    {
        var start = ShopGuide.IndexOf("```json\n", StringComparison.Ordinal) + 8;
        Assert.Empty(ShopFile.Read(ShopGuide[start..ShopGuide.IndexOf("```", start, StringComparison.Ordinal)]).Findings);
    }

    [Fact]
    public void The_example_in_the_guide_to_the_regulation_file_reads_as_a_table()
    {
        var start = OwnGuide.IndexOf("```json\n", StringComparison.Ordinal) + 8;
        Assert.Empty(OwnRegulationFile.Read(OwnGuide[start..OwnGuide.IndexOf("```", start, StringComparison.Ordinal)]).Findings);
    }

    [Fact]
    public void The_guide_names_every_regulation() =>
        Assert.All(RegulationCatalogue.All, r => Assert.Contains($"`{r.Id}`", Guide, StringComparison.Ordinal));

    [Fact]
    public void The_examples_in_guide_and_readme_read_as_jobs()
    {
        foreach (var text in new[] { Guide, File.ReadAllText(Path.Combine(House.Root, "README.md")) })
        {
            var start = text.IndexOf("```json\n", StringComparison.Ordinal) + 8;
            Assert.True(start > 8);
            Assert.NotNull(JobFile.Read(text[start..text.IndexOf("```", start, StringComparison.Ordinal)]).Value);
        }
    }

    private static string Row(FieldDescription f) => $"| `{f.Path}` | {f.Label} | {Allowed(f)} | {Default(f)} | {f.Source} |";

    private static string Allowed(FieldDescription f)
    {
        if (!f.Choices.IsEmpty) return string.Join(", ", f.Choices.Select(c => $"`{c}`"));
        if (f.Least is not { } least || f.Most is not { } most) return "";
        return $"{Number.Print(least, 3)} to {Number.Print(most, 3)}{(f.Unit.Length > 0 ? " " + f.Unit : "")}";
    }

    private static string Default(FieldDescription f) => f.Required ? "must be given" : f.Default is { } value ? $"`{value}`" : "";
}
