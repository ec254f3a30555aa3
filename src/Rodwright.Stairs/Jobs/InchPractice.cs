using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs;

/// <summary>
/// The sizes and habits taken in a job in inches where its file says none: stock of North American yards as it is dressed (5/4 to 1, 6/4 to 1 1/4, 1 x to 3/4, 12 wide to
/// 11 1/4, 4 x 4 to 3 1/2), all on whole sixteenths. What is habit and not stock is the metric default to the nearest fraction a rule shows.
/// </summary>
internal static class InchPractice
{
    public static Practice Usual { get; } = new()
    {
        Newel = In(3.5),
        WallString = new(In(1.25), In(11.25)),
        NewelString = new(In(1.25), In(11.25)),
        Tread = In(1),
        Riser = In(0.75),
        Nosing = In(1),
        Margin = In(2),
        Housing = In(0.5),
        NewelHousing = In(0.5),
        Cover = In(0.375),
        NosingPastNewel = In(0.625),
        NosingCover = In(1),
        CoverBelow = In(0.625),
        Corner = In(0.5),
        Easing = In(6),
        Skirting = In(4.25),
        SkirtingEasing = In(10),
        HeadLevel = In(4),
        FloorBoards = In(1),
        TreadWedge = new(In(6), In(0.1875), 14, In(1)),
        RiserWedge = new(In(4), In(0.1875), 14, In(1)),
        Tenon = new()
        {
            Haunch = In(0.625),
            MorticeClearance = In(0.0625),
            Between = In(0.125),
            Least = In(0.75),
            Peg = In(0.5),
            PegBack = In(0.75),
            Draw = In(0.0625),
        },
        RailHeight = In(36),
        NewelAboveRail = In(4),
        TopNewelDrop = In(6),
        NosingPiece = In(3.5),
        GlueStrip = In(7.25),
        RiserEnd = In(0.125),
        Scribing = In(0.375),
        Timber = "red oak",
        RiserMaterial = "poplar",
    };

    // Whole sixteenths: the same double that reading the text gives.
    private static double In(double inches) => 16 * inches * 127 / 80;
}
