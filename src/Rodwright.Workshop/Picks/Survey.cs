namespace Rodwright.Workshop.Picks;

/// <summary>What was measured, explained.</summary>
internal static class Survey
{
    /// <summary>The mean of the readings; a single reading as it is; and what is still to come on the floors.</summary>
    public static Working Mean(Stairs.Jobs.Survey survey)
    {
        var readings = survey.FloorToFloor;
        var measured = readings.Length == 1 ? Working.Of(readings[0]) : readings.Skip(1).Aggregate(Working.Of(readings[0]), (sum, r) => sum + r) / readings.Length;
        return measured + Working.Of(survey.UpperFinish) - Working.Of(survey.LowerFinish);
    }
}
