using Rodwright.Geometry;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>The survey beyond the height: what contradicts itself in well, ceilings, place and way in. Walls: <see cref="WallChecks"/>.</summary>
internal static class SurveyChecks
{
    /// <summary>All contradictions at once.</summary>
    public static void Apply(JobReading reading, Survey survey)
    {
        var check = new SurveyCheck(reading, survey);
        WallChecks.Apply(check);
        if (survey.Well is { } well && !survey.FloorToFloor.IsEmpty) Judge(check, well);
        for (var i = 0; i < survey.Ceilings.Count; i++) Judge(check, survey.Ceilings[i], i);
        for (var i = 0; i < survey.WayIn.Count; i++) Judge(check, survey.WayIn[i], $"survey.wayIn[{i}]");
        Judge(check, survey.Place);
    }

    private static void Judge(SurveyCheck check, Well well)
    {
        const string at = "survey.well";
        check.Spread(at + ".length", "the well's length", well.Length);
        check.Spread(at + ".width", "the well's width", well.Width);
        check.Spread(at + ".trimmer", "the trimmer's depth", well.Trimmer);
        var sized = well.Length.IsGiven || well.Width.IsGiven;
        check.Refuse(sized && !well.IsRectangle, JobCodes.WellForm, at, "the well is given twice: by length and width, and by its corners", "keep the corners, or length and width");
        check.Refuse(well.IsRectangle && !(well.Length.IsGiven && well.Width.IsGiven), JobCodes.WellForm, at,
            $"the well has {(well.Length.IsGiven ? "a length and no width" : well.Width.IsGiven ? "a width and no length" : "neither length and width nor corners")}", "give its length and its width, or its corners");
        if (!well.IsRectangle)
        {
            var ring = Path2.Polygon(well.Corners);
            check.Refuse(!Region.IsSimple(ring) || Math.Abs(ring.Area) < 1e4, JobCodes.WellShape, at + ".corners", "the sides of the well cross one another, or enclose nothing",
                "give the corners in the order one meets them going round the opening");
        }
        var height = check.Survey.Height;
        check.Refuse(well.Trimmer.IsGiven && height > 0 && well.Trimmer.Mean >= height, JobCodes.TrimmerDepth, at + ".trimmer",
            $"the trimmer, {check.Mm(well.Trimmer.Mean)} deep, is deeper than the height between the floors, {check.Mm(height)}", "give floor, joists and ceiling together, from the finished floor down", "survey.floorToFloor", "survey.lowerFinish", "survey.upperFinish");
    }

    private static void Judge(SurveyCheck check, SlopingCeiling ceiling, int index)
    {
        var at = $"survey.ceilings[{index}]";
        check.Spread(at + ".first.height", "the ceiling's first height", ceiling.First.Height);
        check.Spread(at + ".second.height", "the ceiling's second height", ceiling.Second.Height);
        var name = ceiling.Words(index);
        var wrong = !ceiling.First.Height.IsGiven ? "no first height"
            : ceiling.Second.Height.IsGiven && ceiling.Pitch is not null ? "a second height and a pitch as well"
            : !ceiling.Second.Height.IsGiven && ceiling.Pitch is null ? "neither a second height nor a pitch" : "";
        check.Refuse(wrong.Length > 0, JobCodes.CeilingForm, at, $"{name} has {wrong}: three measurements make a plane", "give two heights and where they were taken, or one height and the pitch");
        var apart = ceiling.Apart;
        check.Refuse(apart < 10, JobCodes.CeilingPlaces, at + ".second", $"both places of {name} are one place, {check.Mm(apart)} apart", "take the second height further up or down the slope", at + ".first");
        check.Refuse(wrong.Length == 0 && apart >= 10 && Math.Abs(ceiling.Slope) > Angle.FromDegrees(85).Tangent, JobCodes.CeilingSteep, at + ".second",
            $"{name} changes by {check.Mm(Math.Abs(ceiling.Slope) * apart)} over {check.Mm(apart)}: that is a wall", "look at the two heights", at + ".first");
    }

    private static void Judge(SurveyCheck check, WayInStop stop, string at)
    {
        check.Refuse(stop is { Kind: WayInKind.Turn, WidthOut: null }, JobCodes.WayInForm, at, $"the turn \"{stop.Words}\" has one passage; a turn joins two", "give widthOut, the clear width after the turn");
        check.Refuse(stop is { Kind: WayInKind.Door, WidthOut: not null }, JobCodes.WayInForm, at, $"the door \"{stop.Words}\" has a second width", "take widthOut away, or make it a turn");
    }

    private static void Judge(SurveyCheck check, StairPlace place)
    {
        var walls = check.Survey.Walls;
        check.Refuse(place.Wall > Math.Max(1, walls.Count), JobCodes.PlaceWall, "survey.place.wall", $"the stair is to stand against wall {place.Wall}; {(walls.Count == 0 ? "none was" : walls.Count == 1 ? "one was" : walls.Count + " were")} measured",
            "give the number of the wall in the list, counted from 1", "survey.walls");
        if (place.From is not { } from || place.Wall > walls.Count || !check.Reading.IsSound("survey.walls", "survey.place")) return;
        var length = walls[place.Wall - 1].Length.Mean;
        check.Refuse(from >= length, JobCodes.PlacePast, "survey.place.from", $"the first riser is placed {check.Mm(from)} along a wall of {check.Mm(length)}", "measure from the beginning of the wall, the end that is met first going up");
    }
}
