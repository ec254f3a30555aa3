using Rodwright.Drawings.Sheets;
using Rodwright.Rod.Pieces;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Xunit;

namespace Rodwright.Rod.Tests.Pieces;

public sealed class PieceSheetTests
{
    public static TheoryData<string, string> All => RodJobs.Everything("A4", "A3", "A1", "610", "1800x1200");

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_on_a_piece_sheet_overlaps_or_leaves_the_frame(string sample, string paper)
    {
        var sheets = PieceSheets.Make(RodJobs.Of(sample, paper));
        Assert.NotEmpty(sheets);
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
    }

    [Fact]
    public void A_tapered_tread_is_set_out_on_the_smallest_square_in_fifties_that_leaves_twenty_all_round()
    {
        foreach (var part in RodJobs.Stair("left-kite-low").Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread))
        {
            var (length, width) = TaperedTreadSheets.SetOutOn(part);
            foreach (var (board, piece) in new[] { (length, part.Blank.Length), (width, part.Blank.Width) })
            {
                Assert.Equal(0, board % 50);
                Assert.True(board >= piece + 40 - 0.01 && board - 50 < piece + 40, $"{part.Mark}: {board} for {piece}");
            }
        }
    }

    [Theory]
    [InlineData("left-kite-low", 4, 29.23, 7.0)]
    [InlineData("right-kite-top", 10, 29.21, 3.69)]
    public void Bevelled_risers_keep_the_thickness_the_rule_of_ends_gives(string sample, int step, double degrees, double left)
    {
        var stair = RodJobs.Stair(sample);
        var riser = stair.Kit.Find($"riser-{step}");
        var (a, b) = RiserEnd.Of(stair, riser);
        var end = a.Left < b.Left ? a : b;
        Assert.Equal(degrees, end.Bevel.Degrees, 1);
        Assert.Equal(left, end.Left, 1);
        // The end edge itself, read off the part's top edge, is that long.
        var outline = riser.Faces[1].Outline;
        Assert.Contains(Enumerable.Range(0, outline.EdgeCount), i => Math.Abs(outline.Edge(i).From.DistanceTo(outline.Edge(i).To) - end.Left) < Tolerance.Joint);
    }

    [Fact]
    public void Newel_stretches_hold_every_cut_and_leave_plain_wood_out()
    {
        foreach (var newel in RodJobs.Stair("left-kite-low").Kit.Parts.Where(p => p.Kind == PartKind.Newel))
        {
            var stretches = NewelStretches.Of(newel);
            Assert.All(newel.Cuts, c => Assert.Contains(stretches.Kept, k => k.From <= Math.Max(0, c.Shape.Bounds.MinY) && k.To >= c.Shape.Bounds.MaxY));
            Assert.True(stretches.Length < newel.Blank.Length);
            Assert.Equal(0, stretches.OnPaper(0, 0.2));
            Assert.Equal(stretches.Length * 0.2 + stretches.Breaks, stretches.OnPaper(newel.Blank.Length, 0.2), 9);
        }
    }

    [Fact]
    public void Marks_are_written_short() => Assert.Equal("F1, R3-4, T2, T4-6", ShortMarks.Joined(["T5", "R3", "T2", "F1", "T4", "R4", "T6", "T6"]));
}
