using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>Pieces that stay together on the board.</summary>
/// <param name="Size">What they take.</param>
/// <param name="Pieces">Each by its index, its upper left corner from the block's, y running down.</param>
internal sealed record Block(Cell Size, IReadOnlyList<(int Index, Vector2 Offset)> Pieces)
{
    /// <summary>Pieces in rows of so many, their upper edges in line.</summary>
    public static Block Rows(IReadOnlyList<int> pieces, int inRow, Cell[] cells)
    {
        var placed = new List<(int, Vector2)>();
        var (x, y, across, deep) = (0.0, 0.0, 0.0, 0.0);
        for (var i = 0; i < pieces.Count; i++)
        {
            if (i > 0 && i % inRow == 0) (x, y) = (0, deep);
            var cell = cells[pieces[i]];
            placed.Add((pieces[i], new(x, y)));
            x += cell.Width;
            (across, deep) = (Math.Max(across, x), Math.Max(deep, y + cell.Height));
        }
        return new(new(across, deep), placed);
    }
}
