using Rodwright.Geometry;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs;

/// <summary>What else is taken in a job in inches where its file says nothing, beside the sizes of <see cref="InchPractice"/>: the metric defaults to the nearest fraction a rule shows.</summary>
internal static class InchUsual
{
    /// <summary>Of a bottom step with a rounded end.</summary>
    public static BottomStep BottomStep { get; } = new() { Veneer = In(0.0625), Wedges = In(0.5), Lap = In(2.5), Layer = In(2.5) };

    /// <summary>How far readings of one thing may lie apart.</summary>
    public static double Tolerance { get; } = In(0.1875);

    /// <summary>How far a reading may be from the truth.</summary>
    public static SurveyAccuracy Accuracy { get; } = new()
    {
        FloorToFloor = In(0.0625), Finish = In(0.0625), Walls = In(0.125), Across = In(0.0625), Plumb = In(0.0625), Well = In(0.125), Trimmer = In(0.0625), Ceiling = In(0.125),
    };

    /// <summary>Twice the rise and the going are ideal at 24 3/4.</summary>
    public static Wishes Wishes { get; } = new() { Comfort = In(24.75) };

    private static double In(double inches) => Units.Inches.Stock(inches * Units.Inch);
}
