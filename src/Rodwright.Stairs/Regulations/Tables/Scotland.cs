namespace Rodwright.Stairs.Regulations.Tables;

/// <summary>Scotland, Building Standards Technical Handbook, Domestic, private stair</summary>
internal static class Scotland
{
    public static Regulation Table { get; } = new()
    {
        Id = "scotland-private",
        Title = "Scotland, Building Standards Technical Handbook, Domestic, private stair",
        WalkingLine = new(1000, 270, true),
        Going = GoingMeasure.Chord,
        Narrow = NarrowMeasure.AlongFaces,
        LeastNarrow = 50,
        TaperedAtLeastStraight = true,
        LeastGoing = 225,
    };
}
