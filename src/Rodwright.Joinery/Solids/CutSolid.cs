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
            CutKind.RoundedEdge when cut.Shape.EdgeCount > 1 => RoundedBoard.Removed(face.Outline, cut.Shape, cut.Depth, face.Thickness, chord),
            CutKind.RoundedEdge => SolidMaker.Of([board, Along(face, cut)], [PartSolid.Rounded(face, cut)], chord),
            CutKind.TenonCheek => SolidMaker.Of([board, new(face.Frame, cut.Shape, face.Thickness)], [new(face.Frame, cut.Shape, cut.Depth)], chord),
            _ => SolidMaker.Of([board, PartSolid.Taken(face, cut)], [], chord),
        };
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
