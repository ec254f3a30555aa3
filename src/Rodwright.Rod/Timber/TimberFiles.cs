using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Joinery.Timber;

namespace Rodwright.Rod.Timber;

/// <summary>The timber of a stair as files.</summary>
public static class TimberFiles
{
    /// <summary>Sheets and quotation as PDF, every table as CSV, and all tables in one workbook.</summary>
    /// <param name="rod">The stair and how to print it.</param>
    /// <param name="plan">Its board plan.</param>
    public static IReadOnlyList<WrittenFile> Make(RodJob rod, BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(plan);
        TimberTable[] tables = [TimberTables.List(plan.List), TimberTables.Boards(plan), TimberTables.Counts(plan.List), TimberTables.Costs(plan)];
        var pdf = new PdfFormat();
        return
        [
            .. pdf.Write(TimberSheets.Make(rod, plan)), .. pdf.Write(TimberSheets.Quotation(rod, plan)),
            XlsxWriter.WriteFile("timber", [.. tables.Select(t => new XlsxTable(t.Title, t.Heading, Plain(t, plan.List.Shop.Currency)))]),
            .. tables.Select(t => CsvWriter.WriteFile(t.Name, t.Heading, t.Rows)),
        ];
    }

    /// <summary>Amounts without the sign of the currency, so that a workbook can add them up.</summary>
    private static IReadOnlyList<IReadOnlyList<string>> Plain(TimberTable table, string currency) =>
        [.. table.Rows.Select(r => (IReadOnlyList<string>)[.. r.Select((c, i) => table.Numbers.Contains(i) && c.StartsWith(currency, StringComparison.Ordinal) ? c[currency.Length..] : c)])];
}
