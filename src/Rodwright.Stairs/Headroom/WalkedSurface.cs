using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Headroom;

/// <summary>
/// What headroom is measured from over one step, across the whole clear width: level over floors and landings; over a step, the pitch surface between its nosing line and the
/// next. Between parallel nosings that is the plane through both; between nosings that are not parallel it rises evenly with the angle turned about the point where the two lines
/// meet, which makes every pitch line round the turn a helix.
/// </summary>
public sealed record WalkedSurface
{
    /// <summary>Number of the step; 0 for the floor at the foot, the number of risers for the upper floor.</summary>
    public required int Step { get; init; }

    /// <summary>What of it is walked, in the world, anticlockwise.</summary>
    public required ImmutableArray<Point2> Ring { get; init; }

    /// <summary>Height at the nosing, mm; of a level surface, its height.</summary>
    public required double Low { get; init; }

    /// <summary>Height at the next nosing, mm.</summary>
    public required double High { get; init; }

    /// <summary>Middle of the nosing, between the boundaries.</summary>
    public required Point2 MiddleFrom { get; init; }

    /// <summary>Middle of the next nosing.</summary>
    public required Point2 MiddleTo { get; init; }

    /// <summary>The nosing line, directed so that the stair climbs to its left.</summary>
    public required Line2 Front { get; init; }

    /// <summary>Distance of the next nosing, where the two are parallel, mm.</summary>
    internal double Depth { get; init; }

    /// <summary>Where the two nosing lines meet; null where they are parallel or the surface is level.</summary>
    internal Point2? Apex { get; init; }

    /// <summary>Angle from this nosing line to the next about the apex, radians, anticlockwise positive.</summary>
    internal double Turn { get; init; }

    /// <summary>Whether it is level.</summary>
    public bool IsLevel => High - Low < Tolerance.Same;

    /// <summary>Height at a place, mm.</summary>
    public double HeightAt(Point2 p)
    {
        if (IsLevel) return Low;
        if (Apex is not { } apex) return Low + (High - Low) * Front.LeftOf(p) / Depth;
        var from = p - apex;
        // Measured from the half of the nosing line that is walked.
        var start = Along(apex);
        return Low + (High - Low) * Angle.Atan2(start.Cross(from), start.Dot(from)) / Turn;
    }

    /// <summary>Places along a line where the clearance under a plane may be least: its ends, and where line and surface rise at one rate.</summary>
    /// <param name="gradient">Of the plane above, per mm.</param>
    /// <param name="a">From.</param>
    /// <param name="b">To.</param>
    internal IEnumerable<Point2> Turning(Vector2 gradient, Point2 a, Point2 b)
    {
        yield return a;
        yield return b;
        if (IsLevel || Apex is not { } apex) yield break;
        // On a + t d the angle changes by c / r² per t, c = (a - apex) x d: equal to the plane's rise where r² = c (High - Low) / (Turn g.d).
        var (d, from) = (b - a, a - apex);
        var rise = gradient.Dot(d);
        if (Math.Abs(rise) < 1e-12) yield break;
        var square = from.Cross(d) * (High - Low) / (Turn * rise);
        var (half, length) = (from.Dot(d), d.Dot(d));
        var root = half * half - length * (from.Dot(from) - square);
        if (square <= 0 || root < 0) yield break;
        root = Math.Sqrt(root);
        foreach (var t in new[] { (-half - root) / length, (-half + root) / length })
            if (t is > 0 and < 1) yield return a.Towards(b, t);
    }

    /// <summary>The line on which the surface has a height between its two, directed so that what is higher lies to its left.</summary>
    internal Line2 Level(double height)
    {
        var part = (height - Low) / (High - Low);
        if (Apex is not { } apex) return Front.OffsetLeft(part * Depth);
        var start = Along(apex);
        var turned = Vector2.At(start.Direction + part * Turn);
        return new(apex, Turn > 0 ? turned : -turned);
    }

    /// <summary>From the apex along the walked half of the nosing line.</summary>
    private Vector2 Along(Point2 apex) => (MiddleFrom - apex).Unit;
}
