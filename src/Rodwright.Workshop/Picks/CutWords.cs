using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;

namespace Rodwright.Workshop.Picks;

/// <summary>What cuts are called.</summary>
internal static class CutWords
{
    public static string One(CutKind kind) => kind switch
    {
        CutKind.Housing => "housing",
        CutKind.CornerHousing => "corner housing",
        CutKind.Mortice => "mortice",
        CutKind.Haunch => "haunch",
        CutKind.TenonCheek => "tenons, bare-faced",
        CutKind.Bore => "peg hole",
        CutKind.Notch => "notch",
        _ => "rounded edge",
    };

    public static string Many(CutKind kind) => kind switch
    {
        CutKind.Housing or CutKind.Mortice or CutKind.Bore or CutKind.CornerHousing => One(kind) + "s",
        CutKind.Haunch => "haunches",
        CutKind.Notch => "notches",
        CutKind.TenonCheek => "tenoned ends",
        _ => "rounded edges",
    };

    /// <summary>"upper mortice for the newel string".</summary>
    public static string Title(PickBench bench, Part part, Cut cut)
    {
        var half = cut.Kind is CutKind.Mortice or CutKind.Bore ? cut.Id.EndsWith("-upper", StringComparison.Ordinal) ? "upper " : cut.Id.EndsWith("-lower", StringComparison.Ordinal) ? "lower " : "" : "";
        var joint = bench.Joint(cut.Joint);
        var other = joint is null ? null : bench.Part(joint.Male == part.Id ? joint.Female : joint.Male);
        return cut.Kind switch
        {
            CutKind.RoundedEdge => $"nosing of the {part.Name}",
            CutKind.Notch => $"notch {cut.Note}",
            CutKind.TenonCheek => $"tenons into the {other?.Name}",
            _ => $"{half}{One(cut.Kind)} {(cut.Kind == CutKind.Housing ? "of" : "for")} the {other?.Name}",
        };
    }

    /// <summary>"mortice in the turn newel, face S".</summary>
    public static string Kind(Part part, Cut cut) => cut.Kind switch
    {
        CutKind.TenonCheek => $"tenons of the {part.Name}",
        CutKind.RoundedEdge => $"rounded edge of the {part.Name}",
        _ => $"{One(cut.Kind)} in the {part.Name}" + (part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : ""),
    };

    public static string Id(Part part, Cut cut) => ThingId.Of(part, cut);
}
