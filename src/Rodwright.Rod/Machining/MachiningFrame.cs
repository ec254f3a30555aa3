using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Machining;

/// <summary>
/// Where a part lies in its drawing, seen on the face worked. A board lies with its grain along x and the lower left corner of its blank at 0, 0 (pieces
/// jointed to its lower edge have y below 0). A newel stands: foot at y = 0, its four faces side by side in the order one turns it, S E N W, face i with
/// its left arris at x = i (side + 50). A riser's top edge is drawn 50 above its face, face downwards; the end of a wall string with dovetail sockets
/// stands 50 to the right of its board, foot at y = 0, seen from the end.
/// </summary>
public static class MachiningFrame
{
    /// <summary>Clear space between the views of one drawing, mm.</summary>
    public const double Gap = 50;

    /// <summary>A point of a face in the drawing.</summary>
    /// <param name="part">The part.</param>
    /// <param name="face">Index of the face.</param>
    /// <param name="p">The point in that face's frame.</param>
    public static Point2 Place(Part part, int face, Point2 p) => part.Kind.IsPost()
        ? p + new Vector2(OffsetOf(part, face), 0)
        : face == 0
            ? part.Blank.OnBoard(p)
            : part.Kind == PartKind.WallString
                ? p + new Vector2(part.Blank.Length + Gap - part.Faces[face].Outline.Bounds.MinX, -part.Faces[face].Outline.Bounds.MinY)
                : new(p.X - part.Blank.Corner.X, p.Y + part.Blank.Width + Gap);

    /// <summary>How far to the right a newel's face is drawn.</summary>
    public static double OffsetOf(Part part, int face) => face * (part.Blank.Width + Gap);

    /// <summary>A path of a face in the drawing; arcs stay arcs.</summary>
    public static Path2 Place(Part part, int face, Path2 path) => path.Moved(p => Place(part, face, p));
}
