namespace Rodwright.Geometry.Solids;

/// <summary>A box square to its frame, millimetres.</summary>
/// <param name="Min">Its least corner.</param>
/// <param name="Max">Its greatest corner.</param>
public readonly record struct Box3(Point3 Min, Point3 Max)
{
    /// <summary>Edge lengths along x, y and z.</summary>
    public Vector3 Size => Max - Min;

    /// <summary>The box round at least one point.</summary>
    public static Box3 Of(IEnumerable<Point3> points)
    {
        var (min, max) = (new Point3(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity),
            new Point3(double.NegativeInfinity, double.NegativeInfinity, double.NegativeInfinity));
        foreach (var p in points)
        {
            min = new(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
            max = new(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
        }
        return new(min, max);
    }
}
