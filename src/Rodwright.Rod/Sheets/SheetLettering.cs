using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;

namespace Rodwright.Rod.Sheets;

/// <summary>
/// Heights of lettering on one sheet, mm, from the ISO 3098 series: small paper is held in the hand, large paper hangs over a bench and takes the next size up.
/// </summary>
/// <param name="Words">Notes and tables.</param>
/// <param name="Figures">Dimensions.</param>
/// <param name="Mark">Marks of pieces.</param>
/// <param name="Title">Titles of views.</param>
public sealed record SheetLettering(double Words, double Figures, double Mark, double Title)
{
    /// <summary>How much longer 3' 11 15/16" is than a number of millimetres.</summary>
    private const int FractionFigures = 4;

    private static readonly SheetLettering Hand = new(2.5, 2.5, 5, 3.5);
    private static readonly SheetLettering Desk = new(2.5, 3.5, 7, 5);
    private static readonly SheetLettering Bench = new(3.5, 5, 10, 7);

    /// <summary>The lettering for a paper: by its shorter side.</summary>
    public static SheetLettering For(PaperSize paper, Units units) => Math.Min(paper.Width, paper.Height) switch
    {
        < 275 => Hand with { Units = units },
        < 590 => Desk with { Units = units },
        _ => Bench with { Units = units },
    };

    /// <summary>The unit of the figures.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>The look of dimensions in this lettering.</summary>
    public DimensionStyle Dimensions => DimensionStyle.Usual with { TextHeight = Figures, Units = Units };

    /// <summary>Paper needed beside a drawing for running ordinates, from their line to the end of the longest figure with its note, mm.</summary>
    public double OrdinateStrip(IEnumerable<(double Value, string Note)> stops) =>
        8.5 + stops.Max(s => WidthOf(s.Value, s.Note));

    /// <summary>Width of a figure with its note, mm.</summary>
    public double WidthOf(double value, string note) => Lettering.Width($"{Widest(value)}  {note}", Figures);

    /// <summary>The figure with the longest fraction it may have: sixteenths come and go while a number is dragged, and the strip stays.</summary>
    private string Widest(double value) => !Units.IsInches ? Units.Print(value) : (Math.Abs(value) / Geometry.Units.Inch) switch
    {
        < 9 => "-9 15/16\"",
        < 40 => "-39 15/16\"",
        var inches => $"{Units.Print(Math.Ceiling(Math.Max(4, inches / 12)) * 12 * Geometry.Units.Inch)} 15/16\"",
    };

    /// <summary>Paper needed beside a drawing for running ordinates of at most so many figures each, mm.</summary>
    public double OrdinateStrip(int figures) => 8.5 + Lettering.Width(new string('0', Units.IsInches ? figures + FractionFigures : figures), Figures);

    /// <summary>Paper needed beside a drawing for one row of chain dimensions, mm: a figure that finds no room climbs a tier.</summary>
    public double ChainStrip => 7 + 2.6 * Figures;
}
