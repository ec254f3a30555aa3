namespace Rodwright.Stairs.Jobs;

/// <summary>The balustrade taken in a job in inches where its file says no size: the metric defaults to the nearest fraction a rule shows, balusters as stock is dressed.</summary>
internal static class InchBalustrade
{
    public static Balustrade Usual { get; } = new()
    {
        Rail = new(In(2.6875), In(1.75)),
        BaseRail = new(In(2.4375), In(1.25)),
        Groove = In(0.3125),
        Baluster = In(1.25),
        Follow = In(1),
        Tenon = new() { Thickness = In(0.75), Length = In(1.1875), Shoulder = In(0.1875), Peg = In(0.375), PegBack = In(0.5) },
        Cap = new() { Edge = In(1), Rise = In(0.75), Overhang = In(0.375), Recess = In(0.3125) },
        WallRail = new() { Section = new(In(1.75), In(1.75)), Clear = In(2), Brackets = In(36), FromEnd = In(6), Bracket = In(1.75) },
    };

    /// <summary>Wedges, glue blocks and pegs likewise.</summary>
    public static SmallParts SmallParts { get; } = new() { WedgeClear = In(0.0625), BlockSide = In(1.5), BlockLength = In(3) };

    /// <summary>Open edges of landings likewise.</summary>
    public static LandingEdge LandingEdge { get; } = new() { Apron = In(0.375), Packing = In(0.25), BelowCeiling = In(0.375) };

    /// <summary>Depth of an apron where no well tells it: joists of nine and a quarter.</summary>
    public static double ApronDepth { get; } = In(9.25);

    /// <summary>Carriages of two-by-fours.</summary>
    public static Carriage Carriage { get; } = new() { Over = In(36), Section = new(In(1.5), In(3.5)), Bracket = In(0.75) };

    // Whole sixteenths: the same double that reading the text gives.
    private static double In(double inches) => 16 * inches * 127 / 80;
}
