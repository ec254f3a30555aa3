using System.Collections.Immutable;

namespace Rodwright.Geometry.Offsets;

/// <summary>
/// What a round cutter makes of an area it is to clear, bounded as in <see cref="Offset"/>. Its centre keeps its radius away from the edge; what it sweeps is the area
/// less what lies in corners, and in places narrower than it is wide. A cutter as wide as the place goes in.
/// </summary>
public static class RoundCutter
{
    /// <summary>A groove as wide as the cutter is cut by it: the cutter's radius is thought this much smaller, mm, a tenth of what a joint must keep.</summary>
    public const double Fit = Tolerance.Joint / 10;

    // What lies this near an edge lies on it.
    private const double On = 2e-5;

    // A side of a corner so shallow that what is left there hardly leaves the edge, mm long: nothing.
    private const double Trifle = 0.5;

    /// <summary>The way of the centre of a cutter along the edge of the area; none where it does not go in.</summary>
    /// <param name="area">What is to be cleared.</param>
    /// <param name="radius">mm.</param>
    public static IReadOnlyList<Path2> Centres(IReadOnlyList<Path2> area, double radius) => Offset.Of(area, -(radius - Fit));

    /// <summary>What a cutter clears of the area.</summary>
    /// <inheritdoc cref="Centres"/>
    public static IReadOnlyList<Path2> Cleared(IReadOnlyList<Path2> area, double radius) => Offset.Of(Centres(area, radius), radius - Fit);

    /// <summary>What a cutter leaves of the area: one for each corner, narrow place or tight arc.</summary>
    /// <inheritdoc cref="Centres"/>
    /// <exception cref="ArgumentException">The outlines are not closed, or cross one another.</exception>
    public static ImmutableArray<LeftPiece> Left(IReadOnlyList<Path2> area, double radius) =>
        TryLeft(area, radius, out var left) ? left : throw new ArgumentException("these outlines cross one another", nameof(area));

    /// <summary>The same where it is not known whether outlines cross or all but touch; false when the cutter cannot be followed round them.</summary>
    /// <param name="area">What is to be cleared.</param>
    /// <param name="radius">mm.</param>
    /// <param name="left">What the cutter leaves.</param>
    public static bool TryLeft(IReadOnlyList<Path2> area, double radius, out ImmutableArray<LeftPiece> left)
    {
        left = [];
        if (!Offset.TryOf(area, -(radius - Fit), out var centres) || !Offset.TryOf(centres, radius - Fit, out var cleared)) return false;
        var (walls, ways) = (Outlines.Edges(area).ToList(), Outlines.Edges(cleared).ToList());
        var wallsLeft = Off(walls, ways).ToList();
        var stretches = wallsLeft.Concat(Off(ways, walls).Select(s => s.Reversed)).ToList();
        if (!Outlines.TryClose(stretches, out var closed, Trifle)) return false;
        left = [.. closed.Select(l => PieceOf(l, wallsLeft, ways)).OrderBy(p => p.Shape.Bounds.MinX).ThenBy(p => p.Shape.Bounds.MinY)];
        return true;
    }

    /// <summary>What of some stretches does not run along others.</summary>
    private static IEnumerable<Stretch> Off(List<Stretch> stretches, List<Stretch> others) =>
        from stretch in stretches
        let near = others.Where(o => o.Box.Overlaps(stretch.Box)).ToList()
        from bit in Outlines.Cut(stretch, near.SelectMany(o => new[] { o.From, o.To }).Select(p => stretch.PartOf(p, On)).OfType<double>())
        let middle = bit.At(0.5)
        where near.TrueForAll(o => o.DistanceTo(middle) > On)
        select bit;

    private static LeftPiece PieceOf(Path2 shape, List<Stretch> walls, List<Stretch> ways)
    {
        var own = walls.Where(w => shape.DistanceTo(w.At(0.5)) < On && shape.DistanceTo(w.From) < On && shape.DistanceTo(w.To) < On).ToList();
        var corners = ImmutableArray.CreateBuilder<LeftCorner>();
        foreach (var (wall, next) in own.SelectMany(w => own.Where(n => n.From.DistanceTo(w.To) < On + Tolerance.Weld).Select(n => (w, n))))
        {
            var turn = Angle.Atan2(wall.Arriving.Cross(next.Leaving), wall.Arriving.Dot(next.Leaving));
            // Less than a degree is an arc read as chords.
            if (turn > Math.PI / 180) corners.Add(new(wall.To, Angle.FromRadians(Math.PI - turn), FromWays(wall.To)));
        }
        var deepest = own.Select(w => FromWays(w.At(0.5))).Concat(corners.Select(c => c.Away)).DefaultIfEmpty(0).Max();
        var arcs = own.Where(w => w.Bulge > 0).Select(w => w.Radius).ToList();
        return new(shape, corners.ToImmutable(), arcs.Count == 0 ? null : arcs.Min(), deepest);

        double FromWays(Point2 p) => ways.Count == 0 ? double.PositiveInfinity : ways.Min(w => w.DistanceTo(p));
    }
}
