using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces;

/// <summary>How a carriage's ends are cut: plumb against a riser, a turn or a trimmer, or level on a floor.</summary>
/// <param name="IsLevel">Level; else plumb.</param>
/// <param name="OffSquare">Off square to its length.</param>
/// <param name="At">Both corners of the end on the face, the upper edge's first.</param>
internal sealed record CarriageEnd(bool IsLevel, Angle OffSquare, (Point2 Upper, Point2 Lower) At)
{
    /// <summary>One end of a carriage, read off its outline.</summary>
    public static CarriageEnd Of(Part carriage, bool head)
    {
        var blank = carriage.Blank;
        var at = carriage.FaceSide.Outline.Vertices.Select(v => (Face: v.At, Board: blank.OnBoard(v.At))).ToList();
        // The board's length climbs to the right where the flight does.
        var right = blank.Grain.Y > 0 == head;
        var middle = blank.Length / 2;
        var end = at.Where(p => p.Board.X > middle == right).OrderByDescending(p => p.Board.Y).ToList();
        var (upper, lower) = (end[0], end[^1]);
        return new(Math.Abs(upper.Face.Y - lower.Face.Y) < Tolerance.Joint, Angle.OfPitch(Math.Abs(upper.Board.X - lower.Board.X), upper.Board.Y - lower.Board.Y), (upper.Face, lower.Face));
    }

    /// <summary>In words: "level, 48.95° off square".</summary>
    public string Words => $"{(IsLevel ? "level" : "plumb")}, {Number.Print(OffSquare.Degrees, 2)}° off square";

    /// <summary>Both ends in words.</summary>
    public static string WordsOf(Part carriage) => $"foot cut {Of(carriage, head: false).Words}; head cut {Of(carriage, head: true).Words}";
}
