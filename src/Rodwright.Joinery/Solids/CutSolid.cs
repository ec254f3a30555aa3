using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Solids;

/// <summary>What a cut is about, as a closed solid: the wood it takes out of the finished outline, or, for the cheek of a tenon, the tenon it leaves.</summary>
public static class CutSolid
{
    /// <summary>The solid of a cut in the frame of the face it is cut in; without faces where the cut meets no wood.</summary>
    /// <param name="part">The part.</param>
    /// <param name="cut">One of its cuts.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static Solid Of(Part part, Cut cut, double chord = Tolerance.Chord)
    {
        var face = part.Faces[cut.Face];
        var board = new Extrusion(face.Frame, face.Outline, face.Thickness);
        return cut.Kind switch
        {
            // Round the end of a step the strip along the edge stands for what the rounding takes from it.
            CutKind.RoundedEdge when cut.Shape.EdgeCount > 1 => SolidMaker.Of([board, new(face.Frame, Strip(face, cut), face.Thickness)], [], chord),
            CutKind.RoundedEdge => SolidMaker.Of([board, Along(face, cut)], [PartSolid.Rounded(face, cut)], chord),
            CutKind.TenonCheek => SolidMaker.Of([board, new(face.Frame, cut.Shape, face.Thickness)], [new(face.Frame, cut.Shape, cut.Depth)], chord),
            _ => SolidMaker.Of([board, PartSolid.Taken(face, cut)], [], chord),
        };
    }

    /// <summary>The strip within the radius of a bent edge, arcs kept.</summary>
    private static Path2 Strip(PartFace face, Cut cut)
    {
        var edge = cut.Shape;
        var inward = face.Outline.Bounds.Centre;
        var within = new List<Vertex2>();
        for (var i = 0; i < edge.EdgeCount; i++)
        {
            var (from, to, bulge) = edge.Edge(i);
            var left = bulge == 0 ? Line2.Between(from, to).LeftOf(inward) > 0 : bulge > 0;
            var (a, b) = bulge == 0 ? ((to - from).Unit, (to - from).Unit) : Tangents(from, to, bulge);
            within.Add(new(from + cut.Depth * (left ? a.Left : a.Right), bulge));
            if (i == edge.EdgeCount - 1) within.Add(new(to + cut.Depth * (left ? b.Left : b.Right)));
        }
        return new([.. edge.Vertices.SkipLast(1), new(edge.Vertices[^1].At), .. new Path2(within, false).Reversed().Vertices], true);
    }

    /// <summary>Unit directions of an arc at its ends: the chord's, turned by half of what the arc turns.</summary>
    private static (Vector2 First, Vector2 Last) Tangents(Point2 from, Point2 to, double bulge)
    {
        var (along, half) = ((to - from).Direction, 2 * Angle.Atan(bulge));
        return (Vector2.At(along - half), Vector2.At(along + half));
    }

    /// <summary>The strip of the board that the rounding reaches.</summary>
    private static Extrusion Along(PartFace face, Cut cut)
    {
        var (from, to, _) = cut.Shape.Edge(0);
        var line = Line2.Between(from, to);
        var inward = line.LeftOf(face.Outline.Bounds.Centre) < 0 ? line.Along.Right : line.Along.Left;
        return new(face.Frame, Path2.Polygon(from, to, to + cut.Depth * inward, from + cut.Depth * inward), face.Thickness);
    }
}
