using CsCheck;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Rod.Board;
using Rodwright.Rod.Views;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Board;

public sealed class RodBoardTests
{
    public static TheoryData<string> All => Boards.Samples;

    [Theory, MemberData(nameof(All))]
    public void Nothing_overlaps_anything_on_the_board_of_a_sample(string sample)
    {
        var faults = Boards.Faults(RodJobs.Stair(sample));
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }

    [Fact]
    public void Nothing_overlaps_anything_on_boards_of_made_up_jobs() => Generated.Jobs.Holds(
        job =>
        {
            if (Stair.SetOut(job).Value is not { } stair) return;
            var faults = Boards.Faults(stair);
            Assert.True(faults.Count == 0, string.Join('\n', faults));
        }, iter: 150);

    [Fact]
    public void Nothing_overlaps_anything_on_boards_of_stairs_of_several_turns() => Generated.Courses.Holds(
        job =>
        {
            if (Stair.SetOut(job).Value is not { } stair) return;
            var faults = Boards.Faults(stair);
            Assert.True(faults.Count == 0, string.Join('\n', faults));
        }, iter: 60);

    [Theory, MemberData(nameof(All))]
    public void A_board_is_shaped_to_hang_on_a_wall_and_shows_every_piece_with_its_mark(string sample)
    {
        var board = Boards.Sample(sample);
        var kit = RodJobs.Stair(sample).Kit;
        Assert.InRange(board.Width / board.Height, 1.25, 1.95);
        Assert.Equal("plan", board.Pieces[0].Id);
        var shown = kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel or PartKind.TaperedTread or PartKind.Handrail or PartKind.BaseRail or PartKind.WallRail).Select(p => p.Id);
        Assert.Equal(shown.Order(StringComparer.Ordinal), board.Pieces.Skip(1).SelectMany(p => p.Things).Order(StringComparer.Ordinal));
        foreach (var piece in board.Pieces)
        {
            var texts = piece.Marks.OfType<TextMark>().Select(t => t.Text).ToList();
            Assert.Contains(piece.Title, texts);
            if (piece.Kind != BoardPieceKind.Plan) Assert.Contains(string.Join(", ", piece.Things.Select(t => kit.Find(t).Mark)), texts);
        }
    }

    /// <summary>Every baluster stands on its flight's piece where its own outline is, and every one of them can be pressed.</summary>
    [Theory, InlineData("left-kite-low"), InlineData("right-kite-top"), InlineData("dog-leg"), InlineData("balanced-turn"), InlineData("feet-and-inches")]
    public void Rails_and_balusters_are_drawn_as_they_stand(string sample)
    {
        var job = Samples.Job(sample) with { Balustrade = new() { WallRail = new() { Wanted = Stairs.Jobs.WallRailWanted.Always } } };
        var stair = Stair.SetOut(job).Value!;
        var faults = Boards.Faults(stair);
        Assert.True(faults.Count == 0, string.Join('\n', faults));
        var board = RodBoard.Of(stair);
        foreach (var part in stair.Kit.Parts.Where(p => p.Kind is PartKind.Handrail or PartKind.BaseRail or PartKind.Baluster or PartKind.WallRail or PartKind.Bracket))
        {
            var piece = board.Pieces.Single(p => p.Kind == BoardPieceKind.Balustrade && Boards.Strokes(p).Exists(s => s.Of == part.Id && s.Layer != Layer.Dimension));
            var drawn = Boards.Strokes(piece).First(s => s.Of == part.Id && s.Layer != Layer.Dimension).Path;
            Assert.Equal(part.FaceSide.Outline.Area, drawn.Area * board.Scale.Ratio * board.Scale.Ratio, 1e-3);
            Assert.Contains(piece.Marks.OfType<FillMark>(), f => f.Of == part.Id && f.Layer == Layer.Hit);
            Assert.Equal(part.FaceSide.Outline.Bounds.MinY + part.FaceSide.Frame.Origin.Z, piece.Frames[0].Back(new(0, drawn.Bounds.MinY)).Y, 1e-6);
        }
    }

    [Fact]
    public void A_right_hand_board_is_laid_out_from_the_right()
    {
        Assert.True(Boards.Sample("left-kite-low").Pieces[0].Place.MinX < 25);
        var right = Boards.Sample("right-kite-top");
        Assert.True(right.Pieces[0].Place.MaxX > right.Width - 25);
    }

    [Fact]
    public void A_small_model_is_drawn_twice_as_large_as_a_stair()
    {
        Assert.Equal(2.5, Boards.Sample("half-scale-teaching").Scale.Ratio);
        Assert.Equal(5, Boards.Sample("left-kite-low").Scale.Ratio);
        Assert.Equal(10, RodBoard.Of(RodJobs.Stair("left-kite-low"), Drawings.Paper.Scale.OneTo(10)).Scale.Ratio);
    }

    [Theory, MemberData(nameof(All))]
    public void The_same_stair_gives_the_same_text(string sample) => Assert.Equal(Texts(Boards.Sample(sample)), Texts(RodBoard.Of(Stair.SetOut(Samples.Job(sample)).Value!)));

    [Fact]
    public void What_a_change_does_not_touch_stays_the_same_text()
    {
        var job = Samples.Job("left-kite-low");
        var (before, after) = (RodBoard.Of(Stair.SetOut(job).Value!), RodBoard.Of(Stair.SetOut(job with { Practice = job.Practice with { RailHeight = job.Practice.RailHeight + 15 } }).Value!));
        var (a, b) = (Texts(before), Texts(after));
        for (var i = 0; i < before.Pieces.Length; i++) Assert.Equal(before.Pieces[i].Kind != BoardPieceKind.Newel, a[i] == b[i]);
    }

    [Theory, MemberData(nameof(All))]
    public void Pieces_stay_where_they_lie_while_a_number_is_dragged(string sample)
    {
        var job = Samples.Job(sample);
        var first = RodBoard.Of(Stair.SetOut(job).Value!);
        var board = first;
        for (var i = 1; i <= 5; i++)
        {
            board = RodBoard.Of(Stair.SetOut(job with { Going = job.Going * (1 + i * 0.004) }).Value!, before: board);
            Assert.Equal((first.Width, first.Height), (board.Width, board.Height));
            foreach (var (now, then) in board.Pieces.Zip(first.Pieces))
            {
                Assert.Equal(then.Place.MaxY, now.Place.MaxY, 1e-9);
                Assert.True(Math.Abs(then.Place.MinX - now.Place.MinX) < 1e-9 || Math.Abs(then.Place.MaxX - now.Place.MaxX) < 1e-9, now.Id);
            }
        }
    }

    [Fact]
    public void A_board_of_another_stair_is_laid_out_anew()
    {
        var other = Boards.Sample("quarter-landing");
        var board = RodBoard.Of(RodJobs.Stair("left-kite-low"), before: other);
        Assert.Equal(Boards.Sample("left-kite-low").Pieces.Select(p => p.Place), board.Pieces.Select(p => p.Place));
    }

    [Theory, MemberData(nameof(All))]
    public void Frames_carry_points_of_the_stair_to_where_they_are_drawn_and_back(string sample)
    {
        var stair = RodJobs.Stair(sample);
        var board = Boards.Sample(sample);
        foreach (var frame in board.Pieces.SelectMany(p => p.Frames))
            Assert.True(frame.Back(frame.Map(new Point2(123.4, 567.8))).DistanceTo(new(123.4, 567.8)) < 1e-9);
        var plan = board.Find("plan")!;
        foreach (var riser in stair.Plan.RiserLines)
        {
            var drawn = Boards.Strokes(plan).First(s => s.Of == $"riser-{riser.Number}" && s.Layer == Layer.Visible).Path;
            var face = stair.Plan.FaceOf(riser);
            Assert.True(plan.Frames[0].Map(face.Vertices[0].At).DistanceTo(drawn.Vertices[0].At) < 1e-9);
            Assert.True(plan.Frames[0].Map(face.Vertices[^1].At).DistanceTo(drawn.Vertices[^1].At) < 1e-9);
        }
        foreach (var view in StringView.All(stair, true).Concat(StringView.All(stair, false)))
        {
            var piece = board.Find(view.Boards[0].Part.Id)!;
            foreach (var own in view.Boards)
            {
                var outline = Boards.Strokes(piece).First(s => s.Of == own.Part.Id && s.Layer == Layer.OutlineToCut).Path;
                Assert.All(piece.Frames[0].Map(own.Outline).Vertices, v => Assert.True(outline.DistanceTo(v.At) < 1e-6));
            }
        }
        foreach (var newel in stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel))
        {
            var piece = board.Find(newel.Id)!;
            Assert.Equal(4, piece.Frames.Length);
            foreach (var cut in newel.Cuts)
                Assert.Contains(Boards.Strokes(piece), s => s.Of == $"{newel.Id}/{cut.Id}" && Near(s.Path.Bounds, piece.Frames[cut.Face].Map(cut.Shape).Bounds));
        }
    }

    private static bool Near(Box2 a, Box2 b) => a.Grown(1e-6).Holds(b) && b.Grown(1e-6).Holds(a);

    private static List<string> Texts(RodBoard board) => [.. board.Pieces.Select(p => SvgWriter.Fragment(p.Marks, p.Place.Height))];
}
