using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>
/// How a frame of the stair lies on its piece of the board: for the plan the world's x and y, for strings (s, z), for a newel the (u, v) of one face, for a
/// tapered step the (u, v) of its face side.
/// </summary>
/// <param name="Place">Timber to the piece's paper, mm.</param>
/// <param name="Sense">-1 where the first coordinate runs to the left on the board: a string that climbs to the left; else +1.</param>
public sealed record BoardFrame(Placement Place, int Sense = 1)
{
    /// <summary>A point on the piece, mm of paper from its bottom left corner.</summary>
    public Point2 Map(Point2 p) => Place.Map(new Point2(Sense * p.X, p.Y));

    /// <summary>A path on the piece.</summary>
    public Path2 Map(Path2 path) => Place.Map(Sense < 0 ? path.Mirrored() : path);

    /// <summary>The point of the frame under a point of the piece.</summary>
    public Point2 Back(Point2 paper)
    {
        var p = Place.Back(paper);
        return new(Sense * p.X, p.Y);
    }
}
