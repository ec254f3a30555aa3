using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// Balanced (dancing) steps (setting-out.md 2.2, method 3): on the walking line every going is stepped as in the flights; what is shared out is the length of the
/// narrow line, between each end of the taper and the axis of the turn. A way of sharing it is an <see cref="InnerDivision"/>.
/// </summary>
public sealed class Balanced(string id, string title, InnerDivision division) : TurnMethod
{
    /// <inheritdoc/>
    public override string Id => id;

    /// <inheritdoc/>
    public override string Title => title;

    /// <inheritdoc/>
    public override bool Shares => true;

    /// <summary>How the narrow line is shared out.</summary>
    public InnerDivision Division => division;

    /// <inheritdoc/>
    public override IReadOnlyList<TurnLine> Lines(TurnSite site, TurnSetting setting)
    {
        var n = setting.Tapered;
        var path = WalkingPath.Of(site, setting.First, setting.Last);
        var stations = Stations(path, setting);
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
            var inner = site.OnNarrowLine(setting.First, Clear(along - setting.First, site, setting) + setting.First);
            var walking = path.At(stations[j]);
            lines[j] = new(inner, walking, site.OnWalls(Line2.Between(inner, walking)));
        }
        return lines;
    }

    /// <summary>Where the riser faces stand on the walking line: the flights' going in the steps they share, equal chords in the turn.</summary>
    private static double[] Stations(WalkingPath path, TurnSetting setting)
    {
        var stations = new double[setting.Tapered + 1];
        for (var j = 1; j <= setting.Before; j++) stations[j] = j * setting.Going;
        var chord = path.EqualChord(setting.Steps, setting.Before * setting.Going, path.Length - setting.After * setting.Going);
        for (var j = 1; j <= setting.Steps; j++) stations[setting.Before + j] = path.Step(stations[setting.Before + j - 1], chord);
        for (var j = 0; j <= setting.After; j++) stations[^(j + 1)] = path.Length - j * setting.Going;
        return stations;
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
    private static double Clear(double u, TurnSite site, TurnSetting setting)
    {
        var (low, high) = (-site.HalfNewel, site.HalfNewel * (2 * site.Quarters - 1));
        var (inside, outside) = (setting.Cover, setting.Riser + setting.Cover);
        if (u > low - outside && u < low + inside) return u - (low - outside) < low + inside - u ? low - outside : low + inside;
        if (u > high - inside && u < high + outside) return u - (high - inside) < high + outside - u ? high - inside : high + outside;
        return u;
    }
}
