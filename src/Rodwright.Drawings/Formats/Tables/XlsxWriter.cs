using System.Globalization;
using System.IO.Compression;
using System.Security;
using System.Text;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Tables;

/// <summary>
/// Workbooks after ECMA-376 (Office Open XML), the least of it: one worksheet for each table, heading bold and standing still, columns as wide as what is in them. The same tables give the
/// same bytes: no dates, no names, fixed times in the archive.
/// </summary>
public static class XlsxWriter
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private const string Package = "http://schemas.openxmlformats.org/package/2006";
    private const string Types = "application/vnd.openxmlformats-officedocument.spreadsheetml";

    /// <summary>How many letters wide a column is at most.</summary>
    private const int Widest = 80;

    /// <summary>A workbook as a file.</summary>
    /// <param name="name">Name of the file, without an ending.</param>
    /// <param name="tables">Its tables, at least one.</param>
    /// <exception cref="ArgumentException">There is no table, a sheet's name cannot be one, or a row has not one cell for each heading.</exception>
    public static WrittenFile WriteFile(string name, IReadOnlyList<XlsxTable> tables)
    {
        if (tables.Count == 0) throw new ArgumentException("a workbook has at least one table", nameof(tables));
        if (tables.Any(t => t.Name.Length is 0 or > 31 || t.Name.AsSpan().IndexOfAny("[]:*?/\\") >= 0) || tables.Select(t => t.Name).Distinct(StringComparer.OrdinalIgnoreCase).Count() < tables.Count) throw new ArgumentException("a sheet has a short name of its own", nameof(tables));
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Put(zip, "[Content_Types].xml", $"<Types xmlns=\"{Package}/content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                + $"<Override PartName=\"/xl/workbook.xml\" ContentType=\"{Types}.sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType=\"{Types}.styles+xml\"/>"
                + string.Concat(tables.Select((_, i) => $"<Override PartName=\"/xl/worksheets/sheet{N(i + 1)}.xml\" ContentType=\"{Types}.worksheet+xml\"/>")) + "</Types>");
            Put(zip, "_rels/.rels", $"<Relationships xmlns=\"{Package}/relationships\"><Relationship Id=\"rId1\" Type=\"{Relations}/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            Put(zip, "xl/workbook.xml", $"<workbook xmlns=\"{Main}\" xmlns:r=\"{Relations}\"><sheets>" + string.Concat(tables.Select((t, i) => $"<sheet name=\"{Escape(t.Name)}\" sheetId=\"{N(i + 1)}\" r:id=\"rId{N(i + 1)}\"/>")) + "</sheets></workbook>");
            Put(zip, "xl/_rels/workbook.xml.rels", $"<Relationships xmlns=\"{Package}/relationships\">"
                + string.Concat(tables.Select((_, i) => $"<Relationship Id=\"rId{N(i + 1)}\" Type=\"{Relations}/worksheet\" Target=\"worksheets/sheet{N(i + 1)}.xml\"/>"))
                + $"<Relationship Id=\"rId{N(tables.Count + 1)}\" Type=\"{Relations}/styles\" Target=\"styles.xml\"/></Relationships>");
            Put(zip, "xl/styles.xml", $"<styleSheet xmlns=\"{Main}\"><fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/></font><font><b/><sz val=\"11\"/><name val=\"Calibri\"/></font></fonts>"
                + "<fills count=\"2\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill patternType=\"gray125\"/></fill></fills><borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
                + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
                + "<cellXfs count=\"2\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/><xf numFmtId=\"0\" fontId=\"1\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyFont=\"1\"/></cellXfs></styleSheet>");
            for (var i = 0; i < tables.Count; i++) Put(zip, $"xl/worksheets/sheet{N(i + 1)}.xml", Sheet(tables[i]));
        }
        return new(name + ".xlsx", Types + ".sheet", stream.ToArray());
    }

    private static string Sheet(XlsxTable table)
    {
        var text = new StringBuilder($"<worksheet xmlns=\"{Main}\"><sheetViews><sheetView workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" activePane=\"bottomLeft\" state=\"frozen\"/></sheetView></sheetViews><cols>");
        for (var c = 0; c < table.Heading.Count; c++)
        {
            var letters = Math.Min(Widest, table.Rows.Select(r => c < r.Count ? r[c].Length : 0).Append(table.Heading[c].Length).Max() + 2);
            text.Append($"<col min=\"{N(c + 1)}\" max=\"{N(c + 1)}\" width=\"{N(letters)}\" customWidth=\"1\"/>");
        }
        text.Append("</cols><sheetData>");
        Row(text, 1, table.Heading, bold: true);
        for (var r = 0; r < table.Rows.Count; r++)
        {
            if (table.Rows[r].Count != table.Heading.Count) throw new ArgumentException($"a row has {N(table.Rows[r].Count)} cells for {N(table.Heading.Count)} headings");
            Row(text, r + 2, table.Rows[r], bold: false);
        }
        return text.Append("</sheetData></worksheet>").ToString();
    }

    private static void Row(StringBuilder text, int number, IReadOnlyList<string> cells, bool bold)
    {
        text.Append($"<row r=\"{N(number)}\">");
        for (var c = 0; c < cells.Count; c++)
        {
            if (cells[c].Length == 0) continue;
            var at = $"{Column(c)}{N(number)}";
            if (!bold && IsNumber(cells[c])) text.Append($"<c r=\"{at}\"><v>{cells[c]}</v></c>");
            else text.Append($"<c r=\"{at}\" t=\"inlineStr\"{(bold ? " s=\"1\"" : "")}><is><t xml:space=\"preserve\">{Escape(cells[c])}</t></is></c>");
        }
        text.Append("</row>");
    }

    /// <summary>Digits with at most one point, perhaps a sign before them: what a number printed by <see cref="Number"/> looks like.</summary>
    private static bool IsNumber(string cell) => cell.All(c => c is >= '0' and <= '9' or '.' or '-') && double.TryParse(cell, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out _);

    private static string Column(int c) => c < 26 ? ((char)('A' + c)).ToString() : Column(c / 26 - 1) + (char)('A' + c % 26);

    private static string N(int n) => Number.Print(n, 0);

    // What XML has no sign for is left out.
    private static string Escape(string text) => SecurityElement.Escape(string.Concat(text.Where(c => c is '\t' or '\n' or >= ' ' and not '\uFFFE' and not '\uFFFF')))!;

    private static void Put(ZipArchive zip, string path, string xml)
    {
        var entry = zip.CreateEntry(path, CompressionLevel.Optimal);
        entry.LastWriteTime = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);
        using var to = entry.Open();
        to.Write(Encoding.UTF8.GetBytes("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n" + xml));
    }
}
