using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Turns;

/// <summary>Says what would free a turn that is too tight. Every remedy that names a number was set out and kept the limits.</summary>
internal static class TurnRemedies
{
    // Sizes a timber yard keeps or a shop planes to, finished (trade-practice.md 4b and common practice).
    private static readonly double[] Newels = [69, 75, 90, 100, 120, 140, 150];

    /// <summary>The finding for a turn in which no offset keeps both limits.</summary>
    public static Finding NothingFits(Job job, Regulation regulation, TurnSite site, Turn turn, TurnSolver.Found found)
    {
        var wanted = Planner.Wanted(job, regulation);
        var shorts = new List<string>();
        if (found.Narrow < wanted.Narrow - Tolerance.Same) shorts.Add($"narrow ends of {Number.Print(found.Narrow, 2)} along the faces where {Number.Print(wanted.Narrow, 2)} is wanted");
        if (found.Going < wanted.Going - Tolerance.Same) shorts.Add($"a going of {Number.Print(found.Going, 2)} on the walking line where {Number.Print(wanted.Going, 2)} is wanted");
        return new("RW2101", Severity.Breach, "layout.turn",
            $"{turn.Tapered} tapered steps round a newel of {Number.Print(2 * site.HalfNewel)} leave {string.Join(" and ", shorts)}, with the riser faces {Number.Print(found.FirstRiser)} and {Number.Print(found.LastRiser)} outside the newel's centre",
            Words(job, regulation, site, turn, wanted));
    }

    /// <summary>What would bring the turn of a plan to a going and a narrow end.</summary>
    public static string Words(StairPlan plan, TurnSolver.Wanted wanted) => plan.Job.Layout.Turn is { } turn
        ? Words(plan.Job, plan.Regulation, SiteOf(plan), turn, wanted)
        : "";

    private static string Words(Job job, Regulation regulation, TurnSite site, Turn turn, TurnSolver.Wanted wanted) =>
        string.Join("; ", Remedies(job, regulation, site, turn, wanted));

    private static TurnSite SiteOf(StairPlan plan) =>
        new(plan.Job.Practice.Newel / 2, plan.InnerThickness / 2, plan.InnerThickness / 2 + plan.ClearWidth, plan.WalkingRadius);

    private static IEnumerable<string> Remedies(Job job, Regulation regulation, TurnSite site, Turn turn, TurnSolver.Wanted wanted)
    {
        var method = TurnCatalogue.Find(turn.Method)!;
        var open = turn with { FirstRiser = null, LastRiser = null };
        if ((turn.FirstRiser is not null || turn.LastRiser is not null) && Try(site, open) is { Fits: true } freed)
            yield return $"let the risers be solved: {Number.Print(freed.FirstRiser)} outside the centre keeps every limit";
        foreach (var newel in Newels.Where(n => n > 2 * site.HalfNewel))
        {
            if (!Try(site with { HalfNewel = newel / 2 }, open).Fits) continue;
            yield return $"a newel of {Number.Print(newel)}";
            break;
        }
        for (var add = 10.0; add <= 300; add += 10)
        {
            var clear = site.OuterFace - site.InnerFace + add;
            var wider = site with { OuterFace = site.OuterFace + add, Walking = site.InnerFace + regulation.WalkingLine.InsetFor(clear, job.ModelScale) };
            if (!Try(wider, open).Fits) continue;
            yield return $"a stair {Number.Print(job.Width + add)} wide";
            break;
        }
        if (turn.Tapered > 2 && Try(site, open with { Tapered = turn.Tapered - 1 }) is { Fits: true } fewer)
            yield return $"{turn.Tapered - 1} tapered steps in the turn, with goings of {Number.Print(fewer.Going)}";
        if (job.Layout.GoingsBefore > 0 && job.Layout.GoingsAfter > 0)
        {
            var past = Math.Ceiling(site.HalfNewel + job.Practice.Riser + job.Practice.Cover);
            for (var e = past; e <= past + 150; e += 5)
            {
                if (!Try(site, turn with { FirstRiser = e, LastRiser = e }).Fits) continue;
                yield return $"risers past the newel, {Number.Print(e)} outside its centre (firstRiser and lastRiser)";
                break;
            }
        }
        yield return "a quarter landing in place of the tapered steps";

        TurnSolver.Found Try(TurnSite changed, Turn with) => TurnSolver.Solve(changed, method, with, wanted, regulation.Going, job.Practice.Cover);
    }
}
