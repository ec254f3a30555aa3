using Rodwright.Geometry;

namespace Rodwright.Rod.Board;

/// <summary>
/// Lays pieces out on the board: plan and strings first, newels in a row, tapered steps in a row or a few; each as high as it goes, then as far to the
/// left, on a board as wide as gives it a good shape and leaves little of it bare. Sizes count in coarse steps, so that a small change of a number moves
/// no neighbour.
/// </summary>
internal static class BoardLayout
{
    private const double Margin = 20; // round all, mm
    private const double Gap = 20; // least between pieces, mm
    private const double Coarse = 20; // mm
    private const double Growth = 1.03; // room left for a piece whose number is being dragged
    private const double Shape = 1.55; // width to height that suits a screen and a wall
    private const double Slack = 0.1; // off that shape, as a logarithm, that costs nothing

    /// <summary>The board's size, and the lower left corner of each piece.</summary>
    /// <param name="pieces">In order, the plan first.</param>
    /// <param name="mirrored">Whether they run from the right.</param>
    public static (Vector2 Size, IReadOnlyList<Point2> Corners) Lay(IReadOnlyList<PieceDraft> pieces, bool mirrored)
    {
        var cells = pieces.Select(p => new Cell(Up(Growth * p.Width + Gap), Up(Growth * p.Height + Gap))).ToArray();
        var (best, least) = (new Found(0, 0, []), double.PositiveInfinity);
        var area = cells.Sum(c => c.Width * c.Height);
        foreach (var blocks in Orders(pieces, cells))
        {
            foreach (var width in Widths(blocks, area))
            {
                var tops = new Point2[blocks.Count];
                var (across, deep) = new Skyline(width).Place(blocks, tops);
                var cost = 2 * Math.Max(0, Math.Abs(Math.Log((across + Gap) / (deep + Gap) / Shape)) - Slack) + (1 - area / (across * deep)) + 0.03 * Ragged(blocks, tops);
                if (cost >= least - 1e-9) continue;
                least = cost;
                best = new(across, deep, [.. blocks.SelectMany((b, i) => b.Pieces.Select(p => (p.Index, At: tops[i] + p.Offset))).OrderBy(p => p.Index).Select(p => p.At)]);
            }
        }
        var size = new Vector2(best.Width - Gap + 2 * Margin, best.Height - Gap + 2 * Margin);
        return (size,
        [
            .. pieces.Select((p, i) => new Point2(
                mirrored ? size.X - Margin - best.Tops[i].X - p.Width : Margin + best.Tops[i].X, size.Y - Margin - best.Tops[i].Y - p.Height)),
        ]);
    }

    /// <summary>The places of an earlier board, if the pieces still go there; null when they do not.</summary>
    public static (Vector2 Size, IReadOnlyList<Point2> Corners)? Keep(IReadOnlyList<PieceDraft> pieces, RodBoard before, bool mirrored)
    {
        if (!pieces.Select(p => p.Id).SequenceEqual(before.Pieces.Select(p => p.Id))) return null;
        // Held by the upper corner they were laid from.
        var places = pieces.Zip(before.Pieces, (p, old) =>
        {
            var x = mirrored ? old.Place.MaxX - p.Width : old.Place.MinX;
            return new Box2(x, old.Place.MaxY - p.Height, x + p.Width, old.Place.MaxY);
        }).ToList();
        var board = new Box2(Margin / 2, Margin / 2, before.Width - Margin / 2, before.Height - Margin / 2);
        for (var i = 0; i < places.Count; i++)
        {
            if (!board.Holds(places[i])) return null;
            for (var j = i + 1; j < places.Count; j++) if (places[i].Grown(Gap / 2).Overlaps(places[j])) return null;
        }
        return (new(before.Width, before.Height), [.. places.Select(p => new Point2(p.MinX, p.MinY))]);
    }

    /// <summary>Widths to try: narrower boards come out upright, wider ones mostly bare; but all in one row always.</summary>
    private static IEnumerable<double> Widths(IReadOnlyList<Block> blocks, double area)
    {
        var (widest, whole, square) = (blocks.Max(b => b.Size.Width), blocks.Sum(b => b.Size.Width), Math.Sqrt(area));
        for (var width = Math.Max(widest, Up(1.1 * square)); width < Math.Min(whole, 2 * square); width += 2 * Coarse) yield return width;
        yield return whole;
    }

    /// <summary>What may be tried: steps in one row, two or more, before the newels or after them.</summary>
    private static IEnumerable<IReadOnlyList<Block>> Orders(IReadOnlyList<PieceDraft> pieces, Cell[] cells)
    {
        List<int> Of(BoardPieceKind kind) => [.. Enumerable.Range(0, pieces.Count).Where(i => pieces[i].Kind == kind)];
        var (newels, steps) = (Of(BoardPieceKind.Newel), Of(BoardPieceKind.TaperedStep));
        var first = Enumerable.Range(0, pieces.Count).Except(newels).Except(steps).Select(i => Block.Rows([i], 1, cells)).ToList();
        List<Block> row = newels.Count > 0 ? [Block.Rows(newels, newels.Count, cells)] : [];
        if (steps.Count == 0)
        {
            yield return [.. first, .. row];
            yield break;
        }
        foreach (var inRow in Enumerable.Range(1, steps.Count).Select(rows => (steps.Count + rows - 1) / rows).Distinct())
        {
            var all = Block.Rows(steps, inRow, cells);
            yield return [.. first, .. row, all];
            if (row.Count == 0) continue;
            yield return [.. first, all, .. row];
            yield return [first[0], all, .. first.Skip(1), .. row];
        }
    }

    /// <summary>How often a string stands lower or higher than the one before it.</summary>
    private static int Ragged(IReadOnlyList<Block> blocks, Point2[] tops)
    {
        var count = 0;
        for (var i = 1; i < blocks.Count; i++) if (Math.Abs(tops[i].Y - tops[i - 1].Y) > 1) count++;
        return count;
    }

    private static double Up(double size) => Math.Ceiling(size / Coarse - 0.001) * Coarse;

    private sealed record Found(double Width, double Height, IReadOnlyList<Point2> Tops);
}
