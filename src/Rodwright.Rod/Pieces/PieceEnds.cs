using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Pieces;

/// <summary>How the ends of a long straight piece are cut, read from its outline as it lies on its board: along the grain from the left, up from the lower edge.</summary>
internal static class PieceEnds
{
    // Shorter edges are a corner, not an end, mm.
    private const double Least = 2;

    // An edge that lies flatter than this, along to across, is part of a long side.
    private const double Along = 2;

    /// <summary>The outline on the board.</summary>
    public static Path2 OnBoard(Part part) => part.FaceSide.Outline.Moved(part.Blank.OnBoard);

    /// <summary>The angles off square at which one end is cut, tenons apart; the longest edge's first.</summary>
    public static IReadOnlyList<Angle> Bevels(Part part, bool right)
    {
        var (outline, tenons) = (OnBoard(part), part.Cuts.Where(c => c.Kind == CutKind.Cheek).Select(c => c.Shape.Moved(part.Blank.OnBoard)).ToList());
        var middle = part.Blank.Length / 2;
        return [.. Enumerable.Range(0, outline.EdgeCount).Select(outline.Edge)
            .Where(e => (e.From.X + e.To.X) / 2 > middle == right && IsAcross(e.From, e.To) && !tenons.Exists(t => t.DistanceTo(e.From) < Tolerance.Joint && t.DistanceTo(e.To) < Tolerance.Joint))
            .Where(e => Math.Abs(e.To.X - e.From.X) < Along * Math.Abs(e.To.Y - e.From.Y)).OrderByDescending(e => e.From.DistanceTo(e.To)).Select(e => Angle.OfPitch(Math.Abs(e.To.X - e.From.X), Math.Abs(e.To.Y - e.From.Y))).DistinctBy(a => Math.Round(a.Degrees, 2))];

        // An end's edge goes from one long side towards the other: from right to left as the outline runs along the right end upwards.
        bool IsAcross(Point2 from, Point2 to) => from.DistanceTo(to) >= Least && (right ? to.Y > from.Y + Tolerance.Joint : to.Y < from.Y - Tolerance.Joint);
    }

    /// <summary>In words: "left end square", or how far off it.</summary>
    public static string Words(Part part, bool right)
    {
        var bevels = Bevels(part, right);
        var name = right ? "right end" : "left end";
        return bevels.Count == 0 || (bevels.Count == 1 && bevels[0].Degrees < 0.01) ? $"{name} square" : $"{name} {string.Join(" and ", bevels.Select(b => Number.Print(b.Degrees, 2) + "°"))} off square";
    }
}
