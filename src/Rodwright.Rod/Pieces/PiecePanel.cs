using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Pieces;

/// <summary>Fills the panel of a piece's sheet: where it sits in the stair, then words.</summary>
internal static class PiecePanel
{
    /// <summary>The marks.</summary>
    /// <param name="start">The sheet.</param>
    /// <param name="stair">The stair.</param>
    /// <param name="ids">The pieces to fill on the key plan.</param>
    /// <param name="words">Beside it.</param>
    /// <param name="indent">Room kept free between the key plan and the rest, mm.</param>
    public static IReadOnlyList<Mark> Draw(
        SheetStart start, Stair stair, IReadOnlyCollection<string> ids, string words, double indent = 0)
    {
        var panel = start.Panel;
        var key = new Box2(panel.MinX, panel.MinY, panel.MinX + Math.Min(panel.Height, 42), panel.MaxY);
        var marks = new List<Mark>(KeyPlan.Draw(stair, ids, key));
        var (x, y) = (key.MaxX + 4 + indent, panel.MaxY);
        var width = panel.MaxX - x;
        foreach (var height in (double[])[start.Lettering.Words, 2.5, 2.2, 1.8])
        {
            var text = FlowText.Draw(new(x, y), width, words, height);
            if (text.Height > y - panel.MinY + 0.5 && height > 1.8) continue;
            marks.AddRange(text.Marks);
            break;
        }
        return marks;
    }

    /// <summary>A table with one column for each entry, broken where the width ends.</summary>
    public static IEnumerable<Table> Across(double width, double textHeight, string[] heads, IReadOnlyList<string[]> entries)
    {
        var head = 3.5 + heads.Max(h => Lettering.Width(h, textHeight, bold: true));
        var each = 3.5 + entries.SelectMany(e => e).Max(c => Lettering.Width(c, textHeight, bold: true));
        var fit = Math.Max(1, (int)Math.Floor((width - head) / each));
        for (var from = 0; from < entries.Count; from += fit)
        {
            var some = entries.Skip(from).Take(fit).ToList();
            yield return new(
                [new(heads[0], head), .. some.Select(e => new TableColumn(e[0], each, HorizontalAnchor.End))],
                Enumerable.Range(1, heads.Length - 1).Select(row => (IReadOnlyList<string>)[heads[row], .. some.Select(e => e[row])]), textHeight);
        }
    }
}
