using Rodwright.Geometry;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// Outlines of housings on a face, along the face and up (setting-out.md 4), square to the face. The seat is what the piece fills; the shape adds the wedge
/// space. Used for strings, newels and the full-size templates alike.
/// </summary>
public static class HousingShapes
{
    /// <summary>An outline, with and without wedge space.</summary>
    /// <param name="Seat">What the piece fills.</param>
    /// <param name="Shape">What is cut.</param>
    public sealed record Housing(Path2 Seat, Path2 Shape);

    /// <summary>The nosing's edge against a face.</summary>
    /// <param name="At">Where it, produced, meets the face's line.</param>
    /// <param name="Sine">Sine of the angle between them.</param>
    public sealed record NosingLine(double At, double Sine);

    /// <summary>Where along a face a housing may lie.</summary>
    /// <param name="From">Lower end of the board's body.</param>
    /// <param name="To">Upper end.</param>
    public sealed record Reach(double From, double To);

    /// <summary>A tread's housing.</summary>
    /// <param name="from">Front of the section along the face.</param>
    /// <param name="to">Back of it.</param>
    /// <param name="nosing">Where the nosing's edge, produced, meets the face's line; null when the front is square.</param>
    /// <param name="top">Height of the tread's surface.</param>
    /// <param name="wedge">Where its wedge space begins and ends along the face; null for none.</param>
    /// <param name="reach">Limits of the board.</param>
    /// <param name="practice">Sizes.</param>
    public static Housing Tread(double from, double to, NosingLine? nosing, double top, (double From, double To)? wedge, Reach reach, Practice practice)
    {
        var under = top - practice.Tread;
        var end = Math.Min(to, reach.To);
        var front = NosingRound.Front(Math.Max(from, reach.From), end, nosing, top, practice);
        var begin = front[^1].At.X;
        if (begin > end - Tolerance.Same)
        {
            // Less than the round lies on this face: it closes with its own upright end.
            var whole = new Path2(front, true);
            return new(whole, whole);
        }
        var tail = new List<Vertex2> { new(new(end, under)), new(new(end, top)) };
        var seat = new Path2([.. front, .. tail], true);
        if (wedge is not { } w) return new(seat, seat);
        var thin = practice.TreadWedge.Thin;
        var (a, b) = (Math.Max(w.From, begin), Math.Min(w.To, reach.To));
        if (b - a < practice.TreadWedge.RunOn) return new(seat, seat);
        var thick = thin + (b - w.From) / practice.TreadWedge.Taper;
        List<Vertex2> outline = [.. front];
        if (a > begin + Tolerance.Same) outline.Add(new(new(a, under)));
        outline.Add(new(new(a, under - thin - (a - w.From) / practice.TreadWedge.Taper)));
        outline.Add(new(new(b, under - thick)));
        if (b > end + Tolerance.Same) outline.Add(new(new(b, under)));
        if (b <= end + Tolerance.Same) outline.Add(new(new(end, top)));
        else outline.AddRange(tail);
        return new(seat, new Path2(outline, true));
    }

    /// <summary>A riser's housing.</summary>
    /// <param name="from">Its face along the carrier's face.</param>
    /// <param name="to">Its back.</param>
    /// <param name="bottom">Lower edge of the riser.</param>
    /// <param name="top">Upper edge.</param>
    /// <param name="runOn">How far its wedge space runs on below the riser; 0 where it stops on a floor or tread.</param>
    /// <param name="wedged">False on newels and where nothing can be driven.</param>
    /// <param name="reach">Limits of the board.</param>
    /// <param name="practice">Sizes.</param>
    public static Housing Riser(double from, double to, double bottom, double top, double runOn, bool wedged, Reach reach, Practice practice)
    {
        var end = Math.Min(to, reach.To);
        var seat = Path2.Rectangle(from, bottom, end, top);
        var wedge = practice.RiserWedge;
        var start = bottom + wedge.Length;
        var low = bottom - runOn;
        var thick = Math.Min(reach.To, to + wedge.Thin + (start - low) / wedge.Taper) - to;
        if (!wedged || thick < wedge.Thin || start >= top) return new(seat, seat);
        var points = new List<Point2> { new(from, bottom), new(end, bottom) };
        if (runOn > 0) points.Add(new(end, low));
        points.AddRange([new(end + thick, low), new(end + Math.Min(thick, wedge.Thin), start), new(end, start), new(end, top), new(from, top)]);
        if (runOn <= 0) points.RemoveAt(1);
        return new(seat, Path2.Polygon(points));
    }
}
