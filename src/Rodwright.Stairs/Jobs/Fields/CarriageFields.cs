using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="Carriage"/>.</summary>
internal static class CarriageFields
{
    public static ImmutableArray<Field<Carriage>> All { get; } =
    [
        new NumberField<Carriage>("over", "width that asks for a carriage", new(300, 3000, "mm"), "clear between the strings; a flight wider than this gets one, wider than twice this two", c => c.Over, (c, v) => c with { Over = v }),
        new GroupField<Carriage, Board>("section", "carriage", "its section, finished; sized like a joist of the span", c => c.Section, (c, v) => c with { Section = v },
        [
            new NumberField<Board>("thickness", "thickness of the carriage", new(10, 150, "mm"), "common practice", b => b.Thickness, (b, v) => b with { Thickness = v }),
            new NumberField<Board>("width", "depth of the carriage", new(40, 400, "mm"), "square to its length", b => b.Width, (b, v) => b with { Width = v }),
        ]),
        new NumberField<Carriage>("bracket", "thickness of a carriage's brackets", new(5, 80, "mm"), "nailed to its side, tight under the treads", c => c.Bracket, (c, v) => c with { Bracket = v }),
    ];
}
