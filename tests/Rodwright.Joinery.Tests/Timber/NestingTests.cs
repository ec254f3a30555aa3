using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Timber;

/// <summary>Pieces with slanted ends, head to tail on a board.</summary>
public sealed class NestingTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Fact]
    public void Two_equal_trapezoids_take_one_length_and_the_mean_of_the_other_with_the_kerf_along_the_slant()
    {
        // By hand: 1000 long at one edge, 600 at the other, 200 wide. The second, turned end for end, begins 600 behind the first; a kerf of 4 square to a slant of 2 to 1 is 4 sqrt(5) along the board.
        Wood Piece(string id) => new(id, id, "oak", 1000, 200, 25, 1000, 200, 28) { Shape = SawnShape.Of([new(0, 0), new(1000, 0), new(600, 200), new(0, 200)], 1000, 200) };
        var pair = Assert.Single(NestedPair.Of([Piece("a"), Piece("b")], 4, 1e-6, 0));
        Assert.Equal(1600 + 4 * Math.Sqrt(5), pair.Length, 5);
        // Marked out in whole millimetres: 8.94 is 9.
        Assert.Equal(1609, Assert.Single(NestedPair.Of([Piece("a"), Piece("b")], 4, 1, 0)).Length, 6);
        Assert.Equal(200, pair.Width);
    }

    [Fact]
    public void Pieces_from_strips_of_other_widths_and_square_ones_are_left_alone()
    {
        Wood Piece(string id, double width) => new(id, id, "oak", 1000, width, 25, 1000, width, 28) { Shape = SawnShape.Of([new(0, 0), new(1000, 0), new(600, width), new(0, width)], 1000, width) };
        Assert.Empty(NestedPair.Of([Piece("a", 200), Piece("b", 150)], 4, 1, 26));
        Assert.Null(SawnShape.Of([new(0, 0), new(1000, 0), new(1000, 200), new(0, 200)], 1010, 205));
    }

    [Fact]
    public void No_corner_of_an_outline_is_lost_behind_one_a_hair_to_its_left()
    {
        var hull = Hull.Of([new(0, 108), new(0, 180), new(1e-14, 98), new(1e-14, 190), new(187, 0), new(800, 0), new(800, 190)]);
        Assert.Contains(hull, p => p.Y == 98);
        Assert.Equal(5, hull.Length);
    }

    [Fact]
    public void A_narrower_piece_lies_behind_a_wider_one_and_is_ripped_to_width_after()
    {
        // By hand: the wider goes from 1000 to 600 over 200. The narrower, 180 wide, held wherever it lies across 200: 1000 long over the first 20, then to 600. Turned end for end its
        // slant is that of the wider where it is steepest, 400 in 180, and where the wider is 1000 long it is 600: 640 where the two are nearest, at 20 from the edge.
        Wood Piece(string id, double width) => new(id, id, "oak", 1000, width, 25, 1000, width, 28) { Shape = SawnShape.Of([new(0, 0), new(1000, 0), new(600, width), new(0, width)], 1000, width) };
        var pair = Assert.Single(NestedPair.Of([Piece("a", 200), Piece("b", 180)], 4, 1, 26));
        Assert.Equal(200, pair.Width);
        Assert.InRange(pair.Length, 1600 + 4 * Math.Sqrt(1 + 400 * 400 / (180.0 * 180)), 1600 + 50);
        var (one, other) = (Path2.Polygon([.. pair.FirstShape.Ring]), Path2.Polygon([.. pair.SecondShape.Ring.Select(p => new Point2(pair.Behind + p.X, p.Y))]));
        Assert.All(one.Vertices, v => Assert.True(!other.Holds(v.At) && other.DistanceTo(v.At) >= 4 - 1e-6));
        Assert.All(other.Vertices, v => Assert.True(!one.Holds(v.At) && one.DistanceTo(v.At) >= 4 - 1e-6));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_slanted_piece_holds_its_finished_wood_with_the_allowances(string name)
    {
        var list = CuttingList.Of(Stair.SetOut(Samples.Job(name)).Value!.Kit, UsualShop.For(Samples.Job(name)));
        foreach (var (piece, wood) in list.Pieces.SelectMany(p => p.Woods.Select(w => (p, w))).Where(x => x.w.Shape is not null))
        {
            var ring = Path2.Polygon([.. wood.Shape!.Ring]);
            Assert.True(ring.Area > 0);
            var box = ring.Bounds;
            Assert.True(box.MinX > -1e-6 && box.MinY > -1e-6 && box.MaxX < wood.SawnLength + 1e-6 && box.MaxY < wood.SawnWidth + 1e-6);
            if (piece.Part.Kind is not (PartKind.TaperedTread or PartKind.Tread)) continue;
            // A grid over the finished strip, laid in the middle of the sawn box: all of it is in the sawn wood, half the allowance inside.
            var (blank, i) = (piece.Part.Blank, piece.Woods.IndexOf(wood));
            var (low, high) = (blank.Width * i / piece.Woods.Length, blank.Width * (i + 1) / piece.Woods.Length);
            var outline = Path2.Polygon([.. piece.Part.FaceSide.Outline.Flattened(0.05).Select(blank.OnBoard)]);
            var points = (from x in Enumerable.Range(0, 200) from y in Enumerable.Range(0, 9)
                          let p = new Point2(blank.Length * (x + 0.5) / 200, low + (high - low) * (y + 0.5) / 9) where outline.Holds(p) select p).ToList();
            // Where along the board the strip begins is not known from outside: one shift holds them all.
            var shifts = Enumerable.Range(0, 400).Select(s => -points.Min(p => p.X) + s * 0.1);
            Assert.Contains(shifts, shift => points.All(p => ring.Holds(new(p.X + shift, p.Y - low + (wood.SawnWidth - (high - low)) / 2))));
        }
    }

    [Theory]
    [InlineData("double-kite")]
    [InlineData("left-kite-low")]
    [InlineData("balanced-turn")]
    public void Head_to_tail_never_costs_more_than_square(string name)
    {
        var list = CuttingList.Of(Stair.SetOut(Samples.Job(name)).Value!.Kit, UsualShop.For(Samples.Job(name)));
        var square = list with { Pieces = [.. list.Pieces.Select(p => p with { Woods = [.. p.Woods.Select(w => w with { Shape = null })] })] };
        var (nested, plain) = (BoardPlan.Of(list), BoardPlan.Of(square));
        Assert.True(nested.Cost <= plain.Cost + 1e-6, $"{nested.Cost} nested, {plain.Cost} square");
        Assert.True(nested.IsProven);
        Assert.True(nested.Bound <= nested.Cost + 1e-6);
    }
}
