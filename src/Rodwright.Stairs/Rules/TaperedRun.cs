using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Rules;

/// <summary>Tapered steps that follow one another, read from the riser lines alone: whatever set them out.</summary>
/// <param name="First">Number of the first tapered step.</param>
/// <param name="Last">Number of the last.</param>
/// <param name="Turned">Angle between the first riser face and the last, radians.</param>
/// <param name="Arcs">The arcs of the walking line that the steps lie over, in climbing order.</param>
/// <param name="Before">The stretch of the walking line from the first riser to the first arc; null where the riser stands on the arc.</param>
/// <param name="After">The stretch from the last arc to the last riser; null likewise.</param>
public sealed record TaperedRun(int First, int Last, double Turned, ImmutableArray<Arc2> Arcs, (Point2 From, Point2 To)? Before, (Point2 From, Point2 To)? After)
{
    /// <summary>How many tapered steps there are.</summary>
    public int Count => Last - First + 1;

    /// <summary>Quarters turned, in whole quarters; one at least.</summary>
    public int Quarters => Math.Max(1, (int)Math.Round(Turned / (Math.PI / 2)));

    /// <summary>Where it is, as measurements say it.</summary>
    public string Where => Count == 1 ? "step " + Number.Print(First) : $"steps {Number.Print(First)} to {Number.Print(Last)}";

    /// <summary>Every run of tapered steps, from the bottom up.</summary>
    public static IEnumerable<TaperedRun> Of(StairPlan plan)
    {
        var path = plan.WalkingLine;
        for (var k = 1; k <= plan.Steps.Length; k++)
        {
            if (plan.Steps[k - 1] != StepKind.Tapered) continue;
            var first = k;
            var turned = 0.0;
            for (; k <= plan.Steps.Length && plan.Steps[k - 1] == StepKind.Tapered; k++)
            {
                var (a, b) = (plan.Riser(k).Up, plan.Riser(k + 1).Up);
                turned += Math.Abs(Angle.Atan2(a.Cross(b), a.Dot(b)));
            }
            yield return Along(path, first, k - 1, turned, plan.Riser(first).Walking, plan.Riser(k).Walking);
        }
    }

    private static TaperedRun Along(Path2 path, int first, int last, double turned, Point2 from, Point2 to)
    {
        var (start, end, station) = (StationOf(path, from), StationOf(path, to), 0.0);
        var arcs = ImmutableArray.CreateBuilder<Arc2>();
        (Point2, Point2)? before = null, after = null;
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            var length = LengthOf(a, b, bulge);
            if (bulge != 0 && station + length > start + Tolerance.Same && station < end - Tolerance.Same)
            {
                if (arcs.Count == 0 && station - start > Tolerance.Same) before = (from, a);
                after = end - station - length > Tolerance.Same ? (b, to) : null;
                arcs.Add(Arc2.FromBulge(a, b, bulge));
            }
            station += length;
        }
        return new(first, last, turned, arcs.ToImmutable(), before, after);
    }

    /// <summary>How far along the path its point nearest to a given one lies.</summary>
    private static double StationOf(Path2 path, Point2 p)
    {
        var (best, found, station) = (double.PositiveInfinity, 0.0, 0.0);
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            var length = LengthOf(a, b, bulge);
            double off, along;
            if (bulge == 0)
            {
                along = length == 0 ? 0 : Math.Clamp((p - a).Dot((b - a).Unit), 0, length);
                off = length == 0 ? p.DistanceTo(a) : p.DistanceTo(a + along * (b - a).Unit);
            }
            else
            {
                var arc = Arc2.FromBulge(a, b, bulge);
                var (from, at) = (a - arc.Centre, p - arc.Centre);
                var turn = Math.Sign(arc.Sweep) * Angle.Atan2(from.Cross(at), from.Dot(at));
                along = Math.Clamp(turn * arc.Radius, 0, length);
                off = p.DistanceTo(arc.At(along / length));
            }
            if (off < best - Tolerance.Same) (best, found) = (off, station + along);
            station += length;
        }
        return found;
    }

    private static double LengthOf(Point2 a, Point2 b, double bulge) => bulge == 0 ? a.DistanceTo(b) : Arc2.FromBulge(a, b, bulge).Length;
}
