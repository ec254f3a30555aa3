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
            var site = plan.Strings[i];
            if (site.Upper.Kind == StringEndKind.CornerThrough) all.Add(Around(plan, [site, plan.Strings[++i]]));
            else all.Add(Around(plan, [site]));
        }
        return all.ToImmutable();
    }

    private static Development Around(StairPlan plan, ImmutableArray<StringSite> sites)
    {
        var points = sites[0].Inner ? InnerPoints(plan, sites[0]) : OuterPoints(plan, sites);
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

    private static ImmutableArray<PitchPoint> OuterPoints(StairPlan plan, ImmutableArray<StringSite> sites)
    {
        if (sites.Length == 1)
        {
            var site = sites[0];
            var landing = plan.Steps.IndexOf(StepKind.Landing) + 1; // 0 when there is none
            var lower = landing == 0 || site.Face.Along.Y > 0.5;
            var (first, last) = landing == 0 ? (1, plan.Risers) : lower ? (1, landing) : (landing + 1, plan.Risers);
            return [.. Enumerable.Range(first, last - first + 1).Select(k => Point(plan, k, site.Face.Station(plan.Riser(k).Outer)))];
        }
        var corner = sites[0].Upper.At;
        return [.. Enumerable.Range(1, plan.Risers).Select(k =>
        {
            // A riser that meets the corner itself counts there once, whichever board it is read on.
            var onLower = sites[0].Face.Station(plan.Riser(k).Outer);
            var isLower = onLower < corner - Tolerance.Same;
            return Point(plan, k, isLower ? onLower : Math.Max(corner, sites[1].Face.Station(plan.Riser(k).Outer)));
        })];
    }

    /// <summary>
    /// The square risers of the string's flight, those at its newels included, and any tapered riser whose end the string itself carries.
    /// </summary>
    private static ImmutableArray<PitchPoint> InnerPoints(StairPlan plan, StringSite site)
    {
        var edge = plan.Inner.Edges.First(e => e.Carrier == site.Id);
        var points = ImmutableArray.CreateBuilder<PitchPoint>();
        foreach (var riser in plan.RiserLines)
        {
            var square = Math.Abs(riser.Up.Cross(site.Face.Along)) < 1e-9 && riser.Up.Dot(site.Face.Along) > 0;
            var s = site.Face.Station(riser.Inner);
            var onString = Math.Abs(site.Face.LeftOf(riser.Inner)) < Tolerance.Same &&
                s > site.Face.Station(edge.From) - Tolerance.Same && s < site.Face.Station(edge.To) + Tolerance.Same;
            if (square || onString) points.Add(Point(plan, riser.Number, s));
        }
        return points.ToImmutable();
    }

    private static PitchPoint Point(StairPlan plan, int riser, double s) => new(riser, new(s, riser * plan.Rise));
}

/// <summary>Where the rise line of a riser meets the going line of its tread.</summary>
/// <param name="Riser">Riser number k.</param>
/// <param name="At">(s, kR).</param>
public sealed record PitchPoint(int Riser, Point2 At);
