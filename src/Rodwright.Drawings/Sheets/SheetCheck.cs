using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>Reads a sheet as a careful eye would, before it is printed.</summary>
public static class SheetCheck
{
    private const double Touch = 0.15; // ink boxes may come this close to one another before they count as overlapping, mm
    private const double HeaviestLight = 0.3; // lines under this width may pass behind lettering, mm

    /// <summary>
    /// Everything that would not read: lettering over lettering, lettering crossed by a heavy line (0.35 or wider) that is not covered by a
    /// knockout, drawing outside the frame, letters the face has not. Marks are judged only as far as their window shows them.
    /// </summary>
    public static IReadOnlyList<SheetFault> Overlaps(Sheet sheet)
    {
        var faults = new List<SheetFault>();
        var all = FlatMarks.Of(sheet.AllMarks);
        var texts = new List<(TextMark Text, TurnedBox Box, int Order)>();
        var lines = new List<(StrokeMark Line, Box2 Box, int Order)>();
        for (var i = 0; i < all.Count; i++)
        {
            if (all[i].Mark is TextMark { Text.Length: > 0 } text && Shows(text, all[i].Window)) texts.Add((text, TurnedBox.Of(text, -Touch), i));
            else if (all[i].Mark is StrokeMark line && line.Pen.Width > HeaviestLight)
            {
                foreach (var seen in Seen(line, all[i].Window)) lines.Add((seen, seen.Bounds, i));
            }
        }
        for (var i = 0; i < texts.Count; i++)
        {
            var (text, box, order) = texts[i];
            for (var j = i + 1; j < texts.Count; j++)
            {
                if (box.Overlaps(texts[j].Box))
                    faults.Add(new(SheetFaultKind.TextOverText, $"“{text.Text}” overlaps “{texts[j].Text.Text}”", text.Bounds));
            }
            foreach (var (line, lineBox, lineOrder) in lines)
            {
                if (text.Knockout && lineOrder < order) continue;
                if (Meets(lineBox, box.Bounds) && Crosses(line.Path, box))
                    faults.Add(new(SheetFaultKind.TextOverLine, $"“{text.Text}” is crossed by a line of {line.Layer.Title.ToLowerInvariant()}", text.Bounds));
            }
            foreach (var c in text.Text)
            {
                if (!Lettering.Has(c)) faults.Add(new(SheetFaultKind.MissingLetter, $"“{text.Text}” uses a letter the face has not", text.Bounds));
            }
        }
        AddOutside(sheet, faults);
        return faults;
    }

    private static void AddOutside(Sheet sheet, List<SheetFault> faults)
    {
        var frame = sheet.Frame;
        foreach (var (mark, window) in FlatMarks.Of(sheet.Marks))
        {
            if (mark.Layer == Layer.Frame) continue;
            var bounds = window is { } w ? new ClipMark(w, [mark]).Bounds : mark.Bounds;
            if (bounds.IsEmpty || frame.Holds(bounds, 0.01)) continue;
            var name = mark is TextMark text ? $"“{text.Text}”" : $"a mark of {mark.Layer.Title.ToLowerInvariant()}";
            faults.Add(new(SheetFaultKind.OutsideFrame, $"{name} leaves the frame", bounds));
        }
    }

    private static IEnumerable<StrokeMark> Seen(StrokeMark line, Box2? window) => window is not { } w || w.Holds(line.Bounds)
        ? [line]
        : PathClip.Inside(line.Path, w).Select(piece => line with { Path = piece });

    private static bool Shows(TextMark text, Box2? window) => window is not { } w || w.Overlaps(text.Bounds);

    private static bool Meets(Box2 a, Box2 b) => a.MinX <= b.MaxX && b.MinX <= a.MaxX && a.MinY <= b.MaxY && b.MinY <= a.MaxY;

    private static bool Crosses(Path2 path, in TurnedBox box)
    {
        var points = path.Flattened(0.05);
        for (var i = 0; i + 1 < points.Count + (path.Closed ? 1 : 0); i++)
        {
            if (box.IsCrossedBy(points[i], points[(i + 1) % points.Count])) return true;
        }
        return false;
    }
}
