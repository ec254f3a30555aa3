using Rodwright.Geometry;

namespace Rodwright.Stairs.Turns;

/// <summary>
/// The walking line through a turn, in the turn's frame: straight up at x = r, an arc about the newel's centre, straight on. Stations count from the first
/// riser; the straight parts reach on without end.
/// </summary>
/// <param name="Radius">r, from the newel's centre, mm.</param>
/// <param name="FirstRiser">e_in: the first riser's face is at y = -e_in.</param>
/// <param name="LastRiser">e_out: the last riser's face, as far past the newel's centre the other way.</param>
/// <param name="Quarters">1 for a quarter turn, 2 for a half.</param>
public sealed record WalkingPath(double Radius, double FirstRiser, double LastRiser, int Quarters = 1)
{
    /// <summary>The line through a site, for given offsets.</summary>
    public static WalkingPath Of(TurnSite site, double firstRiser, double lastRiser) => new(site.Walking, firstRiser, lastRiser, site.Quarters);

    private double Sweep => Quarters * Math.PI / 2;

    private double ArcEnd => FirstRiser + Sweep * Radius;

    /// <summary>Where the arc ends, exactly.</summary>
    private Point2 Exit => Quarters == 1 ? new(0, Radius) : new(-Radius, 0);

    /// <summary>Direction of the straight part after the turn.</summary>
    private Vector2 Out => Quarters == 1 ? new(-1, 0) : new(0, -1);

    /// <summary>L, from the first riser to the last.</summary>
    public double Length => ArcEnd + LastRiser;

    /// <summary>The point at a station.</summary>
    public Point2 At(double station)
    {
        if (station <= FirstRiser) return new(Radius, station - FirstRiser);
        if (station >= ArcEnd) return Exit + (station - ArcEnd) * Out;
        return Point2.Origin + Radius * Vector2.At((station - FirstRiser) / Radius);
    }

    /// <summary>The station one divider step of the given chord further on.</summary>
    public double Step(double station, double chord)
    {
        if (station < FirstRiser)
        {
            if (station + chord <= FirstRiser) return station + chord;
            // From a point a below the arc's start to the arc: law of cosines in the triangle with the newel's centre.
            var a = FirstRiser - station;
            var far = Math.Sqrt(Radius * Radius + a * a);
            var turn = Angle.Acos((2 * Radius * Radius + a * a - chord * chord) / (2 * Radius * far)) - Angle.Atan2(a, Radius);
            if (turn <= Sweep) return FirstRiser + turn * Radius;
        }
        else if (station < ArcEnd)
        {
            var turn = 2 * Angle.Asin(chord / (2 * Radius));
            if (station + turn * Radius <= ArcEnd) return station + turn * Radius;
        }
        else
        {
            return station + chord;
        }
        // On to the straight part: how far along it the chord reaches, from where it begins.
        var from = At(station);
        var (before, off) = ((Exit - from).Dot(Out), (Exit - from).Cross(Out));
        return ArcEnd - before + Math.Sqrt(Math.Max(0, chord * chord - off * off));
    }

    /// <summary>The chord that steps the whole length in <paramref name="steps"/> equal strides of the dividers.</summary>
    public double EqualChord(int steps) => EqualChord(steps, 0, Length);

    /// <summary>The chord that steps from one station to another in <paramref name="steps"/> equal strides of the dividers.</summary>
    public double EqualChord(int steps, double first, double last)
    {
        if (steps == 1) return At(first).DistanceTo(At(last));
        var arc = (last - first) / steps;
        // A chord is never longer than its arc, so the answer is at most the arc; 0.6 of it is below any chord of two or more to the turn.
        return Roots.Between(Overshoot, 0.6 * arc, arc * (1 + 1e-9)) ?? throw new System.Diagnostics.UnreachableException();

        double Overshoot(double chord)
        {
            var station = first;
            for (var i = 0; i < steps; i++) station = Step(station, chord);
            return station - last;
        }
    }

    /// <summary>The same line walked the other way.</summary>
    public WalkingPath Reversed => this with { FirstRiser = LastRiser, LastRiser = FirstRiser };

    /// <summary>Where the risers of a turn stand that shares its taper with steps of the flights: stepped with the flights' going from both ends, the turn between them in equal chords.</summary>
    public double[] Shared(TurnSetting setting)
    {
        var stations = new double[setting.Tapered + 1];
        for (var j = 1; j <= setting.Before; j++) stations[j] = Step(stations[j - 1], setting.Going);
        var back = 0.0;
        stations[^1] = Length;
        for (var j = 1; j <= setting.After; j++) stations[^(j + 1)] = Length - (back = Reversed.Step(back, setting.Going));
        var chord = EqualChord(setting.Steps, stations[setting.Before], stations[^(setting.After + 1)]);
        for (var j = 1; j < setting.Steps; j++) stations[setting.Before + j] = Step(stations[setting.Before + j - 1], chord);
        return stations;
    }

    /// <summary>The station nearest a point on the line, for points on it.</summary>
    public double StationOf(Point2 p)
    {
        if (p.Y <= 0 && p.X >= 0) return FirstRiser + p.Y;
        if (Quarters == 1 ? p.X <= 0 : p.Y <= 0) return ArcEnd + (p - Exit).Dot(Out);
        return FirstRiser + (p - Point2.Origin).Direction * Radius;
    }

    /// <summary>Where a line crosses the walking line, going outwards; null when it misses.</summary>
    public Point2? Crossing(Line2 outward)
    {
        if (outward.Cross(new(new(Radius, 0), new(0, 1))) is { } low && outward.Along.X > 1e-12 && low.Y <= 0) return low;
        if (outward.Cross(new(Exit, Out)) is { } high && outward.Along.Dot(Exit - Point2.Origin) > 1e-9 && (high - Exit).Dot(Out) >= 0) return high;
        var foot = outward.Station(Point2.Origin);
        var off = outward.At(foot) - Point2.Origin;
        var half = Radius * Radius - off.Dot(off);
        return half < 0 ? null : outward.At(foot + Math.Sqrt(half));
    }
}
