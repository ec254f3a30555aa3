using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Timber;

/// <summary>The timber of a stair as sheets: cutting list, boards one by one, costing, quotation.</summary>
public static class TimberSheets
{
    /// <summary>The set.</summary>
    /// <param name="rod">The stair and how to print it.</param>
    /// <param name="plan">Its board plan.</param>
    public static SheetSet Make(RodJob rod, BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(plan);
        return new("timber", rod.Stair.Job.Title + ", timber",
        [
            .. Tables(rod, new("cutting-list", "Cutting list", "cutting list", Note: rod.Units.IsInches ? $"From {plan.List.Shop.Name}" : $"Finished and sawn sizes in {rod.Units.Name}. From {plan.List.Shop.Name}"), TimberTables.List(plan.List), TimberTables.Counts(plan.List)),
            .. BoardSheets.Make(rod, plan),
            .. Tables(rod, new("costing", "Costing", "costing", Note: $"By {plan.List.Shop.Name}"), TimberTables.Costs(plan)),
        ]);
    }

    /// <summary>A quotation of one page: the stair in a picture, what is in it, and the price.</summary>
    /// <param name="rod">The stair and how to print it.</param>
    /// <param name="plan">Its board plan.</param>
    public static SheetSet Quotation(RodJob rod, BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(rod);
        ArgumentNullException.ThrowIfNull(plan);
        return new("quotation", rod.Stair.Job.Title + ", quotation", [QuotationSheet.Make(rod with { Style = rod.Style with { Paper = Board.PaperFit.UsualIn(rod.Units)[0] } }, plan)]);
    }

    private static IReadOnlyList<Sheet> Tables(RodJob rod, SheetWords words, params TimberTable[] tables)
    {
        var room = SheetStart.Written(rod, words, Drawings.Paper.Scale.Full).Empty.Room.Width;
        return TableFlow.Sheets(rod, words, l => tables.Select(t => new TableSection(t.Title, Fitted(t, l.Words, room))));
    }

    /// <summary>Columns as wide as their widest cell; where that is too much for the paper the widest give way, and wrap.</summary>
    private static Table Fitted(TimberTable table, double height, double room)
    {
        const double pads = 3.6;
        var widths = table.Heading.Select((h, i) => pads + Math.Max(Lettering.Width(h, height, bold: true), table.Rows.Select(r => Lettering.Width(r[i], height)).DefaultIfEmpty(0).Max())).ToArray();
        var most = widths.Max();
        while (widths.Sum(w => Math.Min(w, most)) > room && most > 12) most -= 0.5;
        return new(table.Heading.Select((h, i) => new TableColumn(h, Math.Min(widths[i], most), table.Numbers.Contains(i) ? HorizontalAnchor.End : HorizontalAnchor.Start)), table.Rows, height);
    }
}
