using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets.Dimensions;

/// <summary>Which way lettering along a line is turned, so that it reads from the bottom or from the right of the sheet.</summary>
public static class Reading
{
    /// <summary>Whether text along this direction must run against it to be read.</summary>
    public static bool IsReversed(Vector2 along)
    {
        // Straight up reads (from the right); straight down does not. A hair of tolerance keeps verticals alike on every machine.
        var unit = along.Unit;
        return unit.X < -1e-9 || (Math.Abs(unit.X) <= 1e-9 && unit.Y < 0);
    }

    /// <summary>Turn of text along a direction, -90 (not itself) to 90 degrees.</summary>
    public static Angle TurnOf(Vector2 along) => Angle.FromRadians((IsReversed(along) ? -along : along).Direction);
}
