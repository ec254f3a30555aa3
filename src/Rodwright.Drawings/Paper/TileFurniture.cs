using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Paper;

/// <summary>What a tile carries round its window.</summary>
internal static class TileFurniture
{
    private const string Instruction = "Print at 100 %, no scaling; measure the bars first.";
    private const double Arm = 4; // of a register cross, mm
    private const double KeyWidth = 44;
    private const double KeyHeight = 24;

    public static IEnumerable<Mark> Draw(Sheet sheet, TileGrid grid, Tile tile)
    {
        var window = TileGrid.WindowOn(grid.Page);
        var border = new StrokeMark(Path2.Rectangle(window.MinX, window.MinY, window.MaxX, window.MaxY), Pens.Rule, Layer.Frame);
        return [border, .. Crosses(grid, tile), .. Neighbours(grid, tile, window), .. Strip(sheet, grid, tile, window), .. KeyPlan(sheet, grid, tile, window)];
    }

    private static IEnumerable<Mark> Crosses(TileGrid grid, Tile tile)
    {
        foreach (var cross in grid.Crosses)
        {
            var w = tile.Window;
            if (cross.X < w.MinX || cross.X > w.MaxX || cross.Y < w.MinY || cross.Y > w.MaxY) continue;
            var at = cross + tile.Shift;
            yield return StrokeMark.Line(at - new Vector2(Arm, 0), at + new Vector2(Arm, 0), Pens.Dimension, Layer.Frame);
            yield return StrokeMark.Line(at - new Vector2(0, Arm), at + new Vector2(0, Arm), Pens.Dimension, Layer.Frame);
            yield return new StrokeMark(Path2.Circle(at, Arm / 2), Pens.Dimension, Layer.Frame);
        }
    }

    private static IEnumerable<Mark> Neighbours(TileGrid grid, Tile tile, Box2 window)
    {
        var upright = Angle.FromDegrees(90);
        if (grid.Neighbour(tile, -1, 0) is { } left) yield return Joins(left, new(window.MinX - 3.5, window.MaxY - 26), upright);
        if (grid.Neighbour(tile, 1, 0) is { } right) yield return Joins(right, new(window.MaxX + 3.5, window.Centre.Y), upright);
        if (grid.Neighbour(tile, 0, -1) is { } above) yield return Joins(above, new(window.Centre.X, window.MaxY + 3.5), default);
        if (grid.Neighbour(tile, 0, 1) is { } below) yield return Joins(below, new(window.Centre.X, window.MinY - 3.2), default);
    }

    private static TextMark Joins(Tile other, Point2 at, Angle turn) => new(
        at, "joins tile " + Number.Print(other.Number, 0), 2.5, Layer.Frame, HorizontalAnchor.Middle, VerticalAnchor.Middle, turn);

    private static IEnumerable<Mark> Strip(Sheet sheet, TileGrid grid, Tile tile, Box2 window)
    {
        var left = window.MinX;
        var width = window.Width - KeyWidth - 6;
        var words = sheet.Block;
        var piece = string.Join("  ", new[] { words?.Mark, words is { Piece.Length: > 0 } ? words.Piece : sheet.Title }.Where(w => w is { Length: > 0 }));
        var origin = string.Join("  ·  ", new[] { words?.Job, words?.Revision is { Length: > 0 } r ? "revision " + r : "", words?.Date }.Where(w => w is { Length: > 0 }));
        var number = new TextMark(
            new(left, 32.6), $"Tile {Number.Print(tile.Number, 0)} of {Number.Print(grid.Tiles.Length, 0)}", 5, Layer.Frame, bold: true);
        var (pieceText, pieceHeight) = TextFit.Within(piece, width - number.Width - 5, 3.5);
        var (originText, originHeight) = TextFit.Within(origin, width, 2.5);
        return
        [
            number,
            new TextMark(new(left + number.Width + 5, 32.6), pieceText, pieceHeight, Layer.Frame),
            new TextMark(new(left, 27.2), originText, originHeight, Layer.Frame),
            new TextMark(new(left, 22.6), Instruction, 2.5, Layer.Frame, bold: true),
            .. CheckBar.Along(new(left, 11), sheet.Units),
            .. CheckBar.Up(new(window.MinX - 2.5, window.MinY), sheet.Units),
        ];
    }

    private static IEnumerable<Mark> KeyPlan(Sheet sheet, TileGrid grid, Tile tile, Box2 window)
    {
        var whole = grid.Tiles.Aggregate(Box2.Empty, (box, t) => box.With(t.Window));
        var ratio = Math.Max(1, Math.Max(whole.Width / KeyWidth, whole.Height / KeyHeight));
        var scale = Scale.OneTo(ratio);
        var room = new Box2(window.MaxX - KeyWidth, 11, window.MaxX, 11 + KeyHeight);
        var place = new Placement(scale, new(whole.MaxX, whole.Centre.Y), new(room.MaxX, room.Centre.Y));
        // Cells meet halfway along the overlap, as the pages will on the bench.
        yield return new FillMark([place.Map(Cell(grid, tile))], 0.45, Layer.Frame);
        foreach (var stroke in FlatMarks.Of(sheet.Marks).Select(m => m.Mark).OfType<StrokeMark>())
        {
            if (stroke.Layer == Layer.OutlineToCut) yield return new StrokeMark(place.Map(stroke.Path), Pens.Construction, Layer.Frame);
        }
        foreach (var other in grid.Tiles) yield return new StrokeMark(place.Map(Cell(grid, other)), Pens.Rule, Layer.Frame);
        // One height for all the numbers: the largest that suits the narrowest cell; none where none does.
        var cells = grid.Tiles.Select(t => place.Map(Cell(grid, t)).Bounds).ToList();
        var (least, low) = (cells.Min(c => c.Width), cells.Min(c => c.Height));
        var longest = Number.Print(grid.Tiles.Length, 0);
        foreach (var height in (double[])[2.5, 1.8])
        {
            if (Lettering.Width(longest, height) > least - 0.8 || height > low - 0.8) continue;
            foreach (var other in grid.Tiles)
            {
                if (other == tile) continue;
                yield return new TextMark(
                    cells[other.Number - 1].Centre, Number.Print(other.Number, 0), height, Layer.Frame, HorizontalAnchor.Middle, VerticalAnchor.Middle);
            }
            break;
        }
    }

    private static Path2 Cell(TileGrid grid, Tile tile)
    {
        var w = tile.Window;
        const double half = TileGrid.Overlap / 2;
        return Path2.Rectangle(
            w.MinX + (tile.Column > 0 ? half : 0), w.MinY + (tile.Row < grid.Rows - 1 ? half : 0),
            w.MaxX - (tile.Column < grid.Columns - 1 ? half : 0), w.MaxY - (tile.Row > 0 ? half : 0));
    }
}
