using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Surveys;
using Rodwright.Properties;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Surveys;

public sealed class ScribingTests
{
    private static Stair Kite(double angle, double lean = 0, double scribing = 10)
    {
        var job = Samples.Job("left-kite-low");
        return Stair.SetOut(job with
        {
            Survey = job.Survey with
            {
                Walls =
                [
                    new() { Name = "hall wall", Length = Readings.Of(3000), Corner = new() { Angle = angle }, Plumb = new(lean, 1000) },
                    new() { Name = "end wall", Length = Readings.Of(3500) },
                ],
            },
            Practice = job.Practice with { Scribing = scribing },
        }).Value!;
    }

    [Fact]
    public void Against_true_walls_there_is_no_gap() => Assert.All(Kite(90).InRoom().Scribing, s => Assert.Equal(0, s.Widest, 1e-6));

    [Theory]
    [InlineData(90.4)]
    [InlineData(89.4)]
    public void A_corner_off_square_opens_a_gap_as_long_as_the_string_by_the_sine(double angle)
    {
        var stair = Kite(angle);
        var gaps = stair.InRoom().Scribing;
        Assert.Equal(["W1", "W2"], gaps.Select(g => g.String));
        Assert.Equal(0, gaps[0].Widest, 1e-6);
        var board = stair.Kit.Strings.Single(s => s.Site.Mark == "W2").Outline.Bounds;
        Assert.Equal(board.Width * Angle.FromDegrees(Math.Abs(angle - 90)).Sine, gaps[1].Widest, 1e-6);
        // A corner wider than square falls away towards the top of the stair.
        Assert.Equal(angle > 90 ? board.MaxX : board.MinX, gaps[1].S, 1e-6);
        Assert.Equal(angle - 90, gaps[1].OffSquareDegrees, 1e-9);
    }

    [Fact]
    public void A_wall_out_of_plumb_opens_a_gap_as_high_as_the_string_by_the_lean()
    {
        // Leaning into the room 4 in 1000 it touches the string's top: the gap is widest at its lowest point.
        var stair = Kite(90, lean: 4);
        var gap = stair.InRoom().Scribing[0];
        var board = stair.Kit.Strings.Single(s => s.Site.Mark == "W1").Outline.Bounds;
        Assert.Equal(0.004 * board.Height, gap.Widest, 1e-6);
        Assert.Equal(board.MinY, gap.Z, 1e-6);
    }

    [Theory]
    [InlineData(10, false)]
    [InlineData(2, true)]
    public void A_gap_beyond_the_scribing_allowance_is_a_breach(double allowance, bool breach)
    {
        var findings = Kite(90, lean: 4, scribing: allowance).Findings;
        Assert.Equal(breach, findings.Any(f => f is { Code: "RW2707", Severity: Severity.Breach } && f.Message.Contains("hall wall", StringComparison.Ordinal)));
    }

    [Fact]
    public void The_gap_is_what_a_search_along_the_board_finds_and_the_same_for_either_hand() => Rooms.Jobs.Holds(job =>
    {
        if (job.Survey.Walls.Count == 0 || Stair.SetOut(job).Value is not { } stair) return;
        var (room, frame) = (RoomShape.TryOf(job.Survey)!, RoomFrame.Of(stair.Plan));
        foreach (var gap in stair.InRoom().Scribing)
        {
            var board = stair.Kit.Strings.Single(s => s.Site.Mark == gap.String);
            var outline = board.Outline.Bounds;
            var w = board.Part.FaceSide.Frame.W;
            var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
            for (var i = 0; i <= 400; i++)
            {
                foreach (var (s, z) in board.Outline.Flattened().Select(p => (p.X, p.Y)).Append((outline.MinX + i * outline.Width / 400, board.Outline.Vertices[0].At.Y)).Where((_, k) => i == 0 || k == 0))
                {
                    // The back lies a thickness behind the face; its frame looks out of the face.
                    var back = board.Site.Face.At(s) - board.Site.Thickness * new Vector2(w.X, w.Y);
                    var off = room.Walls[gap.Wall].LeftOf(frame.ToRoom(back)) - (job.Survey.Walls[gap.Wall].Plumb?.Slope ?? 0) * z;
                    (least, most) = (Math.Min(least, off), Math.Max(most, off));
                }
            }
            Assert.Equal(most - least, gap.Widest, 1e-6);
        }
        var other = job with { Layout = job.Layout with { Hand = job.Layout.Hand == Hand.Left ? Hand.Right : Hand.Left }, Sides = new(job.Sides.Right, job.Sides.Left) };
        // A flight walled on both sides has no hand.
        if (job.Layout.Turn is null && job.Sides is { Left: SideKind.Wall, Right: SideKind.Wall }) return;
        var mirrored = Stair.SetOut(other).Value!.InRoom();
        Assert.Equal(stair.InRoom().Scribing.Select(g => (g.String, g.Wall, Math.Round(g.Widest, 6), Math.Round(g.OffSquareDegrees, 6))), mirrored.Scribing.Select(g => (g.String, g.Wall, Math.Round(g.Widest, 6), Math.Round(g.OffSquareDegrees, 6))));
        Assert.Equal(stair.InRoom().Headroom!.Under.Select(c => Math.Round(c.Least, 5)), mirrored.Headroom!.Under.Select(c => Math.Round(c.Least, 5)));
        Assert.Equal(stair.InRoom().WellLonger.Select(e => Math.Round(e.By, 5)).Order(), mirrored.WellLonger.Select(e => Math.Round(e.By, 5)).Order());
    }, iter: 60);

    [Fact]
    public void The_worst_gap_over_the_accuracies_is_that_at_the_worst_corner()
    {
        var stair = Kite(90.2);
        var certain = stair.InRoom().Certainty(stair.Kit).Single(c => c.What.StartsWith("scribing of W2", StringComparison.Ordinal));
        Assert.Equal(Kite(90.5).InRoom().Scribing[1].Widest, certain.High, 1e-3);
        Assert.Equal("survey.walls[0].corner.angle", certain.Verdict == CutVerdict.MeasureAgain ? certain.Decides!.Path : "survey.walls[0].corner.angle");
    }

    [Fact]
    public void What_does_not_pass_on_the_way_in_is_told_piece_by_piece()
    {
        var job = Samples.Job("left-kite-low");
        var stair = Stair.SetOut(job with { Survey = job.Survey with { WayIn = [new() { Kind = WayInKind.Turn, Name = "landing turn", Width = 700, WidthOut = 700, Height = 2000 }] } }).Value!;
        var report = stair.InRoom();
        Assert.Contains(report.WayIn, v => v.Piece.Together && !v.Passes);
        Assert.Contains(stair.Findings, f => f.Code == "RW2708" && f.Message.Contains("landing turn", StringComparison.Ordinal));
        Assert.NotNull(report.Largest);
        Assert.All(report.WayIn.Where(v => v.Passes && v.Longest is not null), v => Assert.True(v.Longest >= v.Piece.Length - 1e-6));
        Assert.All(report.WayIn.Where(v => !v.Passes), v => Assert.True(v.Longest < v.Piece.Length));
    }
}
