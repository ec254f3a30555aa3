using Rodwright.Drawings.Marks;

namespace Rodwright.Workshop.Pictures;

/// <summary>Pens for pictures seen at about four screen dots to the millimetre: nothing thinner than a dot that has to be seen.</summary>
internal static class PicturePens
{
    public static Pen Newel { get; } = new(0.5, Dash.None);

    public static Pen Edge { get; } = new(0.35, Dash.None);

    public static Pen Riser { get; } = new(0.3, Dash.None);

    public static Pen Nosing { get; } = new(0.2, Dash.Broken, 0.7);

    public static Pen Walking { get; } = new(0.25, Dash.LongDot, 0.8);

    public static Pen Extension { get; } = new(0.2, Dash.None);

    public static Pen Measured { get; } = new(0.45, Dash.None);

    /// <summary>What is measured along an edge that is drawn itself: heavier than any edge.</summary>
    public static Pen OnFace { get; } = new(1, Dash.None);

    public static Pen Slash { get; } = new(0.6, Dash.None);
}
