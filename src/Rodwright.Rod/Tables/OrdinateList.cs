using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Tables;

/// <summary>Every point needed to set every part out by hand.</summary>
public static class OrdinateList
{
    /// <summary>Headings of the file.</summary>
    public static IReadOnlyList<string> Heading { get; } =
        ["Mark", "Part", "Face", "Feature", "Point", "Along", "Across", "Station", "Height", "Depth"];

    /// <summary>The ordinates of a part.</summary>
    public static IReadOnlyList<Ordinate> Of(Part part, Kit kit) => part.Kind switch
    {
        PartKind.WallString or PartKind.NewelString => [.. StringOrdinates.Of(kit.Strings.First(s => s.Part.Id == part.Id))],
        PartKind.Newel => [.. PieceOrdinates.OfNewel(part)],
        _ => [.. PieceOrdinates.OfFlat(part)],
    };

    /// <summary>Those of all parts as a file, lengths with at most two decimals.</summary>
    public static WrittenFile File(Kit kit) =>
        CsvWriter.WriteFile("ordinates", Heading, kit.Parts.SelectMany(p => Of(p, kit)).Select(o => (IReadOnlyList<string>)Cells(o)));

    private static string[] Cells(Ordinate o) =>
        [o.Mark, o.Part, o.Face, o.Feature, o.Point, Number.Print(o.Along, 2), Number.Print(o.Across, 2), Print(o.Station), Print(o.Height), Print(o.Depth)];

    private static string Print(double? value) => value is { } v ? Number.Print(v, 2) : "";
}
