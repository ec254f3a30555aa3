using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Board;
using Xunit;

namespace Rodwright.Rod.Tests.Board;

/// <summary>Questions asked of boards.</summary>
internal static class Boards
{
    public static TheoryData<string> Samples => [.. Testing.Samples.Names];

    public static RodBoard Sample(string name) => RodBoard.Of(RodJobs.Stair(name));

    /// <summary>A piece as a bare sheet of paper of its own size.</summary>
    public static Sheet Paper(BoardPiece piece) =>
        new() { Name = piece.Id, Title = piece.Title, Paper = new("piece", piece.Place.Width, piece.Place.Height), Marks = piece.Marks };

    /// <summary>The lines of a piece's finished drawing.</summary>
    public static List<StrokeMark> Strokes(BoardPiece piece) => [.. FlatMarks.Of(piece.Marks).Select(m => m.Mark).OfType<StrokeMark>()];

    /// <summary>Everything that would not read on a board, in words.</summary>
    public static List<string> Faults(Stair stair)
    {
        var board = RodBoard.Of(stair);
        var faults = board.Pieces.SelectMany(p => SheetCheck.Overlaps(Paper(p)).Select(f => $"{p.Id}: {f.Message} at {f.Where.Centre}")).ToList();
        var whole = new Box2(0, 0, board.Width, board.Height).Grown(-10);
        for (var i = 0; i < board.Pieces.Length; i++)
        {
            if (!whole.Holds(board.Pieces[i].Place)) faults.Add($"{board.Pieces[i].Id} leaves the board");
            for (var j = i + 1; j < board.Pieces.Length; j++)
                if (board.Pieces[i].Place.Grown(5).Overlaps(board.Pieces[j].Place)) faults.Add($"{board.Pieces[i].Id} overlaps {board.Pieces[j].Id}");
        }
        return faults;
    }
}
