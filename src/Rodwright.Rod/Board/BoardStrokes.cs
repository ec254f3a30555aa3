using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Rod.Booklet;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Board;

/// <summary>Draws the lines of stages on their piece.</summary>
internal static class BoardStrokes
{
    public static ImmutableArray<BoardLine> Of(IReadOnlyList<(int Number, Stage Stage, StageLine Line)> lines, ImmutableArray<BoardFrame> frames) =>
        [.. lines.Select(l => new BoardLine(l.Number, l.Stage.Id, l.Line, Strokes(l.Line, frames[frames.Length > 1 ? l.Line.Face : 0])))];

    private static ImmutableArray<Mark> Strokes(StageLine line, BoardFrame frame)
    {
        var pen = BookletPens.OnBoard(line);
        return [.. line.Paths.Select(p => new StrokeMark(frame.Map(p), pen, BookletPens.LayerOf(line), line.Of))];
    }
}
