using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Surveys;

/// <summary>One thing that was measured, between what it may be at least and at most.</summary>
/// <param name="Path">Its field in the job file.</param>
/// <param name="Words">In bench words.</param>
/// <param name="Nominal">What is worked to.</param>
/// <param name="Low">Least reading less the accuracy.</param>
/// <param name="High">Largest reading and the accuracy.</param>
/// <param name="Put">The survey as if it had been read so.</param>
public sealed record SurveyReading(string Path, string Words, double Nominal, double Low, double High, Func<Survey, double, Survey> Put)
{
    /// <summary>Everything that was measured and may be off.</summary>
    public static ImmutableArray<SurveyReading> Of(Survey survey) =>
        [.. Heights(survey), .. WellOf(survey), .. Ceilings(survey), .. Walls(survey)];

    /// <summary>What the height is worked out from.</summary>
    public static IEnumerable<SurveyReading> Heights(Survey survey)
    {
        var off = survey.Accuracy.FloorToFloor;
        var all = survey.FloorToFloor;
        yield return new("survey.floorToFloor", "the height from floor to floor", all.Average(), all.Min() - off, all.Max() + off, (s, v) => s with { FloorToFloor = [v] });
        if (survey.LowerFinish != 0) yield return Around("survey.lowerFinish", "what is still to come on the lower floor", survey.LowerFinish, survey.Accuracy.Finish, (s, v) => s with { LowerFinish = v });
        if (survey.UpperFinish != 0) yield return Around("survey.upperFinish", "what is still to come on the upper floor", survey.UpperFinish, survey.Accuracy.Finish, (s, v) => s with { UpperFinish = v });
    }

    /// <summary>The well and its trimmer.</summary>
    public static IEnumerable<SurveyReading> WellOf(Survey survey)
    {
        if (survey.Well is not { } well) yield break;
        var off = survey.Accuracy.Well;
        if (well.IsRectangle)
        {
            yield return Several("survey.well.length", "the well's length", well.Length, off, (s, v) => s with { Well = s.Well! with { Length = s.Well.Length.Put(v) } });
            yield return Several("survey.well.width", "the well's width", well.Width, off, (s, v) => s with { Well = s.Well! with { Width = s.Well.Width.Put(v) } });
        }
        else
        {
            yield return Around("survey.well.corners", "the well's corners", 0, off, (s, v) => s with { Well = well with { Corners = [.. Grown(well.Corners, v)] } });
        }
        yield return Several("survey.well.trimmer", "the trimmer's depth", well.Trimmer, survey.Accuracy.Trimmer, (s, v) => s with { Well = s.Well! with { Trimmer = s.Well.Trimmer.Put(v) } });
    }

    /// <summary>Heights and pitches of ceilings.</summary>
    public static IEnumerable<SurveyReading> Ceilings(Survey survey)
    {
        for (var i = 0; i < survey.Ceilings.Count; i++)
        {
            var (at, ceiling, path, name) = (i, survey.Ceilings[i], $"survey.ceilings[{i}]", survey.Ceilings[i].Words(i));
            yield return Several(path + ".first.height", $"the first height of {name}", ceiling.First.Height, survey.Accuracy.Ceiling, (s, v) => Put(s, at, c => c with { First = c.First with { Height = c.First.Height.Put(v) } }));
            yield return ceiling.Pitch is { } pitch
                ? Around(path + ".pitch", $"the pitch of {name}", pitch, survey.Accuracy.Pitch, (s, v) => Put(s, at, c => c with { Pitch = v }))
                : Several(path + ".second.height", $"the second height of {name}", ceiling.Second.Height, survey.Accuracy.Ceiling, (s, v) => Put(s, at, c => c with { Second = c.Second with { Height = c.Second.Height.Put(v) } }));
        }

        static Survey Put(Survey survey, int at, Func<SlopingCeiling, SlopingCeiling> change) => survey with { Ceilings = survey.Ceilings.With(at, change(survey.Ceilings[at])) };
    }

    /// <summary>Lengths, corners and plumb of walls. Legs of a corner are marked out, not read: what may be off is the distance across.</summary>
    public static IEnumerable<SurveyReading> Walls(Survey survey)
    {
        var off = survey.Accuracy;
        for (var i = 0; i < survey.Walls.Count; i++)
        {
            var (at, wall, path, name) = (i, survey.Walls[i], $"survey.walls[{i}]", RoomShape.NameOf(survey.Walls[i], i));
            yield return Several(path + ".length", $"the length of {name}", wall.Length, off.Walls, (s, v) => Put(s, at, w => w with { Length = w.Length.Put(v) }));
            if (wall.Corner is { Angle: { } angle }) yield return Around(path + ".corner.angle", $"the corner at the end of {name}", angle, off.Corner, (s, v) => Put(s, at, w => w with { Corner = w.Corner! with { Angle = v } }));
            else if (wall.Corner is { HasLegs: true } legs) yield return Several(path + ".corner.across", $"the distance across the corner at the end of {name}", legs.Across, off.Across, (s, v) => Put(s, at, w => w with { Corner = w.Corner! with { Across = w.Corner.Across.Put(v) } }));
            else if (wall.Corner is { Diagonal.IsGiven: true } over) yield return Several(path + ".corner.diagonal", $"the diagonal over {name} and the next wall", over.Diagonal, off.Across, (s, v) => Put(s, at, w => w with { Corner = w.Corner! with { Diagonal = w.Corner.Diagonal.Put(v) } }));
            if (wall.Plumb is { } plumb) yield return Around(path + ".plumb.out", $"how far {name} is out of plumb", plumb.Out, off.Plumb, (s, v) => Put(s, at, w => w with { Plumb = w.Plumb! with { Out = v } }));
        }

        static Survey Put(Survey survey, int at, Func<WallRun, WallRun> change) => survey with { Walls = survey.Walls.With(at, change(survey.Walls[at])) };
    }

    private static SurveyReading Around(string path, string words, double value, double off, Func<Survey, double, Survey> put) => new(path, words, value, value - off, value + off, put);

    private static SurveyReading Several(string path, string words, Readings readings, double off, Func<Survey, double, Survey> put) =>
        new(path, words, readings.Mean, readings.Least - off, readings.Most + off, put);

    /// <summary>The ring with every side moved out, corners mitred.</summary>
    private static IEnumerable<Point2> Grown(ListOf<Point2> corners, double by)
    {
        List<Point2> ring = Path2.Polygon(corners).Area >= 0 ? [.. corners] : [.. corners.Reverse()];
        for (var i = 0; i < ring.Count; i++)
        {
            var (before, here, after) = (ring[(i + ring.Count - 1) % ring.Count], ring[i], ring[(i + 1) % ring.Count]);
            var (a, b) = (Line2.Between(before, here).OffsetLeft(-by), Line2.Between(here, after).OffsetLeft(-by));
            yield return a.Cross(b) ?? b.Through;
        }
    }
}
