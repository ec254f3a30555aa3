using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>The inside angle between a wall and the next, in one of three forms: degrees, two legs with the distance across, or the diagonal over both whole walls.</summary>
public sealed record CornerReading
{
    /// <summary>The angle inside the room, degrees; null in the other forms.</summary>
    public double? Angle { get; init; }

    /// <summary>From the corner back along this wall to a mark, mm (600 of 600, 800, 1000).</summary>
    public double? Leg { get; init; }

    /// <summary>From the corner along the next wall to a mark, mm.</summary>
    public double? NextLeg { get; init; }

    /// <summary>From mark to mark, mm.</summary>
    public Readings Across { get; init; } = Readings.None;

    /// <summary>From the beginning of this wall to the end of the next, mm.</summary>
    public Readings Diagonal { get; init; } = Readings.None;

    /// <summary>How many of the three forms were given, wholly or in part.</summary>
    public int Forms => (Angle is null ? 0 : 1) + (Leg is null && NextLeg is null && !Across.IsGiven ? 0 : 1) + (Diagonal.IsGiven ? 1 : 0);

    /// <summary>Whether two legs and the distance across are all there.</summary>
    public bool HasLegs => Leg is not null && NextLeg is not null && Across.IsGiven;

    /// <summary>The angle, degrees, from the readings' means; null when the three lengths make no triangle.</summary>
    /// <param name="wall">Length of this wall, mm.</param>
    /// <param name="next">Length of the next wall, mm.</param>
    public double? Degrees(double wall, double next) =>
        Angle ?? (HasLegs ? OfTriangle(Leg!.Value, NextLeg!.Value, Across.Mean) : OfTriangle(wall, next, Diagonal.Mean));

    /// <summary>The angle opposite the third side, degrees, by the law of cosines; null when the lengths make no triangle.</summary>
    public static double? OfTriangle(double a, double b, double across)
    {
        var cosine = (a * a + b * b - across * across) / (2 * a * b);
        return cosine is > -1 and < 1 ? Geometry.Angle.FromRadians(Geometry.Angle.Acos(cosine)).Degrees : null;
    }
}
