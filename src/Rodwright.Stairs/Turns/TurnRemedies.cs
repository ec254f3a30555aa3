using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Turns;

/// <summary>Says what would free a turn for which no offset fits, with the numbers that would do.</summary>
internal static class TurnRemedies
{
    public static Finding NothingFits(Job job, Regulation regulation, TurnSite site, TurnMethod method, Turn turn, TurnSolver.Found found)
    {
        var wanted = Planner.Wanted(job, regulation);
        var shorts = new List<string>();
        if (found.Narrow < wanted.Narrow - Tolerance.Same) shorts.Add($"narrow ends of {Number.Print(found.Narrow, 2)} along the faces where {Number.Print(wanted.Narrow, 2)} is wanted");
        if (found.Going < wanted.Going - Tolerance.Same) shorts.Add($"a going of {Number.Print(found.Going, 2)} on the walking line where {Number.Print(wanted.Going, 2)} is wanted");
        return new("RW2101", Severity.Breach, "layout.turn",
            $"{turn.Tapered} tapered steps round a newel of {Number.Print(2 * site.HalfNewel)} leave {string.Join(" and ", shorts)}, with the riser faces {Number.Print(found.FirstRiser)} and {Number.Print(found.LastRiser)} outside the newel's centre",
            string.Join("; ", Remedies(job, regulation, site, method, turn)));
    }

    private static IEnumerable<string> Remedies(Job job, Regulation regulation, TurnSite site, TurnMethod method, Turn turn)
    {
        var wanted = Planner.Wanted(job, regulation);
        var open = turn with { FirstRiser = null, LastRiser = null };
        if (turn.FirstRiser is not null || turn.LastRiser is not null)
        {
            var freed = TurnSolver.Solve(site, method, open, wanted, regulation.Going, job.Practice.Cover);
            if (freed.Fits) yield return $"let the risers be solved: {Number.Print(freed.FirstRiser)} outside the centre keeps every limit";
        }
        if (Smallest(10, 400, add => site with { HalfNewel = site.HalfNewel + add / 2 }) is { } newel)
            yield return $"a newel of {Number.Print(2 * site.HalfNewel + newel)}";
        if (Smallest(10, 600, add => site with { OuterFace = site.OuterFace + add, Walking = site.InnerFace + regulation.WalkingLine.InsetFor(site.OuterFace - site.InnerFace + add, job.ModelScale) }) is { } wider)
            yield return $"a stair {Number.Print(job.Width + wider)} wide";
        var past = site.HalfNewel + job.Practice.Riser + job.Practice.Cover;
        if (job.Layout.GoingsBefore > 0 && job.Layout.GoingsAfter > 0 && Past(past) is { } e)
            yield return $"risers past the newel, {Number.Print(e)} outside its centre (firstRiser and lastRiser)";
        if (turn.Tapered > 2) yield return "one tapered step fewer in the turn";
        yield return "a quarter landing, or balanced steps";

        double? Smallest(double step, double most, Func<double, TurnSite> change)
        {
            for (var add = step; add <= most; add += step)
                if (TurnSolver.Solve(change(add), method, open, wanted, regulation.Going, job.Practice.Cover).Fits) return add;
            return null;
        }

        double? Past(double from)
        {
            for (var e = Math.Ceiling(from); e <= from + 200; e += 5)
                if (TurnSolver.Solve(site, method, turn with { FirstRiser = e, LastRiser = e }, wanted, regulation.Going, job.Practice.Cover).Fits) return e;
            return null;
        }
    }
}
