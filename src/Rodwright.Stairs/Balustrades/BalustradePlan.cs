using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Balustrades;

/// <summary>The balustrade of a plan as set out: its rails, and the greatest gap between balusters. Of the plan's own hand.</summary>
/// <param name="Rails">Those of the flights from the bottom up, then landings, then walls.</param>
/// <param name="GreatestGap">Allowed between balusters, mm.</param>
public sealed record BalustradePlan(ImmutableArray<RailRun> Rails, double GreatestGap)
{
    // Clear between a sphere and the balusters that must stop it, mm, and in sixteenths of an inch.
    private const double Under = 1;

    // The sphere where a regulation says nothing of one, mm (trade-practice.md 4c; Approved Document K).
    private const double UsualSphere = 100;

    // A level rail shorter than this between its newels is left out, mm.
    private const double LeastLanding = 40;

    /// <summary>Sets the balustrade out; null where the job has none.</summary>
    public static BalustradePlan? Of(StairPlan plan)
    {
        if (plan.Job.Balustrade is not { } practice) return null;
        ImmutableArray<RailRun> open = [.. Flights(plan, practice), .. Landings(plan, practice)];
        return new([.. open, .. WallRails.Of(plan, practice, open)], practice.Gap ?? UsualGap(plan));
    }

    /// <summary>Balusters of a rail.</summary>
    public BalusterRow RowOf(StairPlan plan, RailRun rail) => BalusterRow.Of((rail.Stop?.Fill ?? rail.To) - rail.From, plan.Job.Balustrade!.Baluster, GreatestGap);

    /// <summary>The rails that end in a newel, each with the height of its top where it meets the newel's face.</summary>
    public IEnumerable<(RailRun Rail, double Top)> At(string newel)
    {
        foreach (var rail in Rails)
        {
            if (rail.Upper == newel) yield return (rail, rail.TopAt(rail.To));
            if (rail.Lower == newel) yield return (rail, rail.TopAt(rail.From));
        }
    }

    /// <summary>Just less than the least sphere the regulation's clauses name.</summary>
    private static double UsualGap(StairPlan plan)
    {
        var sphere = SphereOf(plan) ?? UsualSphere * plan.Job.ModelScale;
        return plan.Units.IsInches ? plan.Units.Down(sphere - plan.Units.Step) : sphere - Under;
    }

    private static double? SphereOf(StairPlan plan)
    {
        var spheres = plan.Regulation.Clauses.Where(c => (c.Rule == GuardingGapRule.Instance || c.Rule == LandingGapRule.Instance) && c.Limit.Most is not null && c.Except(plan) is null)
            .Select(c => c.Limit.On(plan, c.Rule.Unit).Most!.Value).ToList();
        return spheres.Count == 0 ? null : spheres.Min();
    }

    private static IEnumerable<RailRun> Flights(StairPlan plan, Balustrade practice)
    {
        var n = 0;
        // From the bottom up, whichever side they are on.
        foreach (var site in plan.Strings.Where(s => !s.IsWall && s.Lower.Newel.Length > 0 && s.Upper.Newel.Length > 0).OrderBy(s => s.FirstRiser).ThenBy(s => !s.Inner))
        {
            n++;
            yield return RailStop.Apply(plan, practice, Over(plan, site, practice, $"handrail-{Number.Print(n, 0)}", $"handrail over {site.Name}", $"HR{Number.Print(n, 0)}", RailKind.Flight,
                RailCentre(plan, practice, site), site.Lower.At + plan.Job.Practice.Newel / 2, site.Upper.At - plan.Job.Practice.Newel / 2) with
            {
                Lower = site.Lower.Newel, Upper = site.Upper.Newel,
            });
        }
    }

    /// <summary>A rail over or beside a string, its top the practice's height above the nosings.</summary>
    internal static RailRun Over(StairPlan plan, StringSite site, Balustrade practice, string id, string name, string mark, RailKind kind, Line2 centre, double from, double to)
    {
        var nosings = NosingsAlong.Of(plan, site);
        var pitch = plan.Rise / plan.Going;
        var line = nosings.Count == 0
            ? new RailLine(pitch, plan.Job.Practice.RailHeight + site.FirstRiser * plan.Rise - pitch * site.Face.Station(plan.Riser(site.FirstRiser).Inner), 0)
            : RailLine.Over([.. nosings.Select(n => n.At)], plan.Job.Practice.RailHeight, pitch, practice.Follow);
        return new(id, name, mark, kind, centre, from, to, line.Slope, line.Level)
        {
            String = site, Excess = line.Excess,
            Heights = [.. nosings.Where(n => n.At.X >= from - Tolerance.Same && n.At.X <= to + Tolerance.Same).Select(n => new RailHeight(n.Riser, n.At.X, n.At.Y, line.Level + line.Slope * n.At.X))],
        };
    }

    /// <summary>
    /// The middle of a flight's rail: that of its string, and where two strings pass side by side into one newel, as near the newel's middle as the rail still covers its string and stays on the newel
    /// (trade-practice.md 1: newel, rail and balusters on one centre).
    /// </summary>
    private static Line2 RailCentre(StairPlan plan, Balustrade practice, StringSite site)
    {
        var centre = CentreOf(plan, site);
        var off = new[] { site.Lower.Newel, site.Upper.Newel }.Select(id => centre.LeftOf(plan.Newels.First(n => n.Id == id).Centre)).MaxBy(Math.Abs);
        var most = Math.Min((plan.Job.Practice.Newel - practice.Rail.Width) / 2, (practice.BaseRail.Width - site.Thickness) / 2);
        var shift = Math.Sign(off) * Math.Clamp(Math.Abs(off), 0, Math.Max(0, most));
        return Math.Abs(shift) < Tolerance.Same ? centre : new(centre.Through + shift * centre.Along.Left, centre.Along);
    }

    /// <summary>The middle of a string's board in plan, its stations those of the face.</summary>
    internal static Line2 CentreOf(StairPlan plan, StringSite site) => new(site.Face.Through + site.Thickness / 2 * BackOf(plan, site), site.Face.Along);

    /// <summary>From a string's face into its board, unit.</summary>
    internal static Vector2 BackOf(StairPlan plan, StringSite site) => site.Inner != plan.IsMirrored ? site.Face.Along.Left : site.Face.Along.Right;

    private static IEnumerable<RailRun> Landings(StairPlan plan, Balustrade practice)
    {
        var (n, height, half) = (0, practice.LandingHeight ?? plan.Job.Practice.RailHeight, plan.Job.Practice.Newel / 2);
        foreach (var turn in plan.Turns.Where(t => t.Kind == TurnKind.Landing))
        {
            foreach (var ids in new[] { turn.Newels, turn.OuterNewels }.Where(i => i.Length == 2))
            {
                // The flights come and go on the well's side; what is open on the far side is open away from them.
                var outward = ids == turn.Newels ? -plan.Flights[turn.Index].Along : plan.Flights[turn.Index].Along;
                var (a, b) = (CentreOf(ids[0]), CentreOf(ids[1]));
                if (a.DistanceTo(b) - 2 * half < LeastLanding) continue;
                yield return Level("handrail of the landing", a, b, half, a.DistanceTo(b) - half, turn.FirstLine * plan.Rise) with { Lower = ids[0], Upper = ids[1], Well = outward };
            }
        }
        if (practice.UpperLanding.Length is not { } length || TopNewel(plan) is not { } top || length - 2 * half < LeastLanding) yield break;
        var along = plan.Flights[^1].Along;
        var way = practice.UpperLanding.Way == LandingWay.On ? along : top.Inner != plan.IsMirrored ? along.Left : along.Right;
        yield return Level("handrail of the upper landing", top.Centre, top.Centre + length * way, half, length - half, plan.Risers * plan.Rise) with
        {
            Lower = top.Id, Upper = WallNewel,
            // Away from the steps the well lies back along the flight; straight on, on the far side of the newel from them.
            Well = practice.UpperLanding.Way == LandingWay.On ? top.Inner != plan.IsMirrored ? along.Left : along.Right : -along,
        };

        RailRun Level(string name, Point2 a, Point2 b, double from, double to, double floor)
        {
            n++;
            return new($"landing-rail-{Number.Print(n, 0)}", name, $"HL{Number.Print(n, 0)}", RailKind.Landing, Line2.Between(a, b), from, to, 0, floor + height) { Floor = floor };
        }

        Point2 CentreOf(string id) => plan.Newels.First(m => m.Id == id).Centre;
    }

    /// <summary>Id of the half newel against a wall that the upper landing's balustrade ends in.</summary>
    public const string WallNewel = "newel-landing";

    /// <summary>The newel on the upper floor, inner side first: a turn's where the stair ends with one.</summary>
    private static NewelSite? TopNewel(StairPlan plan) =>
        plan.Newels.Where(n => n.Role == NewelRole.Top || (n.Role == NewelRole.Turn && plan.TurnAt(n.Id)!.LastLine == plan.Risers && plan.TurnAt(n.Id)!.Newels[^1] == n.Id)).OrderBy(n => !n.Inner).FirstOrDefault();
}
