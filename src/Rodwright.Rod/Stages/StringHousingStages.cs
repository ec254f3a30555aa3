using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;
using static Rodwright.Rod.Stages.Say;

namespace Rodwright.Rod.Stages;

/// <summary>Housings of a string, from the templates where the step is straight.</summary>
internal static class StringHousingStages
{
    public static IEnumerable<Stage> Of(StringWords words)
    {
        var draft = StringStages.Draft(words, "housings", "housings");
        foreach (var board in words.View.Boards)
        {
            var own = words.View.Boards.Length > 1 ? $" on {board.Part.Mark}" : "";
            foreach (var housing in board.Housings) Add(words, draft, board, housing, own);
        }
        return draft.Done();
    }

    private static void Add(StringWords words, StageDraft draft, StringBoard board, StringHousing housing, string own)
    {
        var practice = words.View.Stair.Job.Practice;
        var seat = housing.Seat.Bounds;
        var nosing = housing.Piece.StartsWith("nosing", StringComparison.Ordinal);
        var tapered = IsSlanted(words, housing, seat);
        var piece = housing.IsRiser ? $"riser {K(housing.Step)}" : nosing ? $"nosing piece {K(housing.Step)}" : $"tread {K(housing.Step)}";
        Measure[] measures = housing.IsRiser
            ? [words.Along(seat.MinX, "face"), words.Along(seat.MaxX, "back"), words.Up(seat.MaxY, "top"), words.Up(seat.MinY, "lower edge")]
            : [words.Up(seat.MaxY, "top"), words.Along(seat.MinX, "front"), words.Along(seat.MaxX, "back")];
        var act = housing.IsRiser
            ? tapered ? "draw the riser's face and back plumb between these, and its wedge space behind" : "set the riser and wedge template with its face on the riser's line, and draw round it"
            : tapered || nosing ? $"draw the top level, the underside {words.View.Stair.Units.Print(practice.Tread)} below it, the nosing's round, and the wedge space" : "set the tread and wedge template with its top on the level line and its riser mark on the riser's line, and draw round it";
        var why = (housing.IsRiser
            ? tapered ? "the riser meets the string at a slant: its thickness along the face grows by 1 over the sine of the angle, and its end is eased to enter square" : $"the riser is {words.View.Stair.Units.Print(practice.Riser)} thick; its top meets the tread's underside, {words.View.Stair.Units.Print(practice.Tread)} below the level line"
            : tapered ? "the tread meets the string at a slant: nosing and riser are longer along the face" : $"the nosing stands {words.View.Stair.Units.Print(practice.Nosing)} in front of its riser; the tread is {words.View.Stair.Units.Print(practice.Tread)} thick")
            + $"; cut {words.View.Stair.Units.Print(housing.Depth)} deep";
        var kind = $"{(nosing ? "nosing" : housing.IsRiser ? "riser" : "tread")}-{(tapered ? "tapered" : "straight")}-{board.Part.Id}";
        var plural = $"housings of {(tapered ? "tapered " : "")}{(housing.IsRiser ? "risers" : "treads")}{own}";
        var once = nosing ? null : new Telling(kind, plural,
            $"for each {(housing.IsRiser ? "riser" : "tread")} of the table mark along from {words.Datum}, and up from {words.BaseName}; {act}", $"{why} ({(tapered ? Published.SlantedEnds : Published.Templates)})");
        draft.LinedIn($"{board.Part.Id}-{housing.Piece}", $"housing of {piece}{own}", ThingId.Of(board.Part, board.Part.Cuts.First(c => c.Joint == $"{housing.Piece}/{board.Part.Id}")), [housing.Shape], How(act, why, tapered ? Published.SlantedEnds : Published.Templates, measures), once);
    }

    /// <summary>Whether the piece meets the string at a slant: its section on the face is then longer than it is thick.</summary>
    private static bool IsSlanted(StringWords words, StringHousing housing, Box2 seat)
    {
        var (plan, practice) = (words.View.Stair.Plan, words.View.Stair.Job.Practice);
        if (housing.IsRiser) return seat.Width > practice.Riser + 0.01 || seat.Width < practice.Riser - 0.01;
        return housing.Step <= plan.Steps.Length && plan.Steps[housing.Step - 1] == StepKind.Tapered;
    }
}
