using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;

namespace Rodwright.Rod.Views;

/// <summary>Pens the rod needs beside the usual ones, so that fine work stays light at small scales.</summary>
public static class RodPens
{
    /// <summary>The margin line: 0.18, broken.</summary>
    public static Pen MarginLine { get; } = new(0.18, Dash.Broken, 0.7);

    /// <summary>The stock board a piece is cut from: thin and grey, dashed.</summary>
    public static Pen Stock { get; } = new(0.18, Dash.Short, 0.55);

    /// <summary>What a piece itself fills in its housing, wedge space apart.</summary>
    public static Pen Seat { get; } = new(0.13, Dash.None, 0.7);

    /// <summary>Edges of housings: visible edges at 1:5 and larger, finer below, where two of them would run together.</summary>
    public static Pen Housing(Scale scale) => scale.Ratio <= 5 ? Pens.Visible : new(scale.Ratio <= 10 ? 0.25 : 0.18, Dash.None);

    /// <summary>Riser faces in plan: as <see cref="Housing"/>.</summary>
    public static Pen RiserFace(Scale scale) => scale.Ratio <= 10 ? Pens.Visible : new(0.25, Dash.None);
}
