using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>How a drawing is divided over pages of one size: windows that overlap, and crosses to lay the pages together by.</summary>
public sealed record TileGrid
{
    /// <summary>How much neighbouring tiles share, mm.</summary>
    public const double Overlap = 10;

    /// <summary>Divides an extent over pages.</summary>
    /// <param name="extent">What must be shown, mm of the large sheet.</param>
    /// <param name="page">The pages.</param>
    /// <exception cref="ArgumentException">The page has no room for a tile (see <see cref="IsLargeEnough"/>).</exception>
    public TileGrid(Box2 extent, PaperSize page)
    {
        if (!IsLargeEnough(page)) throw new ArgumentException($"{page.Name} has no room for a tile and its bars", nameof(page));
        Extent = extent;
        Page = page;
        var room = WindowOn(page);
        (Columns, Rows) = (Count(extent.Width, room.Width), Count(extent.Height, room.Height));
        // What is left over is shared out evenly round the drawing.
        var left = extent.Centre.X - Span(Columns, room.Width) / 2;
        var top = extent.Centre.Y + Span(Rows, room.Height) / 2;
        var tiles = ImmutableArray.CreateBuilder<Tile>();
        for (var row = 0; row < Rows; row++)
        {
            for (var column = 0; column < Columns; column++)
            {
                var (x, y) = (left + column * (room.Width - Overlap), top - row * (room.Height - Overlap));
                var window = new Box2(x, y - room.Height, x + room.Width, y);
                tiles.Add(new(tiles.Count + 1, column, row, window, new(room.MinX - window.MinX, room.MinY - window.MinY)));
            }
        }
        Tiles = tiles.ToImmutable();
        Crosses = [.. FindCrosses()];
    }

    /// <summary>What is shown, mm of the large sheet.</summary>
    public Box2 Extent { get; }

    /// <summary>The pages.</summary>
    public PaperSize Page { get; }

    /// <summary>Tiles in a row.</summary>
    public int Columns { get; }

    /// <summary>Tiles in a column.</summary>
    public int Rows { get; }

    /// <summary>The tiles, along the rows, top row first.</summary>
    public ImmutableArray<Tile> Tiles { get; }

    /// <summary>Register crosses, mm of the large sheet, each in the overlap of two or four tiles.</summary>
    public ImmutableArray<Point2> Crosses { get; }

    /// <summary>Least side of a page that can carry a tile, mm: a window worth the paper and both 100 mm bars.</summary>
    public const double LeastSide = 195;

    /// <summary>Whether a page has room for a tile.</summary>
    public static bool IsLargeEnough(PaperSize page) => page.Width >= LeastSide && page.Height >= LeastSide;

    /// <summary>The window of a page: inside its margins and above the strip that carries number, bar and key plan, mm of the page.</summary>
    public static Box2 WindowOn(PaperSize page) => new(20, 46, page.Width - 10, page.Height - 10);

    /// <summary>The neighbour in a direction (columns to the right, rows down); null at the edge.</summary>
    public Tile? Neighbour(Tile tile, int right, int down)
    {
        var (column, row) = (tile.Column + right, tile.Row + down);
        return column < 0 || row < 0 || column >= Columns || row >= Rows ? null : Tiles[row * Columns + column];
    }

    private static int Count(double need, double room) => Math.Max(1, (int)Math.Ceiling((need - Overlap - 1e-6) / (room - Overlap)));

    private static double Span(int count, double room) => count * room - (count - 1) * Overlap;

    private IEnumerable<Point2> FindCrosses()
    {
        foreach (var tile in Tiles)
        {
            var (w, half) = (tile.Window, Overlap / 2);
            var (right, bottom) = (tile.Column < Columns - 1, tile.Row < Rows - 1);
            if (right)
            {
                yield return new(w.MaxX - half, w.MinY + 0.25 * w.Height);
                yield return new(w.MaxX - half, w.MinY + 0.75 * w.Height);
            }
            if (bottom)
            {
                yield return new(w.MinX + 0.25 * w.Width, w.MinY + half);
                yield return new(w.MinX + 0.75 * w.Width, w.MinY + half);
            }
            if (right && bottom) yield return new(w.MaxX - half, w.MinY + half);
        }
    }
}
