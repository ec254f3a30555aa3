using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Tables;

/// <summary>Corners of a tread or nosing piece, lettered alike on sheets and in tables: A at the left end of the nosing, then anticlockwise.</summary>
public static class TreadCorners
{
    /// <summary>The corners, along the nosing from the board's left end and square to it from the nosing's edge.</summary>
    public static ImmutableArray<Point2> Of(Part part)
    {
        var corners = part.FaceSide.Outline.Vertices.Select(v => Measured(part, v.At)).ToList();
        var first = Enumerable.Range(0, corners.Count).Where(i => Math.Abs(corners[i].Y) < Tolerance.Joint).DefaultIfEmpty(0).MinBy(i => corners[i].X);
        return [.. corners.Skip(first), .. corners.Take(first)];
    }

    /// <summary>A point of the face measured from the two datum edges.</summary>
    public static Point2 Measured(Part part, Point2 face) => new(face.X - part.Blank.Corner.X, face.Y);

    /// <summary>Letter of a corner: A to Z.</summary>
    public static string Letter(int i) => ((char)('A' + i)).ToString();
}
