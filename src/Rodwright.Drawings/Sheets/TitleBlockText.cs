namespace Rodwright.Drawings.Sheets;

/// <summary>The words of a title block, after ISO 7200. Empty entries leave their field blank. The scale and the sheet's number come from the sheet.</summary>
public sealed record TitleBlockText
{
    /// <summary>The job: customer, place.</summary>
    public string Job { get; init; } = "";

    /// <summary>What is drawn, as "Wall string, lower flight".</summary>
    public string Piece { get; init; } = "";

    /// <summary>The piece's bench mark, as "S1".</summary>
    public string Mark { get; init; } = "";

    /// <summary>The date, already worded: this library has no clock.</summary>
    public string Date { get; init; } = "";

    /// <summary>The revision, as "A".</summary>
    public string Revision { get; init; } = "";

    /// <summary>Hand of the stair or piece, as "left hand".</summary>
    public string Hand { get; init; } = "";

    /// <summary>A note for this sheet, one line.</summary>
    public string Note { get; init; } = "";

    /// <summary>The standing warning.</summary>
    public string Warning { get; init; } = "Check on site before cutting.";
}
