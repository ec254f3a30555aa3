using System.Collections.Immutable;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The fields of <see cref="Survey"/>: heights here, the room in <see cref="RoomFields"/>.</summary>
internal static class SurveyFields
{
    public static ImmutableArray<Field<Survey>> All { get; } =
    [
        new ReadingsField<Survey>("floorToFloor", "height from floor to floor", new(100, 20000, "mm"), 20,
            "one reading, or several taken at different places, between the floors as they are now", s => s.FloorToFloor, (s, v) => s with { FloorToFloor = v }),
        new NumberField<Survey>("tolerance", "how far readings of one thing may lie apart", new(0, 100, "mm"),
            "common practice; beyond it the job is refused, never averaged in silence", s => s.Tolerance, (s, v) => s with { Tolerance = v }),
        new NumberField<Survey>("lowerFinish", "still to come on the lower floor", new(-300, 300, "mm"),
            "screed, boards or tiles; it takes from the height; negative for what will be taken up", s => s.LowerFinish, (s, v) => s with { LowerFinish = v }),
        new NumberField<Survey>("upperFinish", "still to come on the upper floor", new(-300, 300, "mm"),
            "screed, boards or tiles; it adds to the height; negative for what will be taken up", s => s.UpperFinish, (s, v) => s with { UpperFinish = v }),
        new ListField<Survey, WallRun>("walls", "walls of the room", "in the order in which they are met climbing beside them; the first begins at the room's datum corner", new(), RoomFields.Wall, 24,
            s => s.Walls, (s, v) => s with { Walls = [.. v] }),
        new MaybeGroupField<Survey, Well>("well", "well", "the opening in the upper floor; left out, headroom under the floor is not judged", s => s.Well, (s, v) => s with { Well = v }, _ => new(), RoomFields.Well),
        new ListField<Survey, SlopingCeiling>("ceilings", "sloping ceilings", "each a plane, from two heights, or one height and the pitch", new(), RoomFields.Ceiling, 12,
            s => s.Ceilings, (s, v) => s with { Ceilings = [.. v] }),
        new ListField<Survey, WayInStop>("wayIn", "doors and turns on the way in", "where a long piece may stick as it is carried through the house", new(), RoomFields.WayIn, 20,
            s => s.WayIn, (s, v) => s with { WayIn = [.. v] }),
        new GroupField<Survey, StairPlace>("place", "place of the stair", "which wall it stands against, and where", s => s.Place, (s, v) => s with { Place = v }, RoomFields.Place),
        new GroupField<Survey, SurveyAccuracy>("accuracy", "accuracy of the readings", "how far a reading may be from the truth either way; common practice with a tape",
            s => s.Accuracy, (s, v) => s with { Accuracy = v }, Accuracy),
    ];

    private static ImmutableArray<Field<SurveyAccuracy>> Accuracy =>
    [
        Off("floorToFloor", "accuracy of floor to floor", "either way", a => a.FloorToFloor, (a, v) => a with { FloorToFloor = v }),
        Off("finish", "accuracy of what is still to come", "either way, where anything is", a => a.Finish, (a, v) => a with { Finish = v }),
        Off("walls", "accuracy of wall lengths", "either way", a => a.Walls, (a, v) => a with { Walls = v }),
        new NumberField<SurveyAccuracy>("corner", "accuracy of a corner read in degrees", new(0, 10, "degrees"), "either way", a => a.Corner, (a, v) => a with { Corner = v }),
        Off("across", "accuracy across a corner", "of the distance across two legs, or of a diagonal, either way", a => a.Across, (a, v) => a with { Across = v }),
        Off("plumb", "accuracy out of plumb", "over the height, either way", a => a.Plumb, (a, v) => a with { Plumb = v }),
        Off("well", "accuracy of the well", "of length, width and corners, either way", a => a.Well, (a, v) => a with { Well = v }),
        Off("trimmer", "accuracy of the trimmer's depth", "either way", a => a.Trimmer, (a, v) => a with { Trimmer = v }),
        Off("ceiling", "accuracy of ceiling heights", "either way", a => a.Ceiling, (a, v) => a with { Ceiling = v }),
        new NumberField<SurveyAccuracy>("pitch", "accuracy of a pitch read in degrees", new(0, 10, "degrees"), "either way", a => a.Pitch, (a, v) => a with { Pitch = v }),
    ];

    private static NumberField<SurveyAccuracy> Off(string name, string label, string source, Func<SurveyAccuracy, double?> get, Func<SurveyAccuracy, double, SurveyAccuracy> set) =>
        new(name, label, new(0, 100, "mm"), source, get, set);
}
