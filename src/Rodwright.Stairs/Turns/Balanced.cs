using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// Balanced (dancing) steps (setting-out.md 2.2, method 3): on the walking line every going is stepped as in the flights; what is shared out is the length of the
/// narrow line, between each end of the taper and the axis of the turn. A way of sharing it is an <see cref="InnerDivision"/>.
/// </summary>
public sealed class Balanced(string id, string title, InnerDivision division) : TurnMethod
{
    // Along a newel's face a riser at 45 degrees takes up 1.41 times its thickness; a little more keeps its end whole.
    private const double AstrideParts = 1.6;

    private static readonly double Diagonal = Angle.Cos(Math.PI / 4) + 1e-9;

    /// <inheritdoc/>
    public override string Id => id;

    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    public override bool Shares => true;

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting)
    {
        var n = setting.Tapered;
        var path = WalkingPath.Of(site, setting.First, setting.Last);
        var stations = path.Shared(setting);
        var narrow = site.NarrowLength(setting.First, setting.Last);
        var axis = setting.First + site.Quarters * Math.PI / 4 * site.Walking;
        var innerAxis = setting.First + site.Quarters * site.HalfNewel;
        var up = Side([.. stations.TakeWhile(s => s <= axis + Tolerance.Same)], axis, innerAxis, setting);
        var down = Side([.. stations.Reverse().TakeWhile(s => s > axis + Tolerance.Same).Select(s => path.Length - s)], path.Length - axis, narrow - innerAxis, setting);
        var lines = new TurnLine[n + 1];
        lines[0] = First(site, setting.First);
        lines[n] = Last(site, setting.Last);
        for (var j = 1; j < n; j++)
        {
            var along = j < up.Length ? up[j] : narrow - down[n - j];
            var walking = path.At(stations[j]);
            var inner = site.OnNarrowLine(setting.First, Clear(along - setting.First, walking, site, setting) + setting.First);
            lines[j] = new(inner, walking, site.OnWalls(Line2.Between(inner, walking)));
        }
        return lines;
    }

    private double[] Side(double[] stations, double axis, double innerAxis, TurnSetting setting)
    {
        var whole = stations.Length - 1;
        // How much of the step across the axis lies on this side; none where a riser stands on the axis itself.
        var part = axis - stations[^1] < Tolerance.Same ? 0 : 0.5;
        return division.Share(new(stations, axis, innerAxis, whole, part, setting.Narrow));
    }

    /// <summary>
    /// A riser is housed in the newel or in the string, never on the end of the newel between them: one that would stand there is moved to the nearer of the two
    /// places that keep the cover (setting-out.md 2.2).
    /// </summary>
    private static double Clear(double u, Point2 walking, TurnSite site, TurnSetting setting)
    {
        var (low, high) = (-site.HalfNewel, site.HalfNewel * (2 * site.Quarters + 1));
        var thick = AstrideParts * setting.Riser;
        // Its back lies further up the stair: into the newel at the lower end, away from it at the upper one. On the string it also passes clear of the newel, which stands proud.
        if (Off(low - thick - setting.Cover - Lean(low - thick - setting.Cover), low + setting.Cover) is { } lower) return lower;
        // There the nosing, in front of the riser, passes clear too.
        var past = high + setting.Cover + AstrideParts * setting.Nosing;
        if (Off(high - thick - setting.Cover, past + Lean(past)) is { } upper) return upper;
        // Nor does it stand astride an arris: square enough to the face before it, its back keeps to that face; otherwise its own face is on the arris, all of it on the next.
        for (var (arris, normal) = (site.HalfNewel, new Vector2(1, 0)); arris < high; (arris, normal) = (arris + 2 * site.HalfNewel, normal.Left))
        {
            if (u <= arris - 2 * setting.Riser || u >= arris) continue;
            var cosine = (walking - site.OnNarrowLine(0, arris)).Unit.Dot(normal);
            return cosine > Diagonal ? Math.Min(u, arris - setting.Riser / cosine - 1) : arris;
        }
        return u;

        // How far a riser that starts on the string at u has come along it by the time it passes the newel's face.
        double Lean(double at)
        {
            var toward = walking - site.OnNarrowLine(0, at);
            var (away, along) = at < 0 ? (toward.X, toward.Y) : site.Quarters == 1 ? (toward.Y, toward.X) : (-toward.X, toward.Y);
            return Math.Max(0, (site.HalfNewel - site.InnerFace) * along / away);
        }

        double? Off(double from, double to) => u <= from || u >= to ? null : u - from < to - u ? from : to;
    }
}
