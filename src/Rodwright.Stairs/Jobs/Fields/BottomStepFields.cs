using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="BottomStep"/>.</summary>
internal static class BottomStepFields
{
    private static readonly ImmutableArray<string> Shapes = ["square", "bull-nose"];

    public static ImmutableArray<Field<BottomStep>> All { get; } =
    [
        new ChoiceField<BottomStep>("shape", "shape of the bottom step", Shapes, JobCodes.BottomShape, "shape", "square: its end in the newel; bull-nose: rounded in front of a newel that stands back at the second riser",
            b => Shapes[(int)b.Shape], (b, v) => b with { Shape = (BottomShape)Shapes.IndexOf(v) }),
        new NumberField<BottomStep>("radius", "radius of the rounded end", new(40, 600, "mm"), "of the riser's face; left out: the going less half the newel, so that the quarter circle ends on the newel's face", b => b.Radius, (b, v) => b with { Radius = v }),
        Size("veneer", "thickness of the bent riser", 0.5, 6, "where it is thinned; 1.5 to 3 is usual", b => b.Veneer, (b, v) => b with { Veneer = v }),
        Size("wedges", "slot for the folding wedges", 4, 40, "a pair, driven between the block and the riser's full thickness; common practice", b => b.Wedges, (b, v) => b with { Wedges = v }),
        Size("lap", "block behind the riser", 10, 300, "how far it runs on behind the full thickness, for its screws; common practice", b => b.Lap, (b, v) => b with { Lap = v }),
        Size("layer", "thickest layer of the block", 15, 250, "built up from layers of one thickness, grain crossing", b => b.Layer, (b, v) => b with { Layer = v }),
    ];

    private static NumberField<BottomStep> Size(string name, string label, double least, double most, string source, Func<BottomStep, double> get, Func<BottomStep, double, BottomStep> set) =>
        new(name, label, new(least, most, "mm"), source, owner => get(owner), set);
}
