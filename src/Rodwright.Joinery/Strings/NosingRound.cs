using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// The front of a tread's section on a face, top to bottom: square, or rounded as the nosing. Where the nosing meets the face at a slant the round is an
/// ellipse, drawn as arcs that leave it by less than 0.005; where the face ends within the round, the round is cut off upright.
/// </summary>
internal static class NosingRound
{
    public static List<Vertex2> Front(double from, double to, HousingShapes.NosingLine? nosing, double top, Practice practice)
    {
        var under = top - practice.Tread;
        if (nosing is not { } line) return Square();
        var radius = practice.Tread / 2;
        var depth = radius / line.Sine; // of the round, along the face
        // The last 0.05 along the face rises by less than 0.0001: square.
        if (line.At + depth <= from + 0.05) return Square();
        if (line.Sine > 1 - 1e-9 && line.At >= from - Tolerance.Same && line.At + depth <= to + Tolerance.Same)
            return [new(new(line.At + depth, top), 1), new(new(line.At + depth, under))];

        // On the upper half u = At + depth (1 - sin t), t from 0 at the flat to 90 degrees at the foremost point.
        var start = Angle.Asin(Math.Max(0, 1 - (to - line.At) / depth));
        var end = Angle.Asin(Math.Min(1, 1 - (from - line.At) / depth));
        // The flatter the ellipse, the more arcs it takes.
        var pieces = (int)Math.Ceiling(5 / Math.Sqrt(Math.Max(0.05, line.Sine)));
        var upper = Arcs(pieces, start, end, t => new(line.At + depth * (1 - Angle.Sin(t)), top - radius * (1 - Angle.Cos(t))));
        var lower = Arcs(pieces, end, start, t => new(line.At + depth * (1 - Angle.Sin(t)), under + radius * (1 - Angle.Cos(t))));
        // Met in the middle when nothing is cut off in front.
        return end > Math.PI / 2 - 1e-9 ? [.. upper.SkipLast(1), .. lower] : [.. upper, .. lower];

        List<Vertex2> Square() => [new(new(from, top)), new(new(from, under))];
    }

    private static List<Vertex2> Arcs(int pieces, double from, double to, Func<double, Point2> on)
    {
        var vertices = new List<Vertex2>();
        for (var i = 0; i < pieces; i++)
        {
            var (a, m, b) = (At(i), At(i + 0.5), At(i + 1));
            vertices.Add(new(a, Arc2.BulgeThrough(a, m, b)));
        }
        vertices.Add(new(At(pieces)));
        return vertices;

        Point2 At(double i) => on(from + (to - from) * i / pieces);
    }
}
