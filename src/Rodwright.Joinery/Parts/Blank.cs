using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Parts;

/// <summary>
/// The square-edged piece a part is made from, finished sizes, and where it lies on the part's first face. Grain runs along the length.
/// </summary>
/// <param name="Length">Along the grain, mm.</param>
/// <param name="Width">mm.</param>
/// <param name="Thickness">mm.</param>
/// <param name="Corner">Its lower left corner in the face's frame (seen along the grain direction).</param>
/// <param name="Grain">Unit direction of the grain in the face's frame.</param>
/// <param name="JointedUp">Pieces glued on where the part is wider than the board.</param>
public sealed record Blank(double Length, double Width, double Thickness, Point2 Corner, Vector2 Grain, ImmutableArray<JointedPiece> JointedUp)
{
    /// <summary>A blank whose grain runs along u, round the given box of the face.</summary>
    public static Blank Around(Box2 box, double thickness) =>
        new(box.Width, box.Height, thickness, new(box.MinX, box.MinY), new(1, 0), []);

    /// <summary>The outline of the board itself, in the face's frame.</summary>
    public Path2 Outline => Path2.Polygon(Corner, Corner + Length * Grain, Corner + Length * Grain + Width * Grain.Left, Corner + Width * Grain.Left);

    /// <summary>A point of the face measured on the board: along the grain and across it, from its corner.</summary>
    public Point2 OnBoard(Point2 p) => new(Grain.Dot(p - Corner), Grain.Left.Dot(p - Corner));

    /// <summary>The blank of the mirrored part.</summary>
    public Blank Mirrored(double width)
    {
        var end = Corner + Length * Grain;
        return this with { Corner = new(width - end.X, end.Y), Grain = new(Grain.X, -Grain.Y), JointedUp = [.. JointedUp.Select(j => j.Mirrored(width, Length))] };
    }
}

/// <summary>A piece glued to the edge of a board to make it wider, its grain along the board's.</summary>
/// <param name="Mark">a, b ...</param>
/// <param name="Edge">Upper or lower edge of the board.</param>
/// <param name="Place">Where it lies, measured on the board: along the grain and across it, from the board's corner.</param>
/// <param name="Shape">What of it remains in the finished part, in the face's frame.</param>
public sealed record JointedPiece(string Mark, string Edge, Box2 Place, Path2 Shape)
{
    /// <summary>Along the grain, mm.</summary>
    public double Length => Place.Width;

    /// <summary>Across the grain, mm.</summary>
    public double Width => Place.Height;

    internal JointedPiece Mirrored(double width, double boardLength) => this with
    {
        Shape = Shape.MapMirrored(p => new(width - p.X, p.Y)),
        Place = Place with { MinX = boardLength - Place.MaxX, MaxX = boardLength - Place.MinX },
    };
}
