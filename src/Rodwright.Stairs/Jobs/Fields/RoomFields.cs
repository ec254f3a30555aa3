using System.Collections.Immutable;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of the room: walls, well, ceilings, way in, place. Along and out are the room's frame (docs/guide/conventions.md).</summary>
internal static class RoomFields
{
    private static readonly ImmutableArray<string> Openings = ["door", "window"];
    private static readonly ImmutableArray<string> Swings = ["out", "in"];
    private static readonly ImmutableArray<string> Storeys = ["upper", "lower"];
    private static readonly ImmutableArray<string> Stops = ["door", "turn"];
    private const string Along = "along the first wall from the datum corner";
    private const string Out = "square out from the first wall";

    private static ImmutableArray<Field<CornerReading>> Corner { get; } =
    [
        new NumberField<CornerReading>("angle", "angle of the corner", new(30, 330, "degrees"), "inside the room; or give two legs, or a diagonal", c => c.Angle, (c, v) => c with { Angle = v }),
        Maybe<CornerReading>("leg", "leg along this wall", 100, 20000, "from the corner back to a mark: 600 of 600, 800, 1000", c => c.Leg, (c, v) => c with { Leg = v }),
        Maybe<CornerReading>("nextLeg", "leg along the next wall", 100, 20000, "from the corner on to a mark", c => c.NextLeg, (c, v) => c with { NextLeg = v }),
        Several<CornerReading>("across", "distance across the legs", 50, 40000, "from mark to mark", c => c.Across, (c, v) => c with { Across = v }),
        Several<CornerReading>("diagonal", "diagonal over both walls", 50, 60000, "from the beginning of this wall to the end of the next", c => c.Diagonal, (c, v) => c with { Diagonal = v }),
    ];

    private static ImmutableArray<Field<PlumbReading>> Plumb { get; } =
    [
        new NumberField<PlumbReading>("out", "lean", new(-300, 300, "mm"), "into the room over the height; negative away from it", p => p.Out, (p, v) => p with { Out = v }, required: true),
        new NumberField<PlumbReading>("over", "height of the plumb line", new(200, 6000, "mm"), "over which the lean was measured", p => p.Over, (p, v) => p with { Over = v }, required: true),
    ];

    private static ImmutableArray<Field<WallOpening>> Opening { get; } =
    [
        new ChoiceField<WallOpening>("kind", "kind of opening", Openings, JobCodes.OpeningKind, "kind of opening", "door or window", o => Openings[(int)o.Kind], (o, v) => o with { Kind = (OpeningKind)Openings.IndexOf(v) }, required: true),
        Name<WallOpening>(o => o.Name, (o, v) => o with { Name = v }),
        new NumberField<WallOpening>("at", "place of the opening", new(0, 40000, "mm"), "from the beginning of its wall to its near side", o => o.At, (o, v) => o with { At = v }, required: true),
        new NumberField<WallOpening>("width", "width of the opening", new(100, 10000, "mm"), "clear", o => o.Width, (o, v) => o with { Width = v }, required: true),
        new NumberField<WallOpening>("sill", "height of the sill", new(0, 10000, "mm"), "above the lower finished floor; 0 for a door", o => o.Sill, (o, v) => o with { Sill = v }),
        new NumberField<WallOpening>("head", "height of the head", new(100, 10000, "mm"), "above the lower finished floor", o => o.Head, (o, v) => o with { Head = v }, required: true),
        new ChoiceField<WallOpening>("swing", "swing of the leaf", Swings, JobCodes.Swing, "swing", "in: into the room", o => Swings[(int)o.Swing], (o, v) => o with { Swing = (Swing)Swings.IndexOf(v) }),
        Maybe<WallOpening>("clear", "floor to keep clear", 0, 5000, "depth before the opening; left out: 400 before a door, and beyond its leaf where it swings in", o => o.Clear, (o, v) => o with { Clear = v }),
    ];

    public static ImmutableArray<Field<WallRun>> Wall { get; } =
    [
        Name<WallRun>(w => w.Name, (w, v) => w with { Name = v }),
        Several<WallRun>("length", "length of the wall", 100, 40000, "from corner to corner", w => w.Length, (w, v) => w with { Length = v }, required: true),
        new MaybeGroupField<WallRun, CornerReading>("corner", "corner at the wall's end", "in one of three forms; left out, it is taken as square", w => w.Corner, (w, v) => w with { Corner = v }, _ => new(), Corner),
        new MaybeGroupField<WallRun, PlumbReading>("plumb", "out of plumb", "left out, the wall is taken as plumb", w => w.Plumb, (w, v) => w with { Plumb = v }, _ => new(0, 1000), Plumb),
        new ListField<WallRun, WallOpening>("openings", "doors and windows", "to be kept clear", new(), Opening, 12, w => w.Openings, (w, v) => w with { Openings = [.. v] }),
    ];

    public static ImmutableArray<Field<Well>> Well { get; } =
    [
        Several<Well>("length", "length of the well", 100, 20000, "along the first wall", w => w.Length, (w, v) => w with { Length = v }),
        Several<Well>("width", "width of the well", 100, 20000, "out from the first wall", w => w.Width, (w, v) => w with { Width = v }),
        Maybe<Well>("along", "where the well begins", -20000, 40000, Along + "; left out, its far end stands where the stair needs it", w => w.Along, (w, v) => w with { Along = v }),
        new NumberField<Well>("out", "where the well begins, out from the wall", new(-20000, 20000, "mm"), Out, w => w.Out, (w, v) => w with { Out = v }),
        new PointsField<Well>("corners", "corners of the well", new(-20000, 40000, "mm"), 3, 24, "of a well of any shape, each [along, out]; in place of length and width", w => w.Corners, (w, v) => w with { Corners = v }),
        Several<Well>("trimmer", "depth of the trimmer", 20, 1500, "from the upper finished floor down to the ceiling round the well", w => w.Trimmer, (w, v) => w with { Trimmer = v }, required: true),
    ];

    private static ImmutableArray<Field<CeilingPoint>> Point { get; } =
    [
        new NumberField<CeilingPoint>("along", "place, along", new(-20000, 40000, "mm"), Along, p => p.Along, (p, v) => p with { Along = v }),
        new NumberField<CeilingPoint>("out", "place, out", new(-20000, 40000, "mm"), Out, p => p.Out, (p, v) => p with { Out = v }),
        Several<CeilingPoint>("height", "height of the ceiling", 0, 20000, "above its storey's finished floor", p => p.Height, (p, v) => p with { Height = v }),
    ];

    public static ImmutableArray<Field<SlopingCeiling>> Ceiling { get; } =
    [
        Name<SlopingCeiling>(c => c.Name, (c, v) => c with { Name = v }),
        new ChoiceField<SlopingCeiling>("storey", "storey of the ceiling", Storeys, JobCodes.Storey, "storey", "upper: over the upper floor, and seen through the well; lower: over everything in the room",
            c => Storeys[(int)c.Storey], (c, v) => c with { Storey = (Storey)Storeys.IndexOf(v) }),
        new GroupField<SlopingCeiling, CeilingPoint>("first", "first place", "where the first height was taken", c => c.First, (c, v) => c with { First = v }, Point, required: true),
        new GroupField<SlopingCeiling, CeilingPoint>("second", "second place", "straight up or down the slope from the first", c => c.Second, (c, v) => c with { Second = v }, Point, required: true),
        new NumberField<SlopingCeiling>("pitch", "pitch of the ceiling", new(-85, 85, "degrees"), "rising from the first place to the second; in place of the second height", c => c.Pitch, (c, v) => c with { Pitch = v }),
    ];

    public static ImmutableArray<Field<WayInStop>> WayIn { get; } =
    [
        new ChoiceField<WayInStop>("kind", "kind of place", Stops, JobCodes.WayInKind, "kind of place", "door: passed straight through; turn: square, from one passage into another",
            w => Stops[(int)w.Kind], (w, v) => w with { Kind = (WayInKind)Stops.IndexOf(v) }, required: true),
        Name<WayInStop>(w => w.Name, (w, v) => w with { Name = v }),
        new NumberField<WayInStop>("width", "clear width", new(100, 20000, "mm"), "of the door, or of the passage before the turn", w => w.Width, (w, v) => w with { Width = v }, required: true),
        Maybe<WayInStop>("widthOut", "clear width after the turn", 100, 20000, "of the passage, or of a door straight after the turn", w => w.WidthOut, (w, v) => w with { WidthOut = v }),
        new NumberField<WayInStop>("height", "clear height", new(100, 10000, "mm"), "of the door, or of both passages", w => w.Height, (w, v) => w with { Height = v }, required: true),
    ];

    public static ImmutableArray<Field<StairPlace>> Place { get; } =
    [
        new NumberField<StairPlace>("wall", "wall the stair stands against", new(1, 24, "", Whole: true), "its number in the list; the first outer string stands against it", p => p.Wall, (p, v) => p with { Wall = (int)v }),
        Maybe<StairPlace>("from", "first riser from the wall's beginning", -20000, 40000, "to the riser's face; left out, a turning stair stands in the far corner, and a straight one under its well", p => p.From, (p, v) => p with { From = v }),
        new NumberField<StairPlace>("gap", "gap behind the string", new(0, 500, "mm"), "between the string's back and the wall", p => p.Gap, (p, v) => p with { Gap = v }),
    ];

    private static Field<T> Name<T>(Func<T, string> get, Func<T, string, T> set) where T : class => new NameField<T>(get, set);

    private static Field<T> Maybe<T>(string name, string label, double least, double most, string source, Func<T, double?> get, Func<T, double, T> set) where T : class =>
        new NumberField<T>(name, label, new(least, most, "mm"), source, get, set);

    private static Field<T> Several<T>(string name, string label, double least, double most, string source, Func<T, Readings> get, Func<T, Readings, T> set, bool required = false) where T : class =>
        new ReadingsField<T>(name, label, new(least, most, "mm"), 20, source + "; one reading, or several", t => [.. get(t).Values], (t, v) => set(t, Readings.Of(v.AsSpan())), required);
}
