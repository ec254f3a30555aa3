namespace Rodwright.Geometry.Solids;

/// <summary>
/// A board with both arrises of one bent edge rounded: a tread whose nosing goes round the end of its step. The rounding follows the chords of the edge, mitred where they meet, so that every face is
/// flat and the solid closes by itself.
/// </summary>
public static class RoundedBoard
{
    /// <summary>The solid between w = 0 and w = -<paramref name="thickness"/>.</summary>
    /// <param name="outline">Closed, in the plane w = 0.</param>
    /// <param name="edge">Open; a stretch of the outline that never turns inwards, from one of its corners to another, where the outline turns away for at least the radius.</param>
    /// <param name="radius">Of the rounding, mm; at most half the thickness.</param>
    /// <param name="thickness">mm.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static Solid Of(Path2 outline, Path2 edge, double radius, double thickness, double chord = Tolerance.Chord)
    {
        var (chain, rest) = Parted((outline.Area < 0 ? outline.Reversed() : outline).Flattened(chord), edge);
        var profile = Profile(radius, thickness, chord);
        var patches = new FacePatches();
        // Corners of the rounding, row by row from the top down.
        var rows = profile.ConvertAll(p => Offset(chain, rest, p.In).ConvertAll(q => Point(q, p.W)));
        var (high, low) = (rest.ConvertAll(p => Point(p, 0)), rest.ConvertAll(p => Point(p, -thickness)));
        Face([.. rows[0], .. high]);
        Face([.. rows[^1].Concat(low).Reverse()]);
        for (var j = 0; j + 1 < rows.Count; j++)
            for (var i = 0; i + 1 < chain.Count; i++) Face([rows[j + 1][i], rows[j + 1][i + 1], rows[j][i + 1], rows[j][i]]);
        for (var k = 0; k + 1 < rest.Count; k++) Face([low[k], low[k + 1], high[k + 1], high[k]]);
        Face([low[0], high[0], .. rows.Select(r => r[^1])]);
        Face([high[^1], low[^1], .. rows.Select(r => r[0]).Reverse()]);
        return FaceMerge.Join(patches);

        int Point(Point2 p, double w) => AddPoint(patches, p, w);

        void Face(List<int> corners) => AddFace(patches, corners);
    }

    /// <summary>What the rounding takes from the square-edged board: a shell along each arris. Parameters as for <see cref="Of"/>.</summary>
    /// <param name="outline">Closed, in the plane w = 0.</param>
    /// <param name="edge">The stretch of it that is rounded.</param>
    /// <param name="radius">Of the rounding, mm.</param>
    /// <param name="thickness">mm.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static Solid Removed(Path2 outline, Path2 edge, double radius, double thickness, double chord = Tolerance.Chord)
    {
        var (chain, rest) = Parted((outline.Area < 0 ? outline.Reversed() : outline).Flattened(chord), edge);
        var patches = new FacePatches();
        foreach (var top in (bool[])[true, false])
        {
            var square = Row(chain, top ? 0 : -thickness);
            var rows = Quarter(radius, thickness, chord, top).ConvertAll(p => Row(Offset(chain, rest, p.In), p.W));
            // From the top down: the face of the board or the square edge first, then the round.
            if (!top) rows.Reverse();
            AddFace(patches, Turned([.. square, .. rows[0].AsEnumerable().Reverse()], top));
            for (var i = 0; i + 1 < chain.Count; i++)
            {
                AddFace(patches, Turned([rows[^1][i], rows[^1][i + 1], square[i + 1], square[i]], top));
                for (var j = 0; j + 1 < rows.Count; j++) AddFace(patches, Turned([rows[j][i], rows[j][i + 1], rows[j + 1][i + 1], rows[j + 1][i]], top));
            }
            AddFace(patches, Turned([.. rows.Select(r => r[0]), square[0]], top));
            AddFace(patches, Turned([.. rows.Select(r => r[^1]).Reverse(), square[^1]], top));
        }
        return FaceMerge.Join(patches);

        List<int> Row(List<Point2> points, double w) => points.ConvertAll(p => AddPoint(patches, p, w));

        static List<int> Turned(List<int> corners, bool top)
        {
            if (!top) corners.Reverse();
            return corners;
        }
    }

    private static int AddPoint(FacePatches patches, Point2 p, double w)
    {
        patches.Points.Add(new(p.X, p.Y, w));
        return patches.Points.Count - 1;
    }

    private static void AddFace(FacePatches patches, List<int> corners)
    {
        var origin = patches.Points[corners[0]];
        var normal = new Vector3(0, 0, 0);
        for (var i = 1; i + 1 < corners.Count; i++) normal += (patches.Points[corners[i]] - origin).Cross(patches.Points[corners[i + 1]] - origin);
        patches.AddRing(patches.Planes.Count, corners);
        patches.Planes.Add(new(origin, origin, 1 / normal.Length * normal));
    }

    /// <summary>The outline's corners along the edge, ends among them, and those of the rest between them.</summary>
    private static (List<Point2> Chain, List<Point2> Others) Parted(IReadOnlyList<Point2> ring, Path2 edge)
    {
        var (a, b) = (Nearest(edge.Vertices[0].At), Nearest(edge.Vertices[^1].At));
        var chain = Stretch(a, b);
        if (Math.Abs(LengthOf(chain) - edge.Length) > edge.Length / 100) (a, b) = (b, a);
        chain = Stretch(a, b);
        return (chain, Stretch(b, a)[1..^1]);

        int Nearest(Point2 p) => Enumerable.Range(0, ring.Count).MinBy(i => ring[i].DistanceTo(p));

        List<Point2> Stretch(int from, int to)
        {
            var found = new List<Point2> { ring[from] };
            for (var i = from; i != to;) found.Add(ring[i = (i + 1) % ring.Count]);
            return found;
        }
    }

    private static double LengthOf(List<Point2> chain) => chain.Zip(chain.Skip(1), (p, q) => p.DistanceTo(q)).Sum();

    /// <summary>The rounded edge in section from the top down: how far in from the edge, how high.</summary>
    private static List<(double In, double W)> Profile(double radius, double thickness, double chord)
    {
        var (upper, lower) = (Quarter(radius, thickness, chord, true), Quarter(radius, thickness, chord, false));
        // A half-round has one line where its quarters meet.
        return [.. upper, .. lower.Skip(thickness - 2 * radius > Tolerance.Same ? 0 : 1)];
    }

    /// <summary>The quarter at the top or the bottom arris, from the top down.</summary>
    private static List<(double In, double W)> Quarter(double radius, double thickness, double chord, bool top)
    {
        var n = new ChordArc(new(0, radius), new(radius, 0), Angle.Tan(Math.PI / 8)).Chords(chord);
        var points = Enumerable.Range(0, n + 1).Select(k => Math.PI / 2 * k / n).Select(a => (In: radius * (1 - Angle.Sin(a)), Up: radius * (1 - Angle.Cos(a))));
        return top ? [.. points.Select(p => (p.In, -p.Up))] : [.. points.Reverse().Select(p => (p.In, p.Up - thickness))];
    }

    /// <summary>The chain a distance further in, its ends on the outline's edges beside it.</summary>
    private static List<Point2> Offset(List<Point2> chain, List<Point2> rest, double by)
    {
        if (by == 0) return [.. chain];
        var lines = new List<Line2>();
        for (var i = 0; i + 1 < chain.Count; i++) lines.Add(Line2.Between(chain[i], chain[i + 1]).OffsetLeft(by));
        var found = new List<Point2> { Meet(lines[0], Line2.Between(rest[^1], chain[0])) };
        for (var i = 1; i < lines.Count; i++)
        {
            var turns = Math.Abs(lines[i - 1].Along.Cross(lines[i].Along)) > 1e-9;
            found.Add(turns ? Meet(lines[i - 1], lines[i]) : chain[i] + by * lines[i].Along.Left);
        }
        found.Add(Meet(lines[^1], Line2.Between(chain[^1], rest[0])));
        return found;
    }

    private static Point2 Meet(Line2 a, Line2 b) => a.Cross(b) ?? throw new ArgumentException("the outline turns away at the ends of its rounded edge");
}
