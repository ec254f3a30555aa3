using Rodwright.Geometry;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>The walls of the room against one another, and doors and windows against their wall.</summary>
internal static class WallChecks
{
    /// <summary>Steeper than this no wall leans: 1 in 10.</summary>
    private const double MostLean = 0.1;

    public static void Apply(SurveyCheck check)
    {
        var walls = check.Survey.Walls;
        for (var i = 0; i < walls.Count; i++)
        {
            var (wall, at) = (walls[i], $"survey.walls[{i}]");
            check.Spread(at + ".length", $"the length of {RoomShape.NameOf(wall, i)}", wall.Length);
            if (wall.Corner is { } corner) Corner(check, walls, i, corner);
            if (wall.Plumb is { } plumb)
                check.Refuse(Math.Abs(plumb.Slope) > MostLean, JobCodes.OutOfPlumb, at + ".plumb", $"{RoomShape.NameOf(wall, i)} leans {check.Mm(Math.Abs(plumb.Out))} in {check.Mm(plumb.Over)}: no wall stands so", "look at both numbers");
            for (var j = 0; j < wall.Openings.Count; j++) Opening(check, wall, i, j);
        }
        Whole(check);
    }

    private static void Corner(SurveyCheck check, ListOf<WallRun> walls, int i, CornerReading corner)
    {
        var at = $"survey.walls[{i}].corner";
        check.Spread(at + ".across", "the distance across the corner", corner.Across);
        check.Spread(at + ".diagonal", "the diagonal", corner.Diagonal);
        const string Forms = "give the angle in degrees, or two legs with the distance across, or the diagonal over both walls";
        check.Refuse(corner.Forms != 1, JobCodes.CornerForm, at, corner.Forms == 0 ? "nothing is given of the corner" : "the corner is given in more than one form", Forms);
        var halved = corner.Forms == 1 && corner.Angle is null && !corner.Diagonal.IsGiven && !corner.HasLegs;
        check.Refuse(halved, JobCodes.CornerForm, at, "the corner has only some of leg, nextLeg and across", Forms);
        if (corner.Forms != 1 || halved || corner.Angle is not null) return;
        var next = walls.Count > i + 1 ? walls[i + 1].Length : null;
        if (corner.Diagonal.IsGiven && next is null)
        {
            check.Refuse(true, JobCodes.CornerNext, at + ".diagonal", "the diagonal runs over this wall and the next, and no next wall is given", "measure the next wall too, or give two legs");
            return;
        }
        var (a, b, across) = corner.HasLegs ? (corner.Leg!.Value, corner.NextLeg!.Value, corner.Across.Mean) : (walls[i].Length.Mean, next!.Mean, corner.Diagonal.Mean);
        check.Refuse(a > 0 && b > 0 && corner.Degrees(walls[i].Length.Mean, next?.Mean ?? 0) is null, JobCodes.CornerTriangle, at,
            $"{check.Mm(a)} and {check.Mm(b)} with {check.Mm(across)} across make no triangle", "one of the three was misread: measure them again", $"survey.walls[{i}].length", $"survey.walls[{i + 1}]");
    }

    private static void Opening(SurveyCheck check, WallRun wall, int i, int j)
    {
        var (opening, at) = (wall.Openings[j], $"survey.walls[{i}].openings[{j}]");
        check.Refuse(wall.Length.IsGiven && opening.At + opening.Width > wall.Length.Most + check.Survey.Tolerance, JobCodes.OpeningPastWall, at,
            $"the {opening.Words} runs from {check.Mm(opening.At)} to {check.Mm(opening.At + opening.Width)}, past the end of the wall, {check.Mm(wall.Length.Mean)}", "measure from the beginning of the wall, the end that is met first going up", $"survey.walls[{i}].length");
        check.Refuse(opening.Head <= opening.Sill, JobCodes.OpeningHead, at + ".head", $"the head of the {opening.Words}, {check.Mm(opening.Head)}, is not above its sill, {check.Mm(opening.Sill)}", "both are measured up from the lower finished floor", at + ".sill");
        check.Refuse(opening is { Kind: OpeningKind.Door, Sill: > 400 }, JobCodes.DoorSill, at + ".sill", $"the {opening.Words} has a sill of {check.Mm(opening.Sill)}: nobody steps over that", "make it a window, or give the height of its threshold", at + ".kind");
        for (var k = 0; k < j; k++)
        {
            var other = wall.Openings[k];
            check.Refuse(opening.At < other.At + other.Width && other.At < opening.At + opening.Width && opening.Sill < other.Head && other.Sill < opening.Head, JobCodes.OpeningsOverlap, at,
                $"the {opening.Words} and the {other.Words} of one wall lie in one place", "look at the distances from the beginning of the wall", $"survey.walls[{i}].openings[{k}]");
        }
    }

    private static void Whole(SurveyCheck check)
    {
        var survey = check.Survey;
        if (survey.Walls.Count < 3 || !check.Reading.IsSound("survey.walls") || survey.Walls.Any(w => !w.Length.IsGiven) || RoomShape.TryOf(survey) is not { } room) return;
        check.Refuse(room.Crosses is { }, JobCodes.WallsCross, "survey.walls", $"{room.Crosses} cross one another", "look at the corner angles: they are measured inside the room");
        // A corner measured at the last wall says that the first follows it.
        if (survey.Walls[^1].Corner is null || room.Crosses is not null) return;
        var allowed = survey.Tolerance + survey.Walls.Count * survey.Accuracy.Walls;
        check.Refuse(room.Misclosure > allowed, JobCodes.RoomOpen, "survey.walls",
            $"walked all round, the last wall ends {check.Mm(room.Misclosure)} from where the first begins; {check.Mm(allowed)} is allowed", "measure the corners again, or take the corner of the last wall away if the room is not walled all round");
    }
}
