namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>BS 5395-1:2010, straight stairs and winders, private stair</summary>
internal static class Bs5395
{
    public static Regulation Table { get; } = new()
    {
        Id = "bs-5395-1-2010",
        Title = "BS 5395-1:2010, straight stairs and winders, private stair",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 0,
        TaperedAtLeastStraight = true,
        LeastGoing = 250,
    };
}
