using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Rod.Sheets;

/// <summary>Notes flowed into the columns of a box; when they would not fit, in smaller lettering.</summary>
public static class PanelNotes
{
    private static readonly double[] Heights = [5, 3.5, 2.5, 1.8];

    /// <summary>The notes; each starts a new line.</summary>
    /// <param name="notes">In order of importance: what fits at no lettering is left off at the end.</param>
    /// <param name="box">Room, mm of paper.</param>
    /// <param name="height">Of the capitals, mm; smaller where that lets all notes fit.</param>
    public static IReadOnlyList<Mark> Draw(IEnumerable<string> notes, Box2 box, double height)
    {
        var all = notes.ToList();
        var best = new List<Mark>();
        foreach (var size in Heights.Where(h => h <= height))
        {
            if (Try(all, box, size, 28, best) || Try(all, box, size, 21, best)) break;
        }
        return best;
    }

    private static bool Try(List<string> notes, Box2 box, double height, double narrowest, List<Mark> marks)
    {
        marks.Clear();
        var pitch = FlowText.Pitch * height;
        var gap = 0.15 * pitch;
        var columns = Math.Max(1, (int)((box.Width + 5) / (narrowest * height + 5)));
        var width = (box.Width - (columns - 1) * 5) / columns;
        var (column, y) = (0, box.MaxY);
        foreach (var note in notes)
        {
            var lines = FlowText.Wrap(note, width, height);
            var deep = FlowText.HeightOf(lines.Count, height);
            if (y - deep < box.MinY - 0.01)
            {
                if (++column >= columns) return false;
                y = box.MaxY;
                if (y - deep < box.MinY - 0.01) return false;
            }
            marks.AddRange(FlowText.Draw(new(box.MinX + column * (width + 5), y), width, note, height).Marks);
            y -= pitch * lines.Count + gap;
        }
        return true;
    }
}
