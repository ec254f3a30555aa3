using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// The development a string (or two wall strings round a corner) is drawn on: pitch points and margin line, s along the face and z up (setting-out.md 3).
/// </summary>
/// <param name="Sites">The boards drawn on it, from the bottom up.</param>
/// <param name="PitchPoints">Where rise and going lines meet, in order: riser number, s and z.</param>
/// <param name="Margin">Corners of the margin line: pitch points where the pitch changes, and the two ends.</param>
/// <param name="Tapered">Whether each piece of the margin line runs over tapered steps.</param>
public sealed record Development(
    ImmutableArray<StringSite> Sites, ImmutableArray<PitchPoint> PitchPoints, ImmutableArray<Point2> Margin, ImmutableArray<bool> Tapered)
{
    /// <summary>All developments of a left-hand plan.</summary>
    public static ImmutableArray<Development> Of(StairPlan plan)
    {
        var all = ImmutableArray.CreateBuilder<Development>();
        for (var i = 0; i < plan.Strings.Length; i++)
        {
            var sites = new List<StringSite> { plan.Strings[i] };
            while (sites[^1].Upper.Kind == StringEndKind.CornerThrough) sites.Add(plan.Strings[++i]);
            all.Add(Around(plan, [.. sites]));
        }
        return all.ToImmutable();
    }

    private static Development Around(StairPlan plan, ImmutableArray<StringSite> sites)
    {
        var points = Points(plan, sites);
        if (points.Length == 0) throw new System.Diagnostics.UnreachableException($"no riser stands on {sites[0].Id}");
        // One riser alone says nothing of the pitch: the flights' own is drawn through it.
        if (points.Length == 1)
        {
            var step = new Vector2(plan.Going, plan.Rise);
            return new(sites, points, [points[0].At - step, points[0].At + step], [false]);
        }
        var margin = new List<Point2> { points[0].At };
        var tapered = new List<bool>();
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            var isTapered = plan.Steps[a.Riser - 1] == StepKind.Tapered;
            if (tapered.Count > 0 && tapered[^1] == isTapered && IsStraightOn(margin[^2], a.At, b.At)) margin[^1] = b.At;
            else
            {
                margin.Add(b.At);
                tapered.Add(isTapered);
            }
        }
        return new(sites, points, [.. margin], [.. tapered]);
    }

    private static bool IsStraightOn(Point2 a, Point2 b, Point2 c) => Math.Abs((b - a).Unit.Cross((c - b).Unit)) < 1e-9;

    /// <summary>
    /// The square risers of the strings' flights, those at their newels included, and every riser whose end a string itself carries. A riser that meets a corner
    /// of the room counts there once, whichever board it is read on.
    /// </summary>
    private static ImmutableArray<PitchPoint> Points(StairPlan plan, ImmutableArray<StringSite> sites)
    {
        var points = ImmutableArray.CreateBuilder<PitchPoint>();
        for (var k = sites[0].FirstRiser; k <= sites[^1].LastRiser; k++)
        {
            if (sites.Select(site => On(plan, site, k)).FirstOrDefault(s => s is not null) is { } s) points.Add(Point(plan, k, s));
        }
        return points.ToImmutable();
    }

    /// <summary>Where a riser stands on a string's development; null when it is none of its.</summary>
    private static double? On(StairPlan plan, StringSite site, int k)
    {
        if (k < site.FirstRiser || k > site.LastRiser) return null;
        var riser = plan.Riser(k);
        var end = site.Inner ? riser.Inner : riser.Outer;
        var s = site.Face.Station(end);
        // A tapered riser square to the face by chance, on the newel of a turn before or after, is not the flight's.
        var square = Math.Abs(riser.Up.Cross(site.Face.Along)) < 1e-9 && riser.Up.Dot(site.Face.Along) > 0
            && plan.Flights.Any(f => k >= f.FirstRiser && k <= f.LastRiser && f.Along.Dot(site.Face.Along) > 1 - 1e-9);
        var (from, to) = site.Reach;
        var onString = Math.Abs(site.Face.LeftOf(end)) < Tolerance.Same && s > from - Tolerance.Same
            && (site.Upper.Kind == StringEndKind.CornerThrough ? s < to - Tolerance.Same : s < to + Tolerance.Same);
        if (!square && !onString) return BeforeNewel(plan, site, riser, end, s);
        return site.Lower.Kind == StringEndKind.CornerLetIn ? Math.Max(from, s) : s;
    }

    /// <summary>
    /// A riser in the newel at the string's upper end whose nosing stands too far in front of the newel to stop there: its tread is housed in the string too, where
    /// the riser's face, produced, would meet it.
    /// </summary>
    private static double? BeforeNewel(StairPlan plan, StringSite site, RiserLine riser, Point2 end, double s)
    {
        var practice = plan.Job.Practice;
        var (to, off) = (site.Reach.To, Math.Abs(site.Face.LeftOf(end)));
        if (site.Upper.Kind != StringEndKind.Newel || s < to || s > to + practice.Newel || off < Tolerance.Same || off > practice.Newel / 2) return null;
        if (riser.Up.Dot(site.Face.Along) < Tolerance.Same || site.Face.Cross(riser.Line) is not { } produced) return null;
        return s - practice.Nosing / riser.Up.Dot(site.Face.Along) < to - practice.NosingPastNewel ? site.Face.Station(produced) : null;
    }

    private static PitchPoint Point(StairPlan plan, int riser, double s) => new(riser, new(s, riser * plan.Rise));
}

/// <summary>Where the rise line of a riser meets the going line of its tread.</summary>
/// <param name="Riser">Riser number k.</param>
/// <param name="At">(s, kR).</param>
public sealed record PitchPoint(int Riser, Point2 At);
