using System.Globalization;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Xunit;

namespace Rodwright.Drawings.Tests.Formats;

/// <summary>What holds for every format. PDF bytes differ from run to run, so those are compared by content elsewhere.</summary>
public sealed class FormatContractTests
{
    public static TheoryData<string> Ids => [.. FormatCatalogue.All.Select(f => f.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_kind_of_mark_is_written_whatever_the_culture(string id)
    {
        var format = FormatCatalogue.Find(id)!;
        var plain = Under("", () => format.Write(Sampler.Set()));
        Assert.Equal(id == "pdf" ? 1 : 3, plain.Count);
        Assert.All(plain, f => Assert.EndsWith("." + id, f.Name));
        foreach (var culture in new[] { "", "de-DE", "tr-TR", "ar-SA" })
        {
            var again = Under(culture, () => format.Write(Sampler.Set()));
            Assert.Equal(plain.Select(f => f.Name), again.Select(f => f.Name));
            if (id == "pdf") continue;
            Assert.All(plain.Zip(again), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), $"{pair.First.Name} differs under {culture}"));
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_empty_sheet_an_empty_set_and_odd_letters_are_written(string id)
    {
        var format = FormatCatalogue.Find(id)!;
        Mark[] odd =
        [
            new TextMark(new(50, 50), "é ⌀ 木 \U0001FA9A <&>\"'\u0001\uD800", 3.5, Layer.Lettering, of: "a\"<b"),
            new TextMark(new(50, 60), "", 3.5, Layer.Lettering, knockout: true),
            new ClipMark(new(0, 0, 10, 10), []),
            new ClipMark(new(10, 10, 0, 0), [StrokeMark.Line(new(0, 0), new(5, 5), Pens.Visible, Layer.Visible)]),
            new GroupMark("g", "empty", []),
        ];
        Sheet sheet = new() { Name = "s", Title = "s", Paper = PaperSize.A4, Marks = [] };
        Assert.NotEmpty(format.Write(new("odd", "odd", [sheet, sheet with { Name = "odd", Marks = [.. odd] }])));
        Assert.Equal(id == "pdf" ? 1 : 0, format.Write(new("none", "none", [])).Count);
    }

    [Fact]
    public void Comma_separated_values_are_quoted_only_where_they_must()
    {
        var text = CsvWriter.Write(["Mark", "Length"], [["T1", "900"], ["T2, wide", "½\" \n"], ["", "x"]]);
        Assert.Equal("Mark,Length\r\nT1,900\r\n\"T2, wide\",\"½\"\" \n\"\r\n,x\r\n", text);
        Assert.Equal([0xEF, 0xBB, 0xBF, (byte)'a'], CsvWriter.WriteFile("t", ["a"], []).Bytes[..4].ToArray());
        Assert.Throws<ArgumentException>(() => CsvWriter.Write(["a"], [["1", "2"]]));
    }

    private static T Under<T>(string culture, Func<T> make)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);
            return make();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
