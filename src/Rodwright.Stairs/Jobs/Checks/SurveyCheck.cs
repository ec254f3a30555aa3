using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>What the checks of a survey share: readings that disagree, and contradictions told only where every field was read well.</summary>
internal sealed record SurveyCheck(JobReading Reading, Survey Survey)
{
    /// <summary>Refuses readings of one thing that lie further apart than allowed; notes several that do not.</summary>
    public void Spread(string where, string thing, Readings readings)
    {
        if (readings.Values.Count < 2 || !Reading.IsSound(where, "survey.tolerance")) return;
        if (readings.Spread > Survey.Tolerance)
        {
            Reading.Contradict(JobCodes.ReadingsDisagree, where,
                $"the readings of {thing} lie {Mm(readings.Spread)} apart, from {Mm(readings.Least)} to {Mm(readings.Most)}; {Mm(Survey.Tolerance)} is allowed",
                "measure again; if it really differs from place to place, give the reading where the stair stands or raise survey.tolerance");
        }
        else
        {
            Reading.Note(JobCodes.Readings, where, $"{readings.Values.Count} readings of {thing}, {Mm(readings.Spread)} apart; the work is set out to their mean, {Mm(readings.Mean)}",
                "give one reading to work to that alone");
        }
    }

    /// <summary>A length as findings tell it.</summary>
    public string Mm(double value) => Reading.Units.With(value);

    /// <summary>Refuses when it is so and the fields it was judged by were read well.</summary>
    public void Refuse(bool wrong, string code, string where, string message, string hint, params ReadOnlySpan<string> reads)
    {
        if (wrong && Reading.IsSound(where) && Reading.IsSound(reads)) Reading.Contradict(code, where, message, hint);
    }
}
