using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="LandingEdge"/>.</summary>
internal static class LandingEdgeFields
{
    public static ImmutableArray<Field<LandingEdge>> All { get; } =
    [
        new NumberField<LandingEdge>("apron", "thickness of the apron lining", new(3, 40, "mm"), "9 in plywood", e => e.Apron, (e, v) => e with { Apron = v }),
        new NumberField<LandingEdge>("packing", "packing behind the apron", new(0, 60, "mm"), "between the trimmer and the apron", e => e.Packing, (e, v) => e with { Packing = v }),
        new NumberField<LandingEdge>("depth", "depth of the apron lining", new(20, 600, "mm"), "below the nosing; left out: to the ceiling round a surveyed well and a little past it, else 235 (9 1/4\")", e => e.Depth, (e, v) => e with { Depth = v }),
        new NumberField<LandingEdge>("belowCeiling", "apron below the ceiling", new(0, 60, "mm"), "round a surveyed well; it covers the joint", e => e.BelowCeiling, (e, v) => e with { BelowCeiling = v }),
        new TextField<LandingEdge>("material", "material of the apron lining", 40, "as it stands on the parts list", e => e.Material, (e, v) => e with { Material = v }),
    ];
}
