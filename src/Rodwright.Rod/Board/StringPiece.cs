using Rodwright.Drawings.Marks;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Board;

/// <summary>A string in development, or the two wall strings of a corner in one.</summary>
internal static class StringPiece
{
    public static PieceDraft Draw(BoardBench bench, StringView view)
    {
        var lettering = bench.Lettering;
        var first = view.Boards[0];
        var title = Sentence.Begin(view.Title);
        var kind = first.Site.IsWall ? BoardPieceKind.WallString : BoardPieceKind.NewelString;
        return PieceDraft.Draw(
            bench, new(first.Part.Id, string.Join(", ", view.Parts.Select(p => p.Mark)), title, kind, [.. view.Parts.Select(p => p.Id)]),
            PieceSpace.Of(view.Bounds, StringFigures.Need(view, lettering), bench.Scale.Factor),
            space => [new(space.Place(bench.Scale), view.Sense)],
            space =>
            {
                var place = space.Place(bench.Scale);
                return
                [
                    .. view.Parts.Select(p => new FillMark([place.Map(p.FaceSide.Outline)], 0, Layer.Hit, p.Id)),
                    .. StringMarks.Draw(view, place), .. StringFigures.Draw(view, place, lettering),
                ];
            },
            (space, drawn) => StringLabels.Draw(view, space.Place(bench.Scale), lettering, drawn, space.Room));
    }
}
