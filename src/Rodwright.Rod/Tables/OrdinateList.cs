using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;

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
        PartKind.WallString or PartKind.NewelString => [.. StringOrdinates.Of(kit.Strings.First(s => s.Part.Id == part.Id), kit.Plan.Units)],
        PartKind.Newel => [.. PieceOrdinates.OfNewel(part, kit.Plan.Units)],
        PartKind.BentRiser => [.. PieceOrdinates.OfFlatRiser(part, FlatRiser.Of(kit.Plan, part))],
        _ => [.. PieceOrdinates.OfFlat(part, kit.Plan.Units)],
    };

    /// <summary>Those of all parts as a file, lengths with at most two decimals.</summary>
    public static WrittenFile File(Kit kit) =>
        CsvWriter.WriteFile("ordinates", Heading, kit.Parts.SelectMany(p => Of(p, kit)).Select(o => (IReadOnlyList<string>)Cells(o, kit.Plan.Units)));

    // A file is read by machines too: decimals of an inch, not sixteenths.
    private static string[] Cells(Ordinate o, Units units) =>
        [o.Mark, o.Part, o.Face, o.Feature, o.Point, Print(units, o.Along), Print(units, o.Across), Print(units, o.Station), Print(units, o.Height), Print(units, o.Depth)];

    private static string Print(Units units, double? value) => value is { } v ? units.Print(v, units.IsInches ? 3 : 2) : "";
}
