using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Properties;
using Rodwright.Rod.Board;
using Rodwright.Rod.Stages;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Board;

public sealed class BoardLineTests
{
    public static TheoryData<string> All => Boards.Samples;

    [Theory, MemberData(nameof(All))]
    public void Every_stage_line_of_a_sample_is_drawn_on_its_piece_and_agrees_with_what_is_drawn_there(string sample) => AssertDrawn(RodJobs.Stair(sample));

    [Fact]
    public void Every_stage_line_of_made_up_jobs_is_drawn_on_its_piece_and_agrees_with_what_is_drawn_there() => Generated.Jobs.Holds(
        job =>
        {
            if (Stair.SetOut(job).Value is { } stair) AssertDrawn(stair);
        }, iter: 100);

    private static void AssertDrawn(Stair stair)
    {
        var board = RodBoard.Of(stair);
        var stages = RodStages.Of(stair);
        var drawn = board.Pieces.SelectMany(p => p.Lines).OrderBy(l => l.Number).ToList();
        Assert.Equal(stages.Lines.Select(l => l.Id), drawn.Select(l => l.Line.Id));
        Assert.Equal(Enumerable.Range(1, drawn.Count), drawn.Select(l => l.Number));
        foreach (var piece in board.Pieces)
        {
            var room = new Box2(0, 0, piece.Place.Width, piece.Place.Height);
            var finished = Boards.Strokes(piece);
            foreach (var line in piece.Lines)
            {
                Assert.Equal(line.Line.Paths.Length, line.Marks.Length);
                Assert.All(line.Marks, m => Assert.True(room.Holds(m.Bounds, 1e-6), $"{line.Line.Id} leaves {piece.Id}"));
                if (!IsOnTheFinishedRod(line)) continue;
                foreach (var stroke in line.Marks.OfType<StrokeMark>())
                {
                    // A cut, a riser, a nosing is the very thing drawn; an edge of an outline is part of what is drawn.
                    var own = finished.Where(f => f.Of == line.Line.Of).ToList();
                    Assert.True(Covered(stroke.Path, own.Count > 0 ? own : finished) || Covered(stroke.Path, finished), $"{line.Line.Id} is not where {piece.Id} is drawn");
                    if (line.Line.Of.Contains('/', StringComparison.Ordinal) && stroke.Path.Closed || line.Line.Of.StartsWith("riser-", StringComparison.Ordinal))
                        Assert.True(own.Exists(f => Alike(f.Path, stroke.Path)), $"{line.Line.Id} is not drawn as {line.Line.Of}");
                }
            }
        }
    }

    /// <summary>Lined in, and no line that only serves to find others: floor lines run on, faces of newels are not part of a string.</summary>
    private static bool IsOnTheFinishedRod(BoardLine line) => line.Line.Kind == LineKind.LinedIn
        && !line.StageId.EndsWith("-floor", StringComparison.Ordinal) && !line.StageId.EndsWith("-meetings", StringComparison.Ordinal)
        && !line.Line.Id.EndsWith("-risers/nosing", StringComparison.Ordinal)
        // Pegs of one end are told together.
        && !line.Line.Id.Contains("-pegs-", StringComparison.Ordinal);

    private static bool Alike(Path2 a, Path2 b) =>
        a.Vertices.Length == b.Vertices.Length && a.Vertices.All(v => b.Vertices.Any(w => w.At.DistanceTo(v.At) < 1e-6));

    private static bool Covered(Path2 path, List<StrokeMark> finished)
    {
        var points = path.Flattened(0.05);
        for (var i = 0; i + 1 < points.Count; i++)
        {
            foreach (var part in (double[])[0, 0.5, 1])
            {
                var p = points[i].Towards(points[i + 1], part);
                if (!finished.Exists(f => f.Path.Bounds.Grown(0.1).Holds(new Box2(p.X, p.Y, p.X, p.Y)) && f.Path.DistanceTo(p) < 0.06)) return false;
            }
        }
        return true;
    }
}
