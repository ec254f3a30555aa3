using System.Collections.Immutable;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of the items of a sequence.</summary>
internal static class ItemFields
{
    /// <summary>Words for the kinds of turn: winders and landing by the quarter, then by the half.</summary>
    public static ImmutableArray<string> Kinds { get; } = ["winders", "landing", "half-winders", "half-landing"];

    private static ImmutableArray<string> Hands { get; } = ["left", "right"];

    /// <summary>Words for what stands on a side, in the order of <see cref="SideKind"/>.</summary>
    public static ImmutableArray<string> SideWords { get; } = ["wall", "open"];

    private static NumberRule Offset { get; } = new(0, 1000, "mm");

    public static ImmutableArray<Field<Flight>> Flight { get; } =
    [
        new NumberField<Flight>("flight", "number of goings", new(0, 60, "", Whole: true) { AboveCode = JobCodes.TooManySteps },
            "parallel goings of the flight, 0 to 60; 0 only next to a turn", f => f.Goings, (f, v) => f with { Goings = (int)v }, required: true),
        new ChoiceField<Flight>("left", "left side of the flight", SideWords, JobCodes.Side, "side",
            "open or wall, on the left going up; left out, the outside of a turn is as the stair's outer side, the inside as its inner side", f => Word(f.Left), (f, v) => f with { Left = (SideKind)SideWords.IndexOf(v) }),
        new ChoiceField<Flight>("right", "right side of the flight", SideWords, JobCodes.Side, "side",
            "open or wall, on the right going up; left out, the outside of a turn is as the stair's outer side, the inside as its inner side", f => Word(f.Right), (f, v) => f with { Right = (SideKind)SideWords.IndexOf(v) }),
    ];

    private static string Word(SideKind? side) => side is { } kind ? SideWords[(int)kind] : "";

    private static Field<Turn> Kind { get; } = new ChoiceField<Turn>("turn", "kind of turn", Kinds, JobCodes.Turn, "turn",
        "winders: tapered steps round the newel; landing: a square quarter landing; half-winders and half-landing: the same for half a turn", Word,
        (t, v) => t with { Kind = KindOf(v), Quarters = QuartersOf(v) }, required: true, help: "a turn is made with winders or with a landing, a quarter or a half of it");

    private static ImmutableArray<Field<Turn>> Risers { get; } =
    [
        new ChoiceField<Turn>("hand", "hand of the turn", Hands, JobCodes.Hand, "hand",
            "which way this turn turns going up; left out, it is the hand of the layout", t => t.Hand is { } hand ? Hands[(int)hand] : "",
            (t, v) => t with { Hand = (Hand)Hands.IndexOf(v) }),
        new NumberField<Turn>("firstRiser", "first riser of the turn", Offset,
            "fixes how far the turn's first riser face stands outside the newel's centre line; left out, it is solved", t => t.FirstRiser, (t, v) => t with { FirstRiser = v }),
        new NumberField<Turn>("lastRiser", "last riser of the turn", Offset,
            "fixes how far the turn's last riser face stands outside the newel's centre line; left out, it is solved", t => t.LastRiser, (t, v) => t with { LastRiser = v }),
    ];

    private static Field<Turn> Well { get; } = new NumberField<Turn>("well", "well of the half turn", new(0, 2000, "mm"),
        "between the centre lines of the two inner strings; narrower than the newel, they share it. Left out: 0 for tapered steps, room for the strings to pass one another for a landing",
        t => t.Well, (t, v) => t with { Well = v });

    private static ImmutableArray<Field<Turn>> Shared { get; } =
    [
        new ChoiceField<Turn>("method", "way of setting out", [.. TurnCatalogue.Winders.Select(m => m.Id)], JobCodes.Method, "method",
            string.Join("; ", TurnCatalogue.Winders.Select(m => $"{m.Id}: {m.Title}")),
            t => t.Method, (t, v) => t with { Method = v }),
        new NumberField<Turn>("sharedBefore", "straight steps before that share the taper", new(0, 8, "", Whole: true),
            "of a balanced turn: how many straight steps before it share its taper", t => t.SharedBefore == 0 ? null : t.SharedBefore, (t, v) => t with { SharedBefore = (int)v }),
        new NumberField<Turn>("sharedAfter", "straight steps after that share the taper", new(0, 8, "", Whole: true),
            "of a balanced turn: how many straight steps after it share its taper", t => t.SharedAfter == 0 ? null : t.SharedAfter, (t, v) => t with { SharedAfter = (int)v }),
    ];

    public static ImmutableArray<Field<Turn>> Winders { get; } = [Kind, Steps(2, 6, "tapered steps in the quarter turn, 2 to 6; three make a kite turn"), .. Risers, .. Shared];

    public static ImmutableArray<Field<Turn>> Landing { get; } = [Kind, .. Risers];

    private static ImmutableArray<Field<Turn>> HalfWinders { get; } = [Kind, Steps(4, 12, "tapered steps in the half turn, 4 to 12; six make one of two kites"), .. Risers, Well, .. Shared];

    private static ImmutableArray<Field<Turn>> HalfLanding { get; } = [Kind, .. Risers, Well];

    /// <summary>Every field that some turn has, once.</summary>
    public static IEnumerable<Field<Turn>> All => HalfWinders;

    /// <summary>The fields of a kind of turn.</summary>
    public static ImmutableArray<Field<Turn>> Of(string kind) => kind switch
    {
        "landing" => Landing,
        "half-landing" => HalfLanding,
        "half-winders" => HalfWinders,
        _ => Winders,
    };

    /// <summary>A turn of a kind before its fields are read.</summary>
    public static Turn Blank(string kind)
    {
        var quarters = QuartersOf(kind);
        return KindOf(kind) == TurnKind.Landing
            ? new(TurnKind.Landing, 1, null, null, "") { Quarters = quarters }
            : new(TurnKind.Winders, 3 * quarters, null, null, TurnCatalogue.Winders[0].Id) { Quarters = quarters };
    }

    /// <summary>The word for a turn's kind.</summary>
    public static string Word(Turn turn) => Kinds[2 * (turn.Quarters - 1) + (int)turn.Kind];

    private static TurnKind KindOf(string kind) => (TurnKind)(Kinds.IndexOf(kind) % 2);

    private static int QuartersOf(string kind) => Kinds.IndexOf(kind) / 2 + 1;

    private static NumberField<Turn> Steps(int least, int most, string source) =>
        new("steps", "number of tapered steps", new(least, most, "", Whole: true) { RangeCode = JobCodes.TaperedSteps }, source, t => t.Tapered, (t, v) => t with { Tapered = (int)v }, required: true);
}
