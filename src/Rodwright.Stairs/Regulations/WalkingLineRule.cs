namespace Rodwright.Stairs.Regulations;

/// <summary>
/// Where a regulation measures goings across the width. One policy for every table: the middle up to a clear width, beyond it a fixed inset;
/// either part may be missing.
/// </summary>
/// <param name="MiddleBelow">Clear widths below this (mm, full size) are measured in the middle; 0 for never.</param>
/// <param name="Inset">Otherwise this far from the inner side, mm, full size.</param>
/// <param name="BothSides">Whether the same inset from the outer side is measured too.</param>
public sealed record WalkingLineRule(double MiddleBelow, double Inset, bool BothSides)
{
    /// <summary>Distance of the (inner) measuring line from the inner string's face, for a clear width and a model scale.</summary>
    public double InsetFor(double clearWidth, double modelScale) =>
        clearWidth < MiddleBelow * modelScale ? clearWidth / 2 : Inset * modelScale;

    /// <summary>Distance of the second measuring line from the inner string's face; null where there is none.</summary>
    public double? SecondInsetFor(double clearWidth, double modelScale) =>
        BothSides && clearWidth >= MiddleBelow * modelScale ? clearWidth - Inset * modelScale : null;
}
