namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>England, Approved Document K, 2013 edition, private stair</summary>
internal static class England2013Private
{
    public static Regulation Table { get; } = new()
    {
        Id = "england-2013-private",
        Title = "England, Approved Document K, 2013 edition, private stair",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.TreadWidth,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 220,
    };
}
