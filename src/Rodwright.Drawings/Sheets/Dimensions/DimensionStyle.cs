using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>How dimensions look, the same over a whole sheet. Lengths are millimetres of paper.</summary>
public sealed record DimensionStyle
{
    /// <summary>Figures 3.5 high, one decimal.</summary>
    public static DimensionStyle Usual { get; } = new();

    /// <summary>Height of the figures.</summary>
    public double TextHeight { get; init; } = 3.5;

    /// <summary>Most decimals printed; trailing zeros never are.</summary>
    public int Decimals { get; init; } = 1;

    /// <summary>The unit the figures are written in; every one is rounded from its own true value, and none is added up from rounded ones.</summary>
    public Units Units { get; init; } = Units.Millimetres;

    /// <summary>Clear space between a feature and its extension line.</summary>
    public double Gap { get; init; } = 1.5;

    /// <summary>How far an extension line runs past the dimension line.</summary>
    public double Overrun { get; init; } = 2;

    /// <summary>Clear space between the dimension line and its figures.</summary>
    public double Clear { get; init; } = 1;

    /// <summary>Half the length of a slash where a dimension line ends.</summary>
    public double Slash { get; init; } = 1.3;

    /// <summary>Dimension and extension lines.</summary>
    public Pen Pen { get; init; } = Pens.Dimension;

    /// <summary>The slashes, somewhat heavier so that they are found at a glance.</summary>
    public Pen SlashPen { get; init; } = new(0.35, Dash.None);
}
