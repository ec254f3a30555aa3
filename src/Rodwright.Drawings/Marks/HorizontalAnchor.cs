namespace Rodwright.Drawings.Marks;

/// <summary>Which part of a line of lettering sits at its point, along the line.</summary>
public enum HorizontalAnchor
{
    /// <summary>The text starts at the point.</summary>
    Start,

    /// <summary>The point is the middle of the text.</summary>
    Middle,

    /// <summary>The text ends at the point.</summary>
    End,
}
