namespace Rodwright.Geometry;

/// <summary>An unbounded straight line: a point on it and a unit direction.</summary>
public readonly record struct Line2
{
    /// <summary>A line through <paramref name="through"/> along <paramref name="along"/> (any length but zero).</summary>
    /// <exception cref="ArgumentException">The direction has no length.</exception>
    public Line2(Point2 through, Vector2 along)
    {
        if (!(along.Length > 0)) throw new ArgumentException("a line needs a direction", nameof(along));
        Through = through;
        Along = along.Unit;
    }

    /// <summary>A point on the line.</summary>
    public Point2 Through { get; }

    /// <summary>Unit direction.</summary>
    public Vector2 Along { get; }

    /// <summary>The line through two different points, directed from the first to the second.</summary>
    public static Line2 Between(Point2 a, Point2 b) => new(a, b - a);

    /// <summary>The parallel line <paramref name="distance"/> to the left of the direction (negative: to the right).</summary>
    public Line2 OffsetLeft(double distance) => new(Through + distance * Along.Left, Along);

    /// <summary>Distance of a point to the left of the line (negative: to the right).</summary>
    public double LeftOf(Point2 p) => Along.Cross(p - Through);

    /// <summary>How far along the direction a point lies from <see cref="Through"/>.</summary>
    public double Station(Point2 p) => Along.Dot(p - Through);

    /// <summary>The point at a station.</summary>
    public Point2 At(double station) => Through + station * Along;

    /// <summary>Where two lines cross; null when they are parallel (sine of the angle under 1e-12).</summary>
    public Point2? Cross(Line2 other)
    {
        var sine = Along.Cross(other.Along);
        if (Math.Abs(sine) < 1e-12) return null;
        return At((other.Through - Through).Cross(other.Along) / sine);
    }
}
