using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Machining;

/// <summary>Every inside corner that the machine's cutter does not reach: which must be squared by hand, and how much stands there.</summary>
public static class MachiningList
{
    /// <summary>Headings of the file.</summary>
    public static IReadOnlyList<string> Heading { get; } =
        ["Mark", "Part", "Face", "Layer", "For", "Cutter", "To do", "Corner, degrees", "Stays out", "Arc begins", "Area left", "Along", "Across"];

    /// <summary>What the machine's cutter leaves, by the mark of the part; parts of one mark are one shape.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> Left(RodJob rod) =>
        rod.Stair.Kit.Parts.DistinctBy(p => p.Mark).ToList().AsParallel().AsOrdered().Select(p => (p.Mark, Left: CutterCorners.Of(p, rod.Router.Cutter))).ToDictionary(p => p.Mark, p => p.Left);

    /// <summary>The list as a file, a line for each place.</summary>
    public static WrittenFile File(RodJob rod, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left) =>
        CsvWriter.WriteFile("machining", Heading, rod.Stair.Kit.Parts.DistinctBy(p => p.Mark).SelectMany(p => left[p.Mark]).Select(l => Row(rod, l)));

    /// <summary>What a cut is for: the piece that goes into it, or what its note says.</summary>
    public static string For(Kit kit, LeftByCutter left)
    {
        if (left.Cut is not { } cut) return "";
        var slash = cut.Joint.IndexOf('/', StringComparison.Ordinal);
        var male = slash > 0 ? kit.Parts.FirstOrDefault(p => p.Id == cut.Joint[..slash]) : null;
        return male?.Name ?? cut.Note;
    }

    private static IReadOnlyList<string> Row(RodJob rod, LeftByCutter l) =>
    [
        l.Part.Mark, l.Part.Name, l.Part.Faces[l.Face].Looks, l.Layer, For(rod.Stair.Kit, l), Print(rod, rod.Router.Cutter), l.ToDo,
        l.Opening is { } a ? Number.Print(a.Degrees, 2) : "", double.IsFinite(l.Away) ? Print(rod, l.Away) : "", l.ArcBegins(rod.Router.Cutter) is { } begins ? Print(rod, begins) : "",
        Area(rod, l.Area, rod.Units.IsInches ? 4 : 2), Print(rod, l.At.X), Print(rod, l.At.Y),
    ];

    /// <summary>Square millimetres, or square inches where the job is in inches.</summary>
    public static string Area(RodJob rod, double area, int decimals) => Number.Print(rod.Units.IsInches ? area / (Units.Inch * Units.Inch) : area, decimals);

    // Read by machines too: decimals of an inch, not sixteenths.
    private static string Print(RodJob rod, double value) => rod.Units.Print(value, rod.Units.IsInches ? 3 : 2);
}
