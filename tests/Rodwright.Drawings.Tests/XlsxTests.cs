using System.IO.Compression;
using System.Xml.Linq;
using Rodwright.Drawings.Formats.Tables;
using Xunit;

namespace Rodwright.Drawings.Tests;

public class XlsxTests
{
    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    private static readonly XlsxTable List = new("Cutting list", ["Mark", "Piece", "Length"], [["T1", "tread <1> & \"nosing\"", "860.5"], ["", "5' 2 1/2\"", "-3"], ["007x", "1-2", "1.2.3"]]);

    [Fact]
    public void Cells_are_read_back_as_text_and_numbers()
    {
        var rows = Read(XlsxWriter.WriteFile("timber", [List]).Bytes.ToArray(), 1);
        Assert.Equal(["A1=Mark", "B1=Piece", "C1=Length", "A2=T1", "B2=tread <1> & \"nosing\"", "C2:860.5", "B3=5' 2 1/2\"", "C3:-3", "A4=007x", "B4=1-2", "C4=1.2.3"], rows);
    }

    [Fact]
    public void Every_part_is_named_by_the_contents_and_every_sheet_by_the_book()
    {
        using var zip = new ZipArchive(new MemoryStream(XlsxWriter.WriteFile("timber", [List, List with { Name = "Board plan" }]).Bytes.ToArray()));
        XDocument Part(string name) => XDocument.Load(zip.GetEntry(name)!.Open());
        var overrides = Part("[Content_Types].xml").Descendants().Select(e => e.Attribute("PartName")?.Value).OfType<string>().ToList();
        Assert.Equal(zip.Entries.Select(e => "/" + e.FullName).Where(n => n.StartsWith("/xl", StringComparison.Ordinal) && !n.EndsWith(".rels", StringComparison.Ordinal)).Order(), overrides.Order());
        Assert.Equal(["Cutting list", "Board plan"], Part("xl/workbook.xml").Descendants(Main + "sheet").Select(s => s.Attribute("name")!.Value));
        XNamespace r = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        var targets = Part("xl/_rels/workbook.xml.rels").Root!.Elements().ToDictionary(e => e.Attribute("Id")!.Value, e => e.Attribute("Target")!.Value);
        Assert.All(Part("xl/workbook.xml").Descendants(Main + "sheet"), s => Assert.NotNull(zip.GetEntry("xl/" + targets[s.Attribute(r + "id")!.Value])));
    }

    [Fact]
    public void The_same_tables_give_the_same_bytes() =>
        Assert.Equal(XlsxWriter.WriteFile("timber", [List]).Bytes.ToArray(), XlsxWriter.WriteFile("timber", [List]).Bytes.ToArray());

    [Fact]
    public void Columns_past_z_have_two_letters()
    {
        var wide = new XlsxTable("wide", [.. Enumerable.Range(0, 60).Select(i => "h" + i)], []);
        Assert.Contains("AA1=h26", Read(XlsxWriter.WriteFile("wide", [wide]).Bytes.ToArray(), 1));
        Assert.Contains("BH1=h59", Read(XlsxWriter.WriteFile("wide", [wide]).Bytes.ToArray(), 1));
    }

    [Fact]
    public void What_is_no_workbook_is_refused()
    {
        Assert.Throws<ArgumentException>(() => XlsxWriter.WriteFile("none", []));
        Assert.Throws<ArgumentException>(() => XlsxWriter.WriteFile("slash", [List with { Name = "a/b" }]));
        Assert.Throws<ArgumentException>(() => XlsxWriter.WriteFile("twice", [List, List]));
        Assert.Throws<ArgumentException>(() => XlsxWriter.WriteFile("short", [List with { Rows = [["one"]] }]));
    }

    private static List<string> Read(byte[] bytes, int sheet)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes));
        var root = XDocument.Load(zip.GetEntry($"xl/worksheets/sheet{sheet}.xml")!.Open());
        return [.. root.Descendants(Main + "c").Select(c => c.Attribute("t")?.Value == "inlineStr" ? $"{c.Attribute("r")!.Value}={c.Descendants(Main + "t").Single().Value}" : $"{c.Attribute("r")!.Value}:{c.Element(Main + "v")!.Value}")];
    }
}
