using CsCheck;

namespace Rodwright.Geometry.Tests;

/// <summary>Generators of house-sized geometry.</summary>
internal static class Shapes
{
    /// <summary>Coordinates up to 10 m either way.</summary>
    public static Gen<double> Coordinates { get; } = Gen.Double[-10000, 10000];

    /// <summary>Points within 10 m of the origin each way.</summary>
    public static Gen<Point2> Points { get; } = Gen.Select(Coordinates, Coordinates, (x, y) => new Point2(x, y));

    /// <summary>Points in space.</summary>
    public static Gen<Point3> Points3 { get; } = Gen.Select(Coordinates, Coordinates, Coordinates, (x, y, z) => new Point3(x, y, z));

    /// <summary>Two points at least a millimetre apart.</summary>
    public static Gen<(Point2 From, Point2 To)> Chords { get; } = Gen.Select(Points, Points).Where((a, b) => a.DistanceTo(b) > 1);

    /// <summary>Bulges from shallow to more than three quarters of a circle, either way.</summary>
    public static Gen<double> Bulges { get; } =
        Gen.Select(Gen.Double[0.001, 3], Gen.Bool, (size, clockwise) => clockwise ? -size : size);

    /// <summary>Directions round the compass, radians.</summary>
    public static Gen<double> Directions { get; } = Gen.Double[-Math.PI, Math.PI];

    /// <summary>Closed anticlockwise outlines that do not cross themselves: corners at growing angles, some edges bulged a little.</summary>
    public static Gen<Path2> Outlines { get; } =
        from centre in Points
        from corners in Gen.Select(Gen.Double[0.3, 1], Gen.Double[400, 900], Gen.Double[-0.15, 0.15], Gen.Bool).Array[4, 9]
        select Outline(centre, corners);

    /// <summary>Any path, open or closed, that may cross itself.</summary>
    public static Gen<Path2> Paths { get; } =
        from chords in Gen.Select(Points, Bulges, Gen.Bool).Array[2, 8].Where(Apart)
        from closed in Gen.Bool
        select new Path2(chords.Select(c => new Vertex2(c.Item1, c.Item3 ? c.Item2 : 0)), closed);

    private static bool Apart((Point2 At, double Bulge, bool Bulged)[] corners)
    {
        for (var i = 0; i < corners.Length; i++) if (corners[i].At.DistanceTo(corners[(i + 1) % corners.Length].At) < 1) return false;
        return true;
    }

    private static Path2 Outline(Point2 centre, (double Turn, double Radius, double Bulge, bool Bulged)[] corners)
    {
        var whole = corners.Sum(c => c.Turn);
        var turned = 0.0;
        var vertices = new List<Vertex2>();
        foreach (var (turn, radius, bulge, bulged) in corners)
        {
            vertices.Add(new(centre + radius * Vector2.At(turned), bulged ? bulge : 0));
            turned += turn / whole * 2 * Math.PI;
        }
        return new(vertices, true);
    }
}
