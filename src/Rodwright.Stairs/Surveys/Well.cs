using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>The opening in the upper floor: a rectangle by length and width, or any polygon by its corners.</summary>
public sealed record Well
{
    /// <summary>Length along the first wall, mm.</summary>
    public Readings Length { get; init; } = Readings.None;

    /// <summary>Width out from the first wall, mm.</summary>
    public Readings Width { get; init; } = Readings.None;

    /// <summary>Where the rectangle begins along the first wall, mm; null sets its far end where the stair needs it (<see cref="WellShape"/>).</summary>
    public double? Along { get; init; }

    /// <summary>Where the rectangle begins out from the first wall, mm.</summary>
    public double Out { get; init; }

    /// <summary>Corners of a polygon in the room's frame, in order; empty for a rectangle.</summary>
    public ListOf<Point2> Corners { get; init; } = [];

    /// <summary>From the upper finished floor down to the ceiling round the well, mm.</summary>
    public Readings Trimmer { get; init; } = Readings.None;

    /// <summary>Whether it is given by length and width.</summary>
    public bool IsRectangle => Corners.Count == 0;
}
