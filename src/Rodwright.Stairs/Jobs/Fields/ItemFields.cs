using System.Collections.Immutable;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of the items of a sequence.</summary>
internal static class ItemFields
{
    /// <summary>A turn before its fields are read.</summary>
    public static Turn BlankTurn { get; } = new(TurnKind.Winders, 3, null, null, TurnCatalogue.Winders[0].Id);

    private static NumberRule Offset { get; } = new(0, 1000, "mm");

    private static ImmutableArray<string> Kinds { get; } = ["winders", "landing"];

    public static ImmutableArray<Field<Flight>> Flight { get; } =
    [
        new NumberField<Flight>("flight", "number of goings", new(0, 60, "", Whole: true) { AboveCode = JobCodes.TooManySteps },
            "parallel goings of the flight, 0 to 60; 0 only next to a turn", f => f.Goings, (f, v) => new((int)v), required: true),
    ];

    private static Field<Turn> Kind { get; } = new ChoiceField<Turn>("turn", "kind of turn", Kinds, JobCodes.Turn, "turn",
        "winders: tapered steps round the newel; landing: a square quarter landing", t => Kinds[(int)t.Kind],
        (t, v) => t with { Kind = (TurnKind)Kinds.IndexOf(v) }, required: true, help: "this version turns a quarter with winders or with a landing");

    private static ImmutableArray<Field<Turn>> Risers { get; } =
    [
        new NumberField<Turn>("firstRiser", "first riser of the turn", Offset,
            "fixes how far the turn's first riser face stands outside the newel's centre line; left out, it is solved", t => t.FirstRiser, (t, v) => t with { FirstRiser = v }),
        new NumberField<Turn>("lastRiser", "last riser of the turn", Offset,
            "fixes how far the turn's last riser face stands outside the newel's centre line; left out, it is solved", t => t.LastRiser, (t, v) => t with { LastRiser = v }),
    ];

    public static ImmutableArray<Field<Turn>> Winders { get; } =
    [
        Kind,
        new NumberField<Turn>("steps", "number of tapered steps", new(2, 6, "", Whole: true) { RangeCode = JobCodes.TaperedSteps },
            "tapered steps in the quarter turn, 2 to 6; three make a kite turn", t => t.Tapered, (t, v) => t with { Tapered = (int)v }, required: true),
        .. Risers,
        new ChoiceField<Turn>("method", "way of setting out", [.. TurnCatalogue.Winders.Select(m => m.Id)], JobCodes.Method, "method",
            string.Join("; ", TurnCatalogue.Winders.Select(m => $"{m.Id}: {m.Title}")),
            t => t.Method, (t, v) => t with { Method = v }),
    ];

    public static ImmutableArray<Field<Turn>> Landing { get; } = [Kind, .. Risers];
}
