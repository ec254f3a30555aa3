namespace Rodwright.Cutting.Models;

/// <summary>The ways of ripping a board into strips that are worth while: none that another way is at least as good as, strip by strip.</summary>
internal static class Layouts
{
    /// <summary>Layouts looked at for one board at most: far more than any joiner's list asks for.</summary>
    private const int Most = 4000;

    /// <summary>Every layout worth while, each a list of width classes, widest first; none where not even the narrowest fits.</summary>
    /// <param name="widths">The classes' widths, narrowest first.</param>
    /// <param name="board">The board's width.</param>
    /// <param name="saw">Kerf between strips; edges are trimmed only where the board is ripped.</param>
    /// <param name="isWhole">False when there were more than were looked at: nothing can then be proven.</param>
    public static List<int[]> Of(long[] widths, long board, Saw saw, out bool isWhole)
    {
        isWhole = true;
        var found = new List<int[]>();
        // Whole: a piece as wide as the board needs no rip.
        var widest = Array.FindLastIndex(widths, w => w <= board);
        if (widest < 0) return found;
        found.Add([widest]);
        if (widths[^1] == 0) return found;
        Extend([], widths.Length - 1, board - 2 * saw.EdgeTrim + saw.Kerf);
        isWhole = found.Count < Most;
        return [.. found.Where((l, i) => !found.Where((o, j) => j != i && Covers(o, l) && (!Covers(l, o) || j < i)).Any())];

        void Extend(List<int> strips, int from, long room)
        {
            var grew = false;
            for (var k = from; k >= 0 && found.Count < Most; k--)
            {
                if (widths[k] == 0 || widths[k] + saw.Kerf > room) continue;
                grew = true;
                strips.Add(k);
                Extend(strips, k, room - widths[k] - saw.Kerf);
                strips.RemoveAt(strips.Count - 1);
            }
            if (!grew && strips.Count > 0) found.Add([.. strips]);
        }
    }

    /// <summary>Whether every strip of one layout finds its own strip, as wide or wider, in another.</summary>
    public static bool Covers(int[] wide, int[] narrow)
    {
        if (wide.Length < narrow.Length) return false;
        for (var i = 0; i < narrow.Length; i++) if (wide[i] < narrow[i]) return false;
        return true;
    }
}
