using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Board;

/// <summary>A newel's four faces, whole: on the rod heights are true.</summary>
internal static class NewelPiece
{
    private const double Before = 4; // before the floors' levels, mm of paper

    public static PieceDraft Draw(BoardBench bench, Part part)
    {
        var lettering = bench.Lettering;
        var faces = new NewelFaces(bench.Stair, new(bench.Stair.Kit, part, NewelStretches.Whole(part)), lettering);
        var f = bench.Scale.Factor;
        // At the foot the figures of a narrow face spread past it on both sides.
        var pitch = Math.Ceiling(part.Blank.Width * f + Math.Max(faces.Column, faces.MostAcross * 1.3 * lettering.Figures));
        return PieceDraft.Draw(
            bench, new(part.Id, part.Mark, Sentence.Begin(part.Name), BoardPieceKind.Newel, [part.Id]),
            PieceSpace.Of(new(0, 0, 0, part.Blank.Length), new(0, 0, NewelFaces.Beside + Before, 4 * pitch, lettering.Mark + 12, faces.Below), f),
            space => [.. Enumerable.Range(0, 4).Select(i => new BoardFrame(new Placement(bench.Scale, Point2.Origin, Foot(space, i))))],
            space =>
            [
                .. Enumerable.Range(0, 4).Select(i => new FillMark([At(space, i)], 0, Layer.Hit, part.Id)),
                .. faces.Draw([0, 1, 2, 3], Foot(space, 0), pitch, f),
            ],
            (_, _) => []);

        Point2 Foot(PieceSpace space, int face) => new(space.Left + face * pitch, space.Bottom);

        Path2 At(PieceSpace space, int face) => new Placement(bench.Scale, Point2.Origin, Foot(space, face)).Map(part.Faces[face].Outline);
    }
}
