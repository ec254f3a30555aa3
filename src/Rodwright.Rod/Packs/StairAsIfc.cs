using System.Collections.Immutable;
using Rodwright.Drawings.Formats.Ifc;
using Rodwright.Drawings.Formats.Models;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Packs;

/// <summary>A stair in the terms of IFC4: IfcStair, and what of the standard each part is (IfcStairTypeEnum, IfcMemberTypeEnum, IfcRailingTypeEnum, IfcDiscreteAccessoryTypeEnum, Pset_StairCommon). The standard has no word for a
/// single baluster, base rail or cap: they are members that tell themselves.</summary>
internal static class StairAsIfc
{
    public static IfcModel Of(Stair stair, DateOnly date, ImmutableArray<ModelPiece> pieces)
    {
        var plan = stair.Plan;
        var kinds = stair.Kit.Parts.ToDictionary(p => p.Id, p => p.Kind);
        return new(stair.Job.Title, date, "IFCSTAIR", TypeOf(plan), "timber stair", "Pset_StairCommon",
            [
                new("NumberOfRiser", "IFCCOUNTMEASURE", plan.Risers), new("NumberOfTreads", "IFCCOUNTMEASURE", plan.Risers - 1),
                new("RiserHeight", "IFCPOSITIVELENGTHMEASURE", plan.Rise), new("TreadLength", "IFCPOSITIVELENGTHMEASURE", plan.Going),
            ],
            [.. pieces.Select(p => ElementOf(p, kinds[p.PartId]))]);
    }

    /// <summary>The standard names stairs of one to three turns all of one kind; any other is the user's own.</summary>
    private static string TypeOf(StairPlan plan)
    {
        var landings = plan.Turns.Count(t => plan.Steps[t.FirstLine - 1] == StepKind.Landing);
        if (plan.Turns.Length > 0 && landings > 0 && landings < plan.Turns.Length) return "USERDEFINED";
        var kind = landings == 0 ? "WINDING" : "TURN";
        return plan.Turns.Select(t => t.Site.Quarters).ToList() switch
        {
            [] => "STRAIGHT_RUN_STAIR",
            [1] => $"QUARTER_{kind}_STAIR",
            [2] => $"HALF_{kind}_STAIR",
            [1, 1] => $"TWO_QUARTER_{kind}_STAIR",
            [1, 1, 1] => $"THREE_QUARTER_{kind}_STAIR",
            _ => "USERDEFINED",
        };
    }

    private static IfcElement ElementOf(ModelPiece piece, PartKind kind) => kind switch
    {
        PartKind.WallString or PartKind.NewelString or PartKind.Carriage => new(piece, "IFCMEMBER", "STRINGER", Words(kind)),
        PartKind.Handrail or PartKind.WallRail => new(piece, "IFCRAILING", "HANDRAIL", Words(kind)),
        PartKind.Apron => new(piece, "IFCCOVERING", "CLADDING", Words(kind)),
        PartKind.Bracket or PartKind.CarriageBracket => new(piece, "IFCDISCRETEACCESSORY", "BRACKET", Words(kind)),
        PartKind.Newel or PartKind.WallNewel => new(piece, "IFCMEMBER", "POST", Words(kind)),
        PartKind.Tread or PartKind.TaperedTread or PartKind.Riser or PartKind.TaperedRiser or PartKind.BentRiser => new(piece, "IFCPLATE", "USERDEFINED", Words(kind)),
        _ => new(piece, "IFCMEMBER", "USERDEFINED", Words(kind)),
    };

    /// <summary>"tapered tread" of TaperedTread.</summary>
    private static string Words(PartKind kind) => string.Concat(kind.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));
}
