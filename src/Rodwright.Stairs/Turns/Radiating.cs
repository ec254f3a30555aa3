using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// All riser faces through one centre at equal angles (setting-out.md 2.2, method 2). With the risers on the newel's centre lines the centre is the
/// newel's; offset risers move it out, away from the stair.
/// </summary>
public sealed class Radiating : TurnMethod
{
    private Radiating() { }

    /// <summary>The one instance.</summary>
    public static Radiating Instance { get; } = new();

    /// <inheritdoc/>
    public override string Id => "radiating";

    /// <inheritdoc/>
    public override string Title => "riser faces radiating from one centre at equal angles";

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting)
    {
        var (firstRiser, lastRiser, steps) = (setting.FirstRiser, setting.LastRiser, setting.Steps);
        // A half turn's first and last faces lie in one line where the offsets are equal; the centre is on it.
        var centre = site.Quarters == 1 ? new Point2(-lastRiser, -firstRiser) : new Point2(0, -(firstRiser + lastRiser) / 2);
        var path = WalkingPath.Of(site, firstRiser, lastRiser);
        var lines = new TurnLine[steps + 1];
        lines[0] = First(site, firstRiser);
        lines[steps] = Last(site, lastRiser);
        for (var j = 1; j < steps; j++)
        {
            var ray = new Line2(centre, Vector2.At(site.Quarters * Math.PI / 2 * j / steps));
            var walking = path.Crossing(ray) ?? throw new System.Diagnostics.UnreachableException();
            lines[j] = new(OnNewel(site, ray), walking, site.OnWalls(ray));
        }
        return lines;
    }

    /// <summary>The visible face the ray leaves by: past the arris the last crossing counts, before it face E or the string beyond it.</summary>
    private static Point2 OnNewel(TurnSite site, Line2 ray)
    {
        var h = site.HalfNewel;
        var onE = ray.Along.X > 1e-12 ? ray.Cross(new(new(h, 0), new(0, 1))) : null;
        if (onE is { } e && e.Y <= h) return e.Y >= -h ? e : ray.Cross(new(new(site.InnerFace, 0), new(0, 1))) ?? e;
        var onN = ray.Cross(new(new(0, h), new(1, 0)));
        if (onN is { } n && (site.Quarters == 1 || n.X >= -h)) return n.X >= -h ? n : ray.Cross(new(new(0, site.InnerFace), new(1, 0))) ?? n;
        var onW = ray.Cross(new(new(-h, 0), new(0, 1))) ?? throw new System.Diagnostics.UnreachableException();
        return onW.Y >= -h ? onW : ray.Cross(new(new(-site.InnerFace, 0), new(0, 1))) ?? onW;
    }
}
