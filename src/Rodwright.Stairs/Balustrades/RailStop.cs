using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Balustrades;

/// <summary>
/// Where a lower flight's balustrade ends under the string of a flight that comes back over it, as on a dog-leg stair: the handrail is scribed to the string's lower edge, and so are what stands under it past there
/// (trade-practice.md 4b: both strings in one plane).
/// </summary>
/// <param name="String">The string above.</param>
/// <param name="Newel">Id of the newel that rail and base rail run towards.</param>
/// <param name="Face">Station of that newel's face.</param>
/// <param name="Fill">Station to which balusters are shared out: where the base rail's top meets the string, or the newel's face.</param>
public sealed record RailStop(StringSite String, string Newel, double Face, double Fill)
{
    /// <summary>Nosings beyond its end, over which there is no handrail on that side; from the bottom up.</summary>
    public ImmutableArray<int> Bare { get; init; } = [];

    /// <summary>A rail cut short under the first string that comes down over it; the rail itself where there is none.</summary>
    internal static RailRun Apply(StairPlan plan, Balustrade practice, RailRun rail)
    {
        foreach (var above in plan.Strings.Where(s => !s.IsWall && s.Lower.Newel == rail.Upper && s.Id != rail.String!.Id && s.Face.Along.Dot(rail.Centre.Along) < -1 + 1e-9))
        {
            var middle = BalustradePlan.CentreOf(plan, above);
            var wide = Math.Max(practice.Rail.Width, Math.Max(practice.BaseRail.Width, practice.Baluster));
            if (Math.Abs(rail.Centre.LeftOf(middle.Through)) >= (wide + above.Thickness) / 2 - Tolerance.Joint) continue;
            // Stations of the string above run down the rail.
            var zero = rail.Centre.Station(above.Face.Through);
            double Under(double s) => Edge(plan, above, zero - s, plan.Job.Practice.Margin - above.Width);
            double Base(double s) => Edge(plan, rail.String!, s, plan.Job.Practice.Margin + practice.BaseRail.Height);
            if (Meets(rail, rail.TopAt, Under) is null) continue;
            var end = Meets(rail, s => rail.TopAt(s) - practice.Rail.Height / rail.Pitch.Cosine, Under) ?? rail.To;
            return rail with
            {
                To = end, Upper = "", Stop = new(above, rail.Upper, rail.To, Meets(rail, Base, Under) ?? rail.To) { Bare = [.. rail.Heights.Where(h => h.At > end + Tolerance.Same && h.Riser > 0).Select(h => h.Riser)] }, Heights = [.. rail.Heights.Where(h => h.At <= end + Tolerance.Same)],
            };
        }
        return rail;
    }

    private static double? Meets(RailRun rail, Func<double, double> line, Func<double, double> under) =>
        line(rail.To) <= under(rail.To) ? null : Roots.Between(s => line(s) - under(s), rail.From, rail.To);

    /// <summary>A line square off a string's margin line, as far as the plan knows it: from its nosings, before easings. Plumb height at a station.</summary>
    private static double Edge(StairPlan plan, StringSite site, double s, double off)
    {
        var (nosings, pitch) = (NosingsAlong.Of(plan, site).Where(n => n.Riser > 0).Select(n => n.At).ToList(), plan.Rise / plan.Going);
        if (nosings.Count == 0) return double.PositiveInfinity;
        var i = nosings.FindIndex(1, Math.Max(0, nosings.Count - 1), n => n.X >= s);
        var (at, slope) = nosings.Count == 1 ? (nosings[0], pitch)
            : i < 0 ? (nosings[^1], Slope(nosings[^2], nosings[^1]))
            : (nosings[i - 1], Slope(nosings[i - 1], nosings[i]));
        return at.Y + slope * (s - at.X) - plan.Job.Practice.Nosing * slope + off / Angle.OfPitch(slope, 1).Cosine;
    }

    private static double Slope(Point2 a, Point2 b) => (b.Y - a.Y) / (b.X - a.X);
}
