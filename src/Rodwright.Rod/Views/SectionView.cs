using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>The section along the walking line, unrolled: x is the station along the line from the first riser, y the height.</summary>
public sealed class SectionView
{
    private const double Step = 4; // stations at which a slope round a turn is drawn, mm
    private readonly ImmutableArray<(double S, Point2 At)> line;

    /// <summary>The section of a stair.</summary>
    public SectionView(Stair stair)
    {
        Stair = stair;
        Headroom = HeadroomReport.Of(stair.Plan);
        var plan = stair.Plan;
        var (first, last) = (plan.RiserLines[0], plan.RiserLines[^1]);
        List<Point2> points = [first.Walking - plan.ClearWidth * first.Up, .. plan.WalkingLine.Flattened(0.02), last.Walking + plan.ClearWidth * last.Up];
        var along = ImmutableArray.CreateBuilder<(double, Point2)>();
        var s = -plan.ClearWidth;
        for (var i = 0; i < points.Count; i++)
        {
            if (i > 0) s += points[i - 1].DistanceTo(points[i]);
            if (i == 0 || points[i - 1].DistanceTo(points[i]) > 1e-9) along.Add((s, points[i]));
        }
        line = along.ToImmutable();
        Risers = [.. plan.RiserLines.Select(r => StationOf(r.Walking))];
        Arrival = Risers[^1] + stair.Job.Practice.Riser + stair.Job.Practice.Packing;
        Above = [.. (Headroom?.Above ?? []).SelectMany(Profile)];
        Least = FindLeast();
        var highest = Above.SelectMany(a => a.Points).Select(p => p.Y).Append(stair.Job.Survey.Height + 300).Max();
        Bounds = new(line[0].S, -80, line[^1].S, Math.Min(highest + 40, stair.Job.Survey.Height + 2700));
    }

    /// <summary>The stair.</summary>
    public Stair Stair { get; }

    /// <summary>What was found over it; null when nothing above it was measured.</summary>
    public HeadroomReport? Headroom { get; }

    /// <summary>Stations of the riser faces.</summary>
    public ImmutableArray<double> Risers { get; }

    /// <summary>Station of the trimmer the stair arrives at.</summary>
    public double Arrival { get; }

    /// <summary>Undersides of what is above, each as unbroken lines.</summary>
    public ImmutableArray<(Overhead Of, ImmutableArray<Point2> Points)> Above { get; }

    /// <summary>The least clearance on this line: where, and between which heights; null when nothing hangs over it.</summary>
    public (double S, double Low, double High)? Least { get; }

    /// <summary>The least clearance over the whole width, square to this line: at which station, and between which heights; null when nothing hangs over the stair.</summary>
    public (double S, double Low, double High)? LeastAcross => Headroom?.Least is { } least
        ? (StationOf(least.At), least.Under.HeightAt(least.At) - least.Least, least.Under.HeightAt(least.At)) : null;

    /// <summary>Everything drawn.</summary>
    public Box2 Bounds { get; }

    /// <summary>Corners of the pitch line: nosing by nosing, level over landings.</summary>
    public IEnumerable<Point2> PitchLine
    {
        get
        {
            var plan = Stair.Plan;
            for (var k = 1; k <= plan.Risers; k++)
            {
                var s = Risers[k - 1] - Stair.Job.Practice.Nosing;
                if (k > 1 && plan.Steps[k - 2] == StepKind.Landing) yield return new(s, (k - 1) * plan.Rise);
                yield return new(s, k * plan.Rise);
            }
        }
    }

    private Point2 At(double s)
    {
        for (var i = 1; i < line.Length; i++)
            if (s <= line[i].S || i == line.Length - 1) return line[i - 1].At.Towards(line[i].At, (s - line[i - 1].S) / (line[i].S - line[i - 1].S));
        return line[0].At;
    }

    /// <summary>The station on the line nearest to a place in plan.</summary>
    public double StationOf(Point2 p)
    {
        var (best, station) = (double.PositiveInfinity, 0.0);
        for (var i = 1; i < line.Length; i++)
        {
            var (a, b) = (line[i - 1], line[i]);
            var along = Math.Clamp((p - a.At).Dot((b.At - a.At).Unit), 0, b.S - a.S);
            var off = p.DistanceTo(a.At + along * (b.At - a.At).Unit);
            if (off < best - 1e-9) (best, station) = (off, a.S + along);
        }
        return station;
    }

    /// <summary>Where a thing hangs over the line, and how high: straight runs exactly, round a turn every few mm.</summary>
    private IEnumerable<(Overhead, ImmutableArray<Point2>)> Profile(Overhead above)
    {
        List<double> stations = [.. line.Select(l => l.S), Arrival];
        for (var s = line[0].S; s < line[^1].S; s += Step) stations.Add(s);
        stations.Sort();
        var run = new List<Point2>();
        for (var i = 0; i < stations.Count; i++)
        {
            var over = Hangs(above, stations[i]);
            if (i > 0 && over != Hangs(above, stations[i - 1]))
            {
                // The edge of the well lies between two stations: halving finds it.
                var (low, high, was) = (stations[i - 1], stations[i], Hangs(above, stations[i - 1]));
                for (var n = 0; n < 40; n++)
                {
                    var middle = (low + high) / 2;
                    if (Hangs(above, middle) == was) low = middle;
                    else high = middle;
                }
                run.Add(new(low, above.HeightAt(At(low))));
            }
            if (over) run.Add(new(stations[i], above.HeightAt(At(stations[i]))));
            else if (run.Count > 0)
            {
                if (run.Count > 1) yield return (above, [.. run]);
                run.Clear();
            }
        }
        if (run.Count > 1) yield return (above, [.. run]);
    }

    private bool Hangs(Overhead above, double s)
    {
        if (s > Arrival) return above.OverUpperFloor || above.IsTrimmer;
        return above.Well is not { } well || Path2.Polygon(well).Holds(At(s)) == above.Inside;
    }

    private (double, double, double)? FindLeast()
    {
        var pitch = PitchLine.ToList();
        (double S, double Low, double High)? least = null;
        foreach (var (above, points) in Above)
        {
            foreach (var p in points)
            {
                if (p.X > (above.IsTrimmer ? pitch[^1].X - Stair.Plan.Going : line[^1].S)) continue;
                var low = WalkedAt(pitch, p.X);
                if (least is not { } so || p.Y - low < so.High - so.Low) least = (p.X, low, p.Y);
            }
        }
        return least;
    }

    private double WalkedAt(List<Point2> pitch, double s)
    {
        if (s < pitch[0].X) return 0;
        for (var i = 1; i < pitch.Count; i++)
            if (s <= pitch[i].X) return pitch[i].X - pitch[i - 1].X < 1e-9 ? pitch[i].Y : pitch[i - 1].Y + (pitch[i].Y - pitch[i - 1].Y) * (s - pitch[i - 1].X) / (pitch[i].X - pitch[i - 1].X);
        return pitch[^1].Y;
    }
}
