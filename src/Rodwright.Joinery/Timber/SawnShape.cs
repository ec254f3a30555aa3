using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Joinery.Timber;

/// <summary>
/// The outline a piece of wood may be sawn to where its finished ends are slanted: convex, so that every side is one straight cut, with the shop's allowances all round. Grain along x,
/// anticlockwise, in the box from the origin to its sawn length and width.
/// </summary>
/// <param name="Ring">Its corners, mm.</param>
/// <param name="Length">Of its box, mm.</param>
/// <param name="Width">Of its box, mm.</param>
public sealed record SawnShape(ImmutableArray<Point2> Ring, double Length, double Width)
{
    /// <summary>The shape round some finished points.</summary>
    /// <param name="finished">Points of the finished piece, grain along x.</param>
    /// <param name="length">Sawn length; no less than the points take.</param>
    /// <param name="width">Sawn width; no less than the points take.</param>
    /// <returns>Null where sawing it square wastes next to nothing, or the points do not fit.</returns>
    public static SawnShape? Of(IReadOnlyList<Point2> finished, double length, double width)
    {
        ArgumentNullException.ThrowIfNull(finished);
        if (finished.Count < 3) return null;
        var box = Box2.Of(finished);
        // What is left on is the same at both ends, and on both edges.
        var (x, y) = ((length - box.Width) / 2, (width - box.Height) / 2);
        if (x < -Tolerance.Joint || y < -Tolerance.Joint) return null;
        var grown = finished.Select(p => new Point2(p.X - box.MinX, p.Y - box.MinY))
            .SelectMany(p => new Point2[] { new(p.X, p.Y), new(p.X + 2 * x, p.Y), new(p.X + 2 * x, p.Y + 2 * y), new(p.X, p.Y + 2 * y) });
        var ring = Hull.Of(grown);
        // A slant that saves less than a twenty-fifth of the wood is not worth a second setting of the saw.
        return length * width - Path2.Polygon([.. ring]).Area > 0.04 * length * width ? new(ring, length, width) : null;
    }

    /// <summary>Turned end for end in its own plane.</summary>
    public SawnShape Turned() => this with { Ring = [.. Ring.Select(p => new Point2(Length - p.X, Width - p.Y))] };

    /// <summary>Turned over about its length: its other face up.</summary>
    public SawnShape Over() => this with { Ring = [.. Ring.Reverse().Select(p => new Point2(p.X, Width - p.Y))] };

    /// <summary>The outline that holds it wherever it lies across a wider strip: what a cut through the whole strip may leave of it, to be ripped to width afterwards.</summary>
    /// <param name="width">Of the strip, mm.</param>
    public SawnShape Across(double width) =>
        width - Width < Tolerance.Same ? this : this with { Ring = Hull.Of([.. Ring, .. Ring.Select(p => new Point2(p.X, p.Y + width - Width))]), Width = width };

    /// <summary>Where it ends at a height, leftmost and rightmost.</summary>
    public (double Left, double Right) At(double y)
    {
        var (left, right) = (double.PositiveInfinity, double.NegativeInfinity);
        for (var i = 0; i < Ring.Length; i++)
        {
            var (a, b) = (Ring[i], Ring[(i + 1) % Ring.Length]);
            if (y < Math.Min(a.Y, b.Y) - Tolerance.Same || y > Math.Max(a.Y, b.Y) + Tolerance.Same) continue;
            if (Math.Abs(a.Y - b.Y) < Tolerance.Same)
            {
                (left, right) = (Math.Min(left, Math.Min(a.X, b.X)), Math.Max(right, Math.Max(a.X, b.X)));
                continue;
            }
            var x = a.X + (b.X - a.X) * Math.Clamp((y - a.Y) / (b.Y - a.Y), 0, 1);
            (left, right) = (Math.Min(left, x), Math.Max(right, x));
        }
        return (left, right);
    }
}
