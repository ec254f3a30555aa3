using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>A sheet of paper.</summary>
/// <param name="Name">What it is called, as A3 or 594x420.</param>
/// <param name="Width">Along x, mm.</param>
/// <param name="Height">Along y, mm.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216, 210 x 297, standing.</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>ISO 216, 297 x 420, standing.</summary>
    public static PaperSize A3 { get; } = new("A3", 297, 420);

    /// <summary>ISO 216, 420 x 594, standing.</summary>
    public static PaperSize A2 { get; } = new("A2", 420, 594);

    /// <summary>ISO 216, 594 x 841, standing.</summary>
    public static PaperSize A1 { get; } = new("A1", 594, 841);

    /// <summary>ISO 216, 841 x 1189, standing.</summary>
    public static PaperSize A0 { get; } = new("A0", 841, 1189);

    /// <summary>A4 to A0, standing, smallest first.</summary>
    public static IReadOnlyList<PaperSize> Series { get; } = [A4, A3, A2, A1, A0];

    /// <summary>North American sheets, standing, smallest first: letter and tabloid, architectural sizes, and ANSI/ASME Y14.1 (its A is letter, its B tabloid).</summary>
    public static IReadOnlyList<PaperSize> NorthAmerican { get; } =
    [
        Inches("Letter", 8.5, 11), Inches("Legal", 8.5, 14), Inches("Tabloid", 11, 17),
        Inches("Arch A", 9, 12), Inches("Arch B", 12, 18), Inches("Arch C", 18, 24), Inches("Arch D", 24, 36), Inches("Arch E1", 30, 42), Inches("Arch E", 36, 48),
        Inches("ANSI A", 8.5, 11), Inches("ANSI B", 11, 17), Inches("ANSI C", 17, 22), Inches("ANSI D", 22, 34), Inches("ANSI E", 34, 44),
    ];

    /// <summary>Letter, 8 1/2 x 11 inches, standing.</summary>
    public static PaperSize Letter => NorthAmerican[0];

    /// <summary>Whether it is held in the hand, and so stands unless told to lie: A4 and letter.</summary>
    public bool Stands => Math.Min(Width, Height) < 220;

    private static PaperSize Inches(string name, double width, double height) => new(name, width * 127 / 5, height * 127 / 5);

    /// <summary>The long side along x.</summary>
    public PaperSize Landscape => Width >= Height ? this : this with { Width = Height, Height = Width };

    /// <summary>The long side along y.</summary>
    public PaperSize Portrait => Height >= Width ? this : this with { Width = Height, Height = Width };
}
