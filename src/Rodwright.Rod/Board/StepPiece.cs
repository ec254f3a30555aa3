using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Board;

/// <summary>The tread of a tapered step on the board it is set out on, its corners lettered.</summary>
internal static class StepPiece
{
    public static PieceDraft Draw(BoardBench bench, Part part)
    {
        var lettering = bench.Lettering;
        var view = new TreadView(bench.Stair, part);
        var square = TaperedTreadSheets.Square(part);
        var strip = lettering.OrdinateStrip(8);
        return PieceDraft.Draw(
            bench, new(part.Id, part.Mark, Sentence.Begin(part.Name), BoardPieceKind.TaperedStep, [part.Id]),
            PieceSpace.Of(square, new(0, 0, strip, 5, 2 * lettering.Words, strip), bench.Scale.Factor),
            // The view measures from the board's left end, the face from its own datum.
            space => [new(new Placement(bench.Scale, new(space.Timber.MinX + part.Blank.Corner.X, space.Timber.MinY), new(space.Left, space.Bottom)))],
            space =>
            {
                var place = space.Place(bench.Scale);
                return
                [
                    new FillMark([place.Map(view.Outline)], 0, Layer.Hit, part.Id),
                    new StrokeMark(place.Map(Path2.Rectangle(square.MinX, square.MinY, square.MaxX, square.MaxY)), Pens.Rule, Layer.Construction, part.Id),
                    .. view.Ordinates(place, place.Map(square), lettering, letters: true, apart: true),
                ];
            },
            (space, drawn) => view.Draw(space.Place(bench.Scale), lettering, letters: true, drawn));
    }
}
