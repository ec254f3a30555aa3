using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>A piece drawn, before it has a place on the board.</summary>
/// <param name="Width">mm of paper.</param>
/// <param name="Height">mm of paper.</param>
internal sealed record PieceDraft(
    string Id, string Title, BoardPieceKind Kind, ImmutableArray<string> Things, double Width, double Height, ImmutableArray<BoardFrame> Frames,
    ImmutableArray<Mark> Marks, ImmutableArray<BoardLine> Lines)
{
    private const double MarkHeight = 10;
    private const double TitleHeight = 5;

    /// <summary>Draws a piece: as often as it takes to find out how far its figures and stage lines reach, which is once, mostly.</summary>
    /// <param name="bench">What to draw with.</param>
    /// <param name="name">Id, title, kind and parts of the piece.</param>
    /// <param name="space">The room it should need.</param>
    /// <param name="frames">Its frames in a room.</param>
    /// <param name="lines">Lines and figures in a room.</param>
    /// <param name="words">What is lettered round them, in that room.</param>
    public static PieceDraft Draw(
        BoardBench bench, PieceName name, PieceSpace space, Func<PieceSpace, ImmutableArray<BoardFrame>> frames, Func<PieceSpace, IReadOnlyList<Mark>> lines,
        Func<PieceSpace, IReadOnlyList<Mark>, IReadOnlyList<Mark>> words)
    {
        while (true)
        {
            var (own, drawn) = (frames(space), lines(space));
            var stages = bench.Stages.TryGetValue(name.Id, out var all) ? BoardStrokes.Of(all, own) : [];
            var larger = space.Holding(Mark.BoundsOf(drawn).With(Mark.BoundsOf(stages.SelectMany(s => s.Marks))));
            if (!ReferenceEquals(larger, space))
            {
                space = larger;
                continue;
            }
            return new(name.Id, name.Title, name.Kind, name.Things, space.Width, space.Height, own, [.. drawn, .. words(space, drawn), .. Heading(name, space)], stages);
        }
    }

    /// <summary>The piece where it lies.</summary>
    public BoardPiece At(Point2 corner) => new()
    {
        Id = Id, Title = Title, Kind = Kind, Things = Things, Frames = Frames, Marks = Marks, Lines = Lines,
        Place = new(corner.X, corner.Y, corner.X + Width, corner.Y + Height),
    };

    private static IEnumerable<Mark> Heading(PieceName name, PieceSpace space)
    {
        var y = space.Height - PieceSpace.Title + 6;
        var x = 2.0;
        if (name.Mark.Length > 0)
        {
            var (mark, high) = TextFit.Within(name.Mark, space.Width / 2, MarkHeight, bold: true);
            var text = new TextMark(new(x, y), mark, high, Layer.Lettering, bold: true, of: name.Things[0]);
            yield return text;
            x += text.Width + 4;
        }
        var (words, height) = TextFit.Within(name.Title, space.Width - x - 1, name.Mark.Length > 0 ? TitleHeight : 7);
        yield return new TextMark(new(x, y), words, height, Layer.Lettering, of: name.Things.Length == 1 ? name.Things[0] : name.Id);
    }
}
