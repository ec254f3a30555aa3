using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class TilingTests
{
    private static readonly Gen<Sheet> AnySheet =
        from x in Gen.Double[-300, 300]
        from y in Gen.Double[-300, 300]
        from w in Gen.Double[5, 4500]
        from h in Gen.Double[5, 1500]
        select Sheet(Path2.Rectangle(x, y, x + w, y + h));

    private static Sheet Sheet(Path2 path) => new()
    {
        Name = "t", Title = "Template", Paper = new("big", 5000, 2000), TrueSize = true, Block = Sampler.Words,
        Marks = [new StrokeMark(path, Pens.Outline, Layer.OutlineToCut)],
    };

    private static readonly Gen<PaperSize> AnyPaper = Gen.OneOf(Gen.Const(PaperSize.A4), Gen.Const(PaperSize.A3), Gen.Const(PaperSize.A2.Landscape));

    [Fact]
    public void Windows_cover_the_whole_drawing_and_neighbours_share_ten_millimetres()
    {
        AnySheet.Select(AnyPaper).Holds((sheet, paper) =>
        {
            var grid = Tiling.GridFor(sheet, paper);
            var extent = Tiling.ExtentOf(sheet);
            // A grid of probes, its corners included: each lies in some window.
            for (var i = 0; i <= 20; i++)
            {
                for (var j = 0; j <= 20; j++)
                {
                    var p = new Point2(extent.MinX + extent.Width * i / 20, extent.MinY + extent.Height * j / 20);
                    Assert.Contains(grid.Tiles, t => t.Window.Holds(new Box2(p.X, p.Y, p.X, p.Y), 1e-9));
                }
            }
            foreach (var tile in grid.Tiles)
            {
                if (grid.Neighbour(tile, 1, 0) is { } right) Assert.Equal(10, tile.Window.MaxX - right.Window.MinX, 6);
                if (grid.Neighbour(tile, 0, 1) is { } below) Assert.Equal(10, below.Window.MaxY - tile.Window.MinY, 6);
            }
        }, iter: 200);
    }

    [Fact]
    public void Register_crosses_of_neighbours_coincide()
    {
        AnySheet.Select(AnyPaper).Holds((sheet, paper) =>
        {
            var grid = Tiling.GridFor(sheet, paper);
            var pages = Tiling.Cut(sheet, paper).Sheets;
            // Crosses are found on the pages as drawn (full circles), and carried back to the large sheet.
            var drawn = grid.Tiles.Select((tile, i) => Circles(pages[i]).Select(c => c - tile.Shift).ToList()).ToList();
            foreach (var tile in grid.Tiles)
            {
                foreach (var (right, down) in new[] { (1, 0), (0, 1) })
                {
                    if (grid.Neighbour(tile, right, down) is not { } other) continue;
                    var shared = drawn[tile.Number - 1].Count(a => drawn[other.Number - 1].Any(b => a.DistanceTo(b) < 1e-6));
                    Assert.True(shared >= 2, $"tiles {tile.Number} and {other.Number} share {shared} crosses");
                }
            }
        }, iter: 40);

        static IEnumerable<Point2> Circles(Sheet page) => page.Marks.OfType<StrokeMark>()
            .Where(s => s.Layer == Layer.Frame && s.Path.Closed && s.Path.Vertices.Length == 2).Select(s => s.Bounds.Centre);
    }

    [Fact]
    public void A_rectangle_across_tiles_reads_back_true()
    {
        var sheet = Sheet(Path2.Rectangle(100, 100, 1100, 700));
        var grid = Tiling.GridFor(sheet, PaperSize.A4);
        var pages = Tiling.Cut(sheet, PaperSize.A4).Sheets;
        Assert.True(grid.Tiles.Length > 12);
        var found = Box2.Empty;
        var length = 0.0;
        for (var i = 0; i < pages.Length; i++)
        {
            var clip = pages[i].Marks.OfType<ClipMark>().Single();
            // Each tile answers for the part of its window its right and lower neighbours do not show, so that nothing counts twice.
            var window = TileGrid.WindowOn(grid.Page);
            var own = new Box2(
                window.MinX, window.MinY + (grid.Neighbour(grid.Tiles[i], 0, 1) is null ? 0 : 10),
                window.MaxX - (grid.Neighbour(grid.Tiles[i], 1, 0) is null ? 0 : 10), window.MaxY);
            foreach (var stroke in clip.Marks.OfType<StrokeMark>())
            {
                foreach (var piece in PathClip.Inside(stroke.Path, own))
                {
                    var back = piece.Moved(-grid.Tiles[i].Shift);
                    found = found.With(back.Bounds);
                    length += back.Length;
                }
            }
        }
        Assert.Equal(3200, length, 6);
        Assert.True(new Box2(100, 100, 1100, 700).Holds(found, 1e-6) && found.Holds(new Box2(100, 100, 1100, 700), 1e-6));
    }

    [Fact]
    public void A_small_drawing_is_one_tile_with_both_bars_and_no_crosses()
    {
        var page = Assert.Single(Tiling.Cut(Sheet(Path2.Rectangle(0, 0, 100, 150)), PaperSize.A4).Sheets);
        Assert.Contains(page.Marks.OfType<TextMark>(), t => t.Text == "Tile 1 of 1");
        var bars = page.Marks.OfType<StrokeMark>().Where(s => s.Path.Closed && Math.Abs(Math.Max(s.Bounds.Width, s.Bounds.Height) - 100) < 1e-9).ToList();
        Assert.Equal(2, bars.Count);
        Assert.NotEqual(bars[0].Bounds.Width > 50, bars[1].Bounds.Width > 50);
        Assert.DoesNotContain(page.Marks.OfType<StrokeMark>(), s => s.Path.Vertices.Length == 2 && s.Path.Closed);
    }

    [Fact]
    public void Every_tile_names_its_neighbours_and_reads_clean()
    {
        foreach (var paper in new[] { PaperSize.A4, PaperSize.A3 })
        {
            var grid = Tiling.GridFor(Sampler.Template(), paper);
            var pages = Tiling.Cut(Sampler.Template(), paper).Sheets;
            foreach (var tile in grid.Tiles)
            {
                var page = pages[tile.Number - 1];
                var wanted = new[] { (-1, 0), (1, 0), (0, -1), (0, 1) }
                    .Select(d => grid.Neighbour(tile, d.Item1, d.Item2)).OfType<Tile>().Select(t => $"joins tile {t.Number}").Order();
                Assert.Equal(wanted, page.Marks.OfType<TextMark>().Select(t => t.Text).Where(t => t.StartsWith("joins", StringComparison.Ordinal)).Order());
                Assert.Contains(page.Marks.OfType<TextMark>(), t => t.Text == "Print at 100 %, no scaling; measure the bars first.");
                Assert.Single(page.Marks.OfType<FillMark>(), f => f.Tint == 0.45);
                Assert.Equal([], SheetCheck.Overlaps(page).Select(f => f.Message));
                Assert.True(new Box2(4, 4, page.Paper.Width - 4, page.Paper.Height - 4).Holds(page.Marks.Aggregate(Box2.Empty, (b, m) => b.With(m.Bounds))));
            }
        }
    }

    [Fact]
    public void Paper_too_small_for_a_tile_is_refused() =>
        Assert.Throws<ArgumentException>(() => Tiling.Cut(Sampler.Template(), new("A5", 148, 210)));
}
