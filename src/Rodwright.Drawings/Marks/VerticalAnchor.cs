namespace Rodwright.Drawings.Marks;

/// <summary>Which part of a line of lettering sits at its point, across the line.</summary>
public enum VerticalAnchor
{
    /// <summary>The point is on the line the letters stand on.</summary>
    Baseline,

    /// <summary>The point is halfway up the capitals.</summary>
    Middle,
}
