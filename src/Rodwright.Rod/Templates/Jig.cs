using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Geometry.Offsets;
using Rodwright.Stairs.Shops;

namespace Rodwright.Rod.Templates;

/// <summary>
/// A jig for a hand router: a plate with an opening whose edge the guide bush follows. The cutter's centre keeps its radius within the housing; the bush, round the same centre, sweeps the opening. So the
/// opening stands half of bush less cutter outside the housing all along, and its corners are the bush's own. One jig for treads and one for risers, not one for both: a bush can only be led round a corner
/// of the plate in an arc, and where a nosing's underside meets the riser that arc would take wood that shows.
/// </summary>
/// <param name="Name">File-safe: jig-tread.</param>
/// <param name="Title">In words: tread and wedge.</param>
/// <param name="Housing">What is to be cut, in the template's frame.</param>
/// <param name="Opening">The plate's opening: one outline, or several where the cutter does not pass between.</param>
/// <param name="Left">What the cutter leaves of the housing.</param>
/// <param name="Rounded">Where the housing's own outline turns outwards, and by how much the wood's corner is rounded off there.</param>
public sealed record Jig(string Name, string Title, Path2 Housing, ImmutableArray<Path2> Opening, ImmutableArray<LeftPiece> Left, ImmutableArray<(Point2 At, double By)> Rounded)
{
    /// <summary>Of the plate round the opening, mm: the router's foot must stand on it.</summary>
    private const double Rim = 80;

    /// <summary>The plate.</summary>
    public Path2 Plate
    {
        get
        {
            var box = Opening.Aggregate(Box2.Empty, (b, o) => b.With(o.Bounds)).Grown(Rim);
            return Path2.Rectangle(box.MinX, box.MinY, box.MaxX, box.MaxY);
        }
    }

    /// <summary>The jig for a housing; null when the cutter does not go into it.</summary>
    /// <param name="name">File-safe.</param>
    /// <param name="title">In words.</param>
    /// <param name="housing">What is to be cut.</param>
    /// <param name="router">Bush and cutter.</param>
    public static Jig? For(string name, string title, Path2 housing, ShopRouter router)
    {
        if (!Offset.TryOf([housing], -(router.HandCutter / 2 - RoundCutter.Fit), out var centres) || centres.Count == 0) return null;
        return Offset.TryOf(centres, router.Bush / 2 - RoundCutter.Fit, out var opening) && RoundCutter.TryLeft([housing], router.HandCutter / 2, out var left)
            ? new(name, title, housing, [.. opening], left, [.. Turned(housing, router.Offset)]) : null;
    }

    /// <summary>The bush rolls round the plate's corner, and the cutter with it: as far as a circle of the offset stays out of a corner of the wood's angle.</summary>
    private static IEnumerable<(Point2, double)> Turned(Path2 housing, double offset)
    {
        for (var i = 0; i < housing.EdgeCount; i++)
        {
            var (a, b) = (housing.Edge((i + housing.EdgeCount - 1) % housing.EdgeCount), housing.Edge(i));
            if (a.Bulge != 0 || b.Bulge != 0) continue; // a nosing's round turns inwards, smoothly
            var (before, after) = ((a.To - a.From).Unit, (b.To - b.From).Unit);
            var turn = Angle.Atan2(before.Cross(after), before.Dot(after));
            if (turn > -Math.PI / 180) continue;
            var by = offset * (1 / Angle.Sin((Math.PI + turn) / 2) - 1);
            if (by > Tolerance.Print) yield return (b.From, by);
        }
    }
}
