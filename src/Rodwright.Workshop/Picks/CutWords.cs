using Rodwright.Joinery.Parts;

namespace Rodwright.Workshop.Picks;

/// <summary>What cuts are called.</summary>
public static class CutWords
{
    /// <summary>One cut of a kind.</summary>
    public static string One(CutKind kind) => kind switch
    {
        CutKind.Housing => "housing",
        CutKind.CornerHousing => "corner housing",
        CutKind.Dovetail => "dovetail socket",
        CutKind.Mortice => "mortice",
        CutKind.Haunch => "haunch",
        CutKind.TenonCheek => "tenons, bare-faced",
        CutKind.Bore => "peg hole",
        CutKind.Notch => "notch",
        CutKind.Split => "half split off",
        CutKind.Cheek => "cheek of a tenon",
        CutKind.Groove => "groove",
        CutKind.Recess => "recess",
        _ => "rounded edge",
    };

    /// <summary>Several of a kind.</summary>
    public static string Many(CutKind kind) => kind switch
    {
        CutKind.Housing or CutKind.Mortice or CutKind.Bore or CutKind.CornerHousing or CutKind.Dovetail => One(kind) + "s",
        CutKind.Haunch => "haunches",
        CutKind.Notch => "notches",
        CutKind.Split => "halves split off",
        CutKind.Cheek => "cheeks of tenons",
        CutKind.Groove => "grooves",
        CutKind.Recess => "recesses",
        CutKind.TenonCheek => "tenoned ends",
        _ => "rounded edges",
    };

    /// <summary>"upper mortice for the newel string".</summary>
    internal static string Title(PickBench bench, Part part, Cut cut)
    {
        var half = cut.Kind is CutKind.Mortice or CutKind.Bore ? cut.Id.EndsWith("-upper", StringComparison.Ordinal) ? "upper " : cut.Id.EndsWith("-lower", StringComparison.Ordinal) ? "lower " : "" : "";
        var joint = bench.Joint(cut.Joint);
        var other = joint is null ? null : bench.Part(joint.Male == part.Id ? joint.Female : joint.Male);
        return cut.Kind switch
        {
            CutKind.RoundedEdge => $"nosing of {The(part)}",
            CutKind.Notch => $"notch {cut.Note}",
            CutKind.Split => $"half {cut.Note}",
            CutKind.TenonCheek => $"tenons into {The(other)}",
            CutKind.Cheek => $"tenon into {The(other)}, {(cut.Beneath == 0 ? "front" : "back")} cheek",
            CutKind.Groove => $"groove of {The(part)}",
            _ => $"{half}{One(cut.Kind)} {(cut.Kind == CutKind.Housing ? "of" : "for")} {The(other)}",
        };
    }

    /// <summary>"mortice in the turn newel, face S".</summary>
    public static string Kind(Part part, Cut cut) => cut.Kind switch
    {
        CutKind.TenonCheek => $"tenons of {The(part)}",
        CutKind.RoundedEdge => $"rounded edge of {The(part)}",
        _ => $"{One(cut.Kind)} in {The(part)}" + (part.Kind == PartKind.Newel ? $", face {part.Faces[cut.Face].Looks}" : ""),
    };

    /// <summary>A part as it is spoken of: "the turn newel", but "tread 4".</summary>
    public static string The(Part? part) => part is null ? "it" : char.IsAsciiDigit(part.Name[^1]) ? part.Name : $"the {part.Name}";
}
