namespace Rodwright.Drawings.Marks;

/// <summary>The pens in the box: widths after the ISO 128 series, one for each meaning.</summary>
public static class Pens
{
    /// <summary>Outlines to cut: 0.5 mm.</summary>
    public static Pen Outline { get; } = new(0.5, Dash.None);

    /// <summary>Visible edges: 0.35 mm.</summary>
    public static Pen Visible { get; } = new(0.35, Dash.None);

    /// <summary>Hidden edges: 0.25 mm, dashed.</summary>
    public static Pen Hidden { get; } = new(0.25, Dash.Short);

    /// <summary>Nosings: 0.25 mm, broken.</summary>
    public static Pen Nosing { get; } = new(0.25, Dash.Broken);

    /// <summary>Centre lines: 0.18 mm, long dash and dot.</summary>
    public static Pen Centre { get; } = new(0.18, Dash.LongDot);

    /// <summary>Construction, faint: 0.13 mm grey.</summary>
    public static Pen Construction { get; } = new(0.13, Dash.None, 0.5);

    /// <summary>Dimension, extension and leader lines: 0.18 mm.</summary>
    public static Pen Dimension { get; } = new(0.18, Dash.None);

    /// <summary>Hatching of waste: 0.13 mm, somewhat faint so that figures beside it stay in front.</summary>
    public static Pen Hatch { get; } = new(0.13, Dash.None, 0.6);

    /// <summary>Rules inside tables and title blocks: 0.18 mm.</summary>
    public static Pen Rule { get; } = new(0.18, Dash.None, 0.75);

    /// <summary>The sheet's frame: 0.5 mm.</summary>
    public static Pen Frame { get; } = new(0.5, Dash.None);
}
