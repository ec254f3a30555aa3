using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;

namespace Rodwright.Testing;

/// <summary>Straight lines of a sheet written as PDF and read again by an independent reader, PdfPig; mm of paper.</summary>
public static class PdfLines
{
    private const double Millimetre = 25.4 / 72;

    /// <summary>Every straight stroke on the page.</summary>
    public static List<(Point2 A, Point2 B)> Of(Sheet sheet)
    {
        var file = new PdfFormat().Write(new("read-back", "read back", [sheet]))[0];
        using var pdf = PdfDocument.Open(file.Bytes.ToArray());
        var lines = new List<(Point2 A, Point2 B)>();
        foreach (var sub in pdf.GetPage(1).Paths.SelectMany(p => p))
        {
            var strokes = sub.Commands.OfType<PdfSubpath.Line>().ToList();
            lines.AddRange(strokes.Select(l => (Point(l.From), Point(l.To))));
            // A closing stroke has no command of its own.
            if (sub.IsClosed() && strokes.Count > 1) lines.Add((Point(strokes[^1].To), Point(sub.Commands.OfType<PdfSubpath.Move>().First().Location)));
        }
        return lines;
    }

    /// <summary>Whether every straight edge of a shape is on the page at full size, with its length and direction, all moved by one displacement, to 0.05 mm.</summary>
    public static bool Hold(IReadOnlyList<(Point2 A, Point2 B)> lines, Path2 shape)
    {
        var edges = Enumerable.Range(0, shape.EdgeCount).Select(shape.Edge).Where(e => e.Bulge == 0).ToList();
        var longest = edges.MaxBy(e => e.From.DistanceTo(e.To));
        return lines.Where(l => ((l.B - l.A) - (longest.To - longest.From)).Length < Tolerance.Print)
            .Select(l => l.A - longest.From)
            .Any(move => edges.TrueForAll(e => lines.Any(l =>
                l.A.DistanceTo(e.From + move) < Tolerance.Print && l.B.DistanceTo(e.To + move) < Tolerance.Print)));
    }

    private static Point2 Point(PdfPoint p) => new(p.X * Millimetre, p.Y * Millimetre);
}
