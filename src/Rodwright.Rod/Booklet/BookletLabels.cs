using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Booklet;

/// <summary>Marks a picture's new lines: the row's number in bold, or each line's own mark where a row draws many.</summary>
internal static class BookletLabels
{
    public static IEnumerable<Mark> Place(IReadOnlyList<BookletRow> rows, LabelPlacer placer, Func<StageLine, Point2, Point2> onPaper, Box2 window)
    {
        foreach (var row in rows)
        {
            var first = row.Lines.Select(l => Spot(l, onPaper, window)).FirstOrDefault(p => p is not null);
            if (row.Entries.Count == 0)
            {
                if (first is { } at) foreach (var mark in placer.Place(row.Number, at, 3.5, bold: true)?.Marks ?? []) yield return mark;
                continue;
            }
            foreach (var line in row.Lines)
            {
                if (Spot(line, onPaper, window) is not { } spot) continue;
                foreach (var mark in placer.Place(ShortName.InPicture(line), spot, 2.5)?.Marks ?? []) yield return mark;
            }
        }
    }

    /// <summary>Where a line is best spoken of: the middle of its longest edge that is seen, a corner's own point, the upper end of a plumb line.</summary>
    private static Point2? Spot(StageLine line, Func<StageLine, Point2, Point2> onPaper, Box2 window)
    {
        if (line.Telling?.Id == "outline") return onPaper(line, line.Paths[0].Vertices[0].At);
        var spots = new List<(Point2 At, double Length)>();
        foreach (var path in line.Paths)
        {
            if (path.Closed)
            {
                spots.Add((onPaper(line, path.Bounds.Centre), path.Length));
                continue;
            }
            var points = path.Flattened(1);
            for (var i = 0; i + 1 < points.Count; i++)
            {
                var part = line.Telling?.Id == "risers" ? 0.98 : 0.5;
                spots.Add((onPaper(line, points[i].Towards(points[i + 1], part)), points[i].DistanceTo(points[i + 1])));
            }
        }
        var seen = spots.Where(s => s.At.X >= window.MinX && s.At.X <= window.MaxX && s.At.Y >= window.MinY && s.At.Y <= window.MaxY).ToList();
        return seen.Count == 0 ? null : seen.MaxBy(s => s.Length).At;
    }
}
