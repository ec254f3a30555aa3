using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Balustrades;

/// <summary>
/// Handrails along the walls: where they are wanted, in straight pieces that stand the practice's height above the nosings, each as long as it can follow them.
/// </summary>
internal static class WallRails
{
    // Kept clear of the other wall's rail at a corner, and of a newel, mm (common practice).
    private const double AtCorner = 20;

    // A piece shorter than this is left out, mm.
    private const double Least = 150;

    public static IEnumerable<RailRun> Of(StairPlan plan, Balustrade practice, IReadOnlyCollection<RailRun> open)
    {
        var n = 0;
        // The outer side first: there the steps are widest.
        foreach (var site in plan.Strings.Where(s => s.IsWall).OrderBy(s => s.Inner).ThenBy(s => s.FirstRiser))
        {
            if (!IsWanted(plan, practice, open, site)) continue;
            foreach (var (piece, from, to) in Pieces(plan, practice, site))
            {
                n++;
                var number = Number.Print(n, 0);
                var off = practice.WallRail.Clear + practice.WallRail.Section.Width / 2 - site.Thickness;
                var centre = new Line2(site.Face.Through - off * BalustradePlan.BackOf(plan, site), site.Face.Along);
                yield return new($"wall-rail-{number}", $"wall rail over {site.Name}", $"WR{number}", RailKind.Wall, centre, from, to, piece.Line.Slope, piece.Line.Level)
                {
                    String = site, Excess = piece.Line.Excess,
                    Heights = [.. piece.Nosings.Where(p => p.At.X >= from - Tolerance.Same && p.At.X <= to + Tolerance.Same).Select(p => new RailHeight(p.Riser, p.At.X, p.At.Y, piece.Line.Level + piece.Line.Slope * p.At.X))],
                };
            }
        }
    }

    /// <summary>How many sides of a flight must have a handrail, by every clause that applies.</summary>
    internal static double SidesAsked(StairPlan plan) =>
        plan.Regulation.Clauses.Where(c => c.Rule == HandrailSidesRule.Instance && c.Except(plan) is null).Select(c => c.Limit.Least ?? 0).DefaultIfEmpty(0).Max();

    private static bool IsWanted(StairPlan plan, Balustrade practice, IReadOnlyCollection<RailRun> open, StringSite site)
    {
        if (practice.WallRail.Wanted != WallRailWanted.Asked) return practice.WallRail.Wanted == WallRailWanted.Always;
        var outer = plan.Regulation.Clauses.Any(c => c.Rule == OuterHandrailRule.Instance && c.Limit.Least > 0 && c.Except(plan) is null);
        if (outer && !site.Inner && plan.TaperedSteps.Any(t => t.Number >= site.FirstRiser && t.Number < site.LastRiser)) return true;
        var asked = SidesAsked(plan);
        var beside = open.Count(r => r.String is { } s && s.FirstRiser <= site.LastRiser && s.LastRiser >= site.FirstRiser && s.Inner != site.Inner) > 0 ? 1 : 0;
        // Between two walls one rail is enough where one is asked for: on the outer side.
        if (beside == 0 && site.Inner && asked < 2 && plan.Strings.Any(s => s.IsWall && !s.Inner)) return false;
        return beside < asked;
    }

    private static IEnumerable<((RailLine Line, List<(int Riser, Point2 At)> Nosings) Piece, double From, double To)> Pieces(StairPlan plan, Balustrade practice, StringSite site)
    {
        var room = practice.WallRail.Clear + practice.WallRail.Section.Width - site.Thickness + AtCorner;
        var low = site.Reach.From + site.Lower.Kind switch { StringEndKind.CornerLetIn => room, StringEndKind.Newel => AtCorner, _ => double.NegativeInfinity };
        var high = site.Reach.To - site.Upper.Kind switch { StringEndKind.CornerThrough => room, StringEndKind.Newel => AtCorner, _ => double.NegativeInfinity };
        var nosings = NosingsAlong.Of(plan, site).Where(n => n.Riser > 0).ToList();
        if (nosings.Count < 2) yield break;
        var pieces = new List<(RailLine Line, List<(int Riser, Point2 At)> Nosings)>();
        // Neighbouring pieces share a nosing: there they meet, or nearly so.
        for (var i = 0; i < nosings.Count - 1;)
        {
            var (n, line) = (2, Over(i, 2));
            while (i + n < nosings.Count && Over(i, n + 1) is var longer && longer.Excess <= practice.Follow) (n, line) = (n + 1, longer);
            pieces.Add((line, nosings.GetRange(i, n)));
            i += n - 1;
        }
        var from = Math.Max(low, nosings[0].At.X);
        for (var i = 0; i < pieces.Count; i++)
        {
            var to = Math.Min(high, i + 1 < pieces.Count ? Meets(pieces[i], pieces[i + 1]) : nosings[^1].At.X);
            if (to - from >= Least) yield return (pieces[i], from, to);
            from = Math.Max(from, to);
        }

        RailLine Over(int first, int count) => RailLine.Over([.. nosings.GetRange(first, count).Select(n => n.At)], plan.Job.Practice.RailHeight, plan.Rise / plan.Going, 1);
    }

    /// <summary>Where two pieces' tops cross, no further from the nosing they share than the next one each way; at that nosing where they do not.</summary>
    private static double Meets((RailLine Line, List<(int Riser, Point2 At)> Nosings) a, (RailLine Line, List<(int Riser, Point2 At)> Nosings) b)
    {
        var crossing = (b.Line.Level - a.Line.Level) / (a.Line.Slope - b.Line.Slope);
        return crossing > a.Nosings[^2].At.X && crossing < b.Nosings[1].At.X ? crossing : a.Nosings[^1].At.X;
    }
}
