using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>
/// A bar of exactly 100 mm with 10 mm divisions, or of exactly 4 inches with divisions of half an inch, to be measured before a true-size print is trusted: one along the sheet and one up it,
/// because printers and paper stretch each way differently.
/// </summary>
public static class CheckBar
{
    /// <summary>Length of the bar, mm.</summary>
    public const double Length = 100;

    /// <summary>Length of the bar in inches, mm.</summary>
    public const double InchLength = 4 * Units.Inch;

    private const double Thickness = 1.6;

    /// <summary>Room across the bar, figures included, mm.</summary>
    public const double Depth = 7;

    /// <summary>A bar along x; <paramref name="at"/> is its zero on its lower edge.</summary>
    public static IReadOnlyList<Mark> Along(Point2 at, Units? units = null) => Draw(new(Paper.Scale.Full, Point2.Origin, at), units ?? Units.Millimetres);

    /// <summary>A bar along y; <paramref name="at"/> is its zero on its right-hand edge, the figures stand to the left.</summary>
    public static IReadOnlyList<Mark> Up(Point2 at, Units? units = null) => Draw(new(Paper.Scale.Full, Point2.Origin, at, Angle.FromDegrees(90)), units ?? Units.Millimetres);

    /// <summary>The boxes inside the frame that the bars of a true-size sheet take. The upright bar stands in the filing margin.</summary>
    internal static ImmutableArray<Box2> BoxesOn(Sheet sheet)
    {
        var at = PlaceOn(sheet);
        return [new(at.X - 3, at.Y - 2, at.X + (sheet.Units.IsInches ? InchLength : Length) + 12, at.Y + Depth + 1)];
    }

    /// <summary>Both bars of a true-size sheet.</summary>
    internal static IEnumerable<Mark> DrawOn(Sheet sheet)
    {
        var at = PlaceOn(sheet);
        return [.. Along(at, sheet.Units), .. Up(new(SheetFrame.FilingEdge - 3, sheet.Frame.MinY + 4), sheet.Units)];
    }

    private static Point2 PlaceOn(Sheet sheet)
    {
        var (frame, block) = (sheet.Frame, TitleBlock.BoxOf(sheet.Paper));
        var beside = block.MinX - frame.MinX >= Length + 24;
        return new(frame.MinX + 5, (beside ? frame.MinY : block.MaxY) + 4);
    }

    private static IReadOnlyList<Mark> Draw(Placement place, Units units)
    {
        var marks = new List<Mark>();
        var (length, parts) = units.IsInches ? (InchLength, 8) : (Length, 10);
        var part = length / parts;
        for (var i = 0; i < parts; i++)
        {
            // Filled and open divisions by turns, on two rows, so that every division has a sharp corner to lay a rule to.
            var low = i % 2 == 0;
            marks.Add(new FillMark([place.Map(Path2.Rectangle(part * i, low ? 0 : Thickness / 2, part * i + part, low ? Thickness / 2 : Thickness))], 1, Layer.Frame));
        }
        marks.Add(new StrokeMark(place.Map(Path2.Rectangle(0, 0, length, Thickness)), Pens.Dimension, Layer.Frame));
        foreach (var end in (ReadOnlySpan<double>)[0, length / 2, length])
        {
            marks.Add(new StrokeMark(place.Map(Path2.Polyline(new(end, 0), new(end, Thickness + 1.6))), Pens.Dimension, Layer.Frame));
            marks.Add(place.Map(new TextMark(
                new(end, Thickness + 2.4), end == length ? units.With(end, 0) : units.Print(end, 0), 2.5, Layer.Frame,
                end == 0 ? HorizontalAnchor.Start : HorizontalAnchor.Middle)));
        }
        return marks;
    }
}
