namespace Rodwright.Workshop.Picks;

/// <summary>What was measured, explained.</summary>
internal static class Survey
{
    /// <summary>The mean of the readings; a single reading as it is.</summary>
    public static Working Mean(Stairs.Jobs.Survey survey)
    {
        var readings = survey.FloorToFloor;
        if (readings.Length == 1) return readings[0];
        return readings.Skip(1).Aggregate(Working.Of(readings[0]), (sum, r) => sum + r) / readings.Length;
    }
}
