namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>United States, International Residential Code, 2021 edition</summary>
internal static class UsaIrc2021
{
    public static Regulation Table { get; } = new()
    {
        Id = "usa-irc-2021",
        Title = "United States, International Residential Code, 2021 edition",
        WalkingLine = new(0, 12 * 25.4, false),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.Straight,
        LeastNarrow = 6 * 25.4,
        TaperedAtLeastStraight = false,
        LeastGoing = 10 * 25.4,
    };
}
