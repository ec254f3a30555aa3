using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Tables;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Tables;

/// <summary>The parts list: one line for each shape of part, finished sizes.</summary>
public static class PartsList
{
    /// <summary>Headings of <see cref="Rows"/> and of the file.</summary>
    public static IReadOnlyList<string> Heading { get; } =
        ["Mark", "Part", "Quantity", "Material", "Length", "Width", "Thickness", "Jointed up", "Glue-up", "Remarks"];

    /// <summary>The lines, in the kit's order; lengths in mm with at most one decimal.</summary>
    public static IReadOnlyList<IReadOnlyList<string>> Rows(Stair stair) =>
        [.. EqualParts.Of(stair.Kit.Parts).Select(g => Row(stair, g))];

    /// <summary>The list as a file.</summary>
    public static WrittenFile File(Stair stair) => CsvWriter.WriteFile("parts", Heading, Rows(stair));

    private static IReadOnlyList<string> Row(Stair stair, EqualParts group)
    {
        var part = group.First;
        var blank = part.Blank;
        return
        [
            group.Marks, NameOf(group), Number.Print(group.Parts.Length, 0), part.Material,
            stair.Units.Print(blank.Length), stair.Units.Print(blank.Width), stair.Units.Print(blank.Thickness),
            string.Join("; ", blank.JointedUp.Select(j => $"{j.Mark}: {stair.Units.Print(j.Length)} × {stair.Units.Print(j.Width)}, {j.Edge}")),
            GlueUp.Of(part, stair.Job.Practice).InWords(stair.Units),
            string.Join("; ", Remarks(stair, part)),
        ];
    }

    /// <summary>What a group is called: its part's name, or the plain word for several.</summary>
    public static string NameOf(EqualParts group) => group.Parts.Length == 1
        ? group.First.Name
        : group.First.Kind switch
        {
            PartKind.Tread => "straight treads",
            PartKind.TaperedTread => "tapered treads",
            PartKind.Riser => "risers",
            PartKind.TaperedRiser => "risers, bevelled ends",
            PartKind.NosingPiece => "nosing pieces",
            PartKind.Baluster => "balusters",
            PartKind.Fillet => "fillets between balusters",
            PartKind.NewelCap => "newel caps",
            PartKind.Bracket => "brackets of wall rails",
            PartKind.Wedge when group.First.Mark[0] == 'T' => "wedges of treads",
            PartKind.Wedge => "wedges of risers",
            PartKind.CarriageBracket => "brackets of carriages",
            PartKind.GlueBlock => "glue blocks",
            PartKind.Peg => "pegs",
            _ => group.First.Name,
        };

    private static IEnumerable<string> Remarks(Stair stair, Part part)
    {
        switch (part.Kind)
        {
            case PartKind.WallString or PartKind.NewelString:
                var tenons = part.Cuts.Count(c => c.Kind == CutKind.TenonCheek);
                if (tenons > 0) yield return $"twin tenons at {(tenons == 1 ? "one end" : "both ends")}";
                if (stair.Kit.Strings.FirstOrDefault(s => s.Part.Id == part.Id) is { } board)
                    foreach (var words in SkirtingWords.Of(stair, board)) yield return words;
                if (part.Cuts.Any(c => c.Kind == CutKind.CornerHousing)) yield return "housed for the upper string at the corner";
                if (part.Cuts.Count(c => c.Kind == CutKind.Dovetail) is > 0 and var sockets) yield return $"{Number.Print(sockets, 0)} dovetail sockets in its end, for the upper string at the corner";
                break;
            case PartKind.Newel:
                if (part.Cuts.Any(c => c.Kind == CutKind.Split)) yield return "half a newel: made whole and split, or two halves worked together with paper between";
                foreach (var cut in part.Cuts.Where(c => c.Kind == CutKind.Notch)) yield return $"notched {stair.Units.Print(cut.Depth)} {cut.Note}";
                break;
            case PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece:
                if (part.Cuts.FirstOrDefault(c => c.Kind == CutKind.RoundedEdge) is { } round) yield return $"nosing rounded {stair.Units.Print(round.Depth)}";
                if (part.Kind == PartKind.TaperedTread) yield return "to its own shape";
                break;
            case PartKind.TaperedRiser:
                yield return "ends bevelled and eased";
                break;
            case PartKind.BentRiser:
                yield return $"thinned to {stair.Units.Print(stair.Job.BottomStep.Veneer)} and bent round its block; length before bending";
                break;
            case PartKind.Block:
                var layers = BlockLayers.Of(stair.Job.BottomStep, part);
                yield return $"built up of {Number.Print(layers.Count, 0)} layers of {stair.Units.Print(layers.Thickness)}, grain crossing";
                break;
            case PartKind.Handrail or PartKind.WallRail or PartKind.BaseRail or PartKind.Baluster or PartKind.WallNewel or PartKind.NewelCap:
                foreach (var remark in RailRemarks.Of(stair, part)) yield return remark;
                break;
            case PartKind.Carriage:
                yield return CarriageEnd.WordsOf(part);
                break;
            case PartKind.Wedge:
                yield return $"tapers to {stair.Units.Print(Thin(part))}";
                break;
            case PartKind.GlueBlock:
                yield return "a square ripped corner to corner";
                break;
            case PartKind.Peg:
                yield return $"round, {stair.Units.Print(part.Blank.Width)} across, {stair.Units.Print(part.Blank.Thickness)} long";
                break;
            case PartKind.Wedges:
                yield return $"fill a slot of {stair.Units.Print(stair.Job.BottomStep.Wedges)}";
                break;
        }
        if (part is { Step: 1, Kind: PartKind.Riser or PartKind.TaperedRiser or PartKind.BentRiser or PartKind.Block }) yield return "stands on the floor";
    }

    /// <summary>The thin end of a wedge: the shorter of its two square ends.</summary>
    private static double Thin(Part wedge)
    {
        var outline = wedge.FaceSide.Outline;
        var along = wedge.Blank.Grain;
        return Enumerable.Range(0, outline.EdgeCount).Select(outline.Edge).Where(e => Math.Abs((e.To - e.From).Unit.Dot(along)) < 1e-6).Select(e => e.From.DistanceTo(e.To)).DefaultIfEmpty(0).Min();
    }
}
