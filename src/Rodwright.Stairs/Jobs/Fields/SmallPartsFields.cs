using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="SmallParts"/>.</summary>
internal static class SmallPartsFields
{
    public static ImmutableArray<Field<SmallParts>> All { get; } =
    [
        Size("wedgeClear", "clear beside a wedge", 0, 10, "how much narrower it is than its housing is deep; common practice", s => s.WedgeClear, (s, v) => s with { WedgeClear = v }),
        new NumberField<SmallParts>("blocks", "glue blocks on a step", new(0, 12, "", Whole: true), "left out: 2 up to 900 clear, 3 up to 1200, one more for each further 300", s => s.Blocks, (s, v) => s with { Blocks = v }),
        Size("blockSide", "legs of a glue block's section", 10, 100, "a square ripped corner to corner; 38 or more", s => s.BlockSide, (s, v) => s with { BlockSide = v }),
        Size("blockLength", "length of a glue block", 20, 300, "75 or more", s => s.BlockLength, (s, v) => s with { BlockLength = v }),
        new TextField<SmallParts>("timber", "timber of wedges and pegs", 40, "as on the parts list; hardwood shrinks less", s => s.Timber, (s, v) => s with { Timber = v }),
    ];

    private static NumberField<SmallParts> Size(string name, string label, double least, double most, string source, Func<SmallParts, double> get, Func<SmallParts, double, SmallParts> set) =>
        new(name, label, new(least, most, "mm"), source, owner => get(owner), set);
}
