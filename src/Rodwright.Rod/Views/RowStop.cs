namespace Rodwright.Rod.Views;

/// <summary>A stop of a row of ordinates before it has a place on paper.</summary>
/// <param name="Value">From the row's datum, mm.</param>
/// <param name="Note">The words after the figure.</param>
/// <param name="Of">Id of what is measured.</param>
internal readonly record struct RowStop(double Value, string Note, string? Of)
{
    /// <summary>Paper needed for a row of these beside a drawing, mm.</summary>
    public static double Strip(Sheets.SheetLettering lettering, IEnumerable<RowStop> stops) => lettering.OrdinateStrip(stops.Select(s => (s.Value, s.Note)));
}
