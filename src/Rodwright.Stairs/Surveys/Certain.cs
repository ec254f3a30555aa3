using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Surveys;

/// <summary>
/// Worst cases over the accuracies of readings. Every quantity judged here is monotone in each reading by itself: height, rise and pitch grow with the floor-to-floor height; the clearance
/// under the trimmer grows with height and well and falls with the trimmer's depth; the clearance under one ceiling at one place is linear in its heights, and a least of such is least at a
/// corner of their box. A wall that moves the stair in its room moves every edge above it one way or the other at a steady rate. So the corners of the box of readings hold the worst case exactly: ceilings and walls are tried at all their corners, all else at the end that is worse.
/// </summary>
public static class Certain
{
    /// <summary>Judges one quantity.</summary>
    /// <param name="what">Its name.</param>
    /// <param name="survey">The survey.</param>
    /// <param name="readings">The readings it depends on.</param>
    /// <param name="quantity">The quantity for a survey; null where it does not exist.</param>
    /// <param name="range">What is allowed.</param>
    /// <param name="limit">In words; empty for information alone.</param>
    /// <param name="unit">mm or degrees.</param>
    /// <param name="allCorners">True for a quantity that is convex in its readings, not monotone: its greatest lies at a corner all the same, its least may lie between them.</param>
    /// <param name="worseHigh">Of a reading that changes nothing by itself but may once the others have moved: whether its larger end is the worse. None is where it is not given.</param>
    public static Certainty? Of(string what, Survey survey, IEnumerable<SurveyReading> readings, Func<Survey, double?> quantity, LimitRange range, string limit, string unit = "mm",
        bool allCorners = false, Func<SurveyReading, bool>? worseHigh = null)
    {
        if (quantity(survey) is not { } value) return null;
        var able = readings.Where(r => r.High > r.Low).ToImmutableArray();
        var alone = able.Select(r => (Reading: r, Low: quantity(r.Put(survey, r.Low)) ?? value, High: quantity(r.Put(survey, r.High)) ?? value)).ToImmutableArray();
        var (low, high) = (value, value);
        var corners = alone.Where(a => allCorners || IsCornered(a.Reading, Math.Max(Math.Abs(a.Low - value), Math.Abs(a.High - value)))).Select(a => a.Reading).ToImmutableArray();
        foreach (var worst in new[] { true, false })
        {
            var moved = survey;
            foreach (var (reading, atLow, atHigh) in alone.Where(a => !corners.Contains(a.Reading)))
            {
                var lowIsWorse = Math.Abs(atLow - atHigh) < 1e-9 ? worseHigh?.Invoke(reading) != true : atLow < atHigh;
                moved = reading.Put(moved, lowIsWorse == worst ? reading.Low : reading.High);
            }
            for (var mask = 0; mask < 1 << corners.Length; mask++)
            {
                var tried = moved;
                for (var i = 0; i < corners.Length; i++) tried = corners[i].Put(tried, (mask >> i & 1) == 0 ? corners[i].Low : corners[i].High);
                if (quantity(tried) is not { } there) continue;
                (low, high) = (Math.Min(low, there), Math.Max(high, there));
            }
        }
        var safe = range.Holds(low) && range.Holds(high);
        var verdict = safe ? CutVerdict.Safe : !range.Holds(value) && !range.Holds(low) && !range.Holds(high) ? CutVerdict.Fails : CutVerdict.MeasureAgain;
        var decides = verdict == CutVerdict.MeasureAgain && !alone.IsEmpty ? alone.MinBy(a => Math.Min(range.Spare(a.Low), range.Spare(a.High))).Reading : null;
        return new(what, value, low, high, range, limit, unit, verdict, decides);
    }

    /// <summary>Heights of a ceiling always; of the walls those that move the stair in the room at all.</summary>
    private static bool IsCornered(SurveyReading reading, double changes) => reading.Path.StartsWith("survey.ceilings", StringComparison.Ordinal)
        || reading.Path.StartsWith("survey.walls", StringComparison.Ordinal) && changes > 1e-9;
}
