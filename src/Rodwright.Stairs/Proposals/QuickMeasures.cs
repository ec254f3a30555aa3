namespace Rodwright.Stairs.Proposals;

/// <summary>What a candidate measures as far as no plan is needed; headroom is taken at the well's edge over the first flight and only ranks, infinite where nothing was measured.</summary>
internal readonly record struct QuickMeasures(
    double Rise, double Going, double Comfort, double Slope, double Headroom, double FloorArea, double Narrowest, double Timber, int TaperedSteps);
