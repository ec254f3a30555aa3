using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using System.Collections.Immutable;

namespace Rodwright.Stairs.Turns;

/// <summary>Says what would free a turn that is too tight. Every remedy that names a number was set out and kept the limits.</summary>
internal static class TurnRemedies
{
    private const string Code = "RW2101";

    /// <summary>The finding for a turn in which no offset keeps both limits.</summary>
    public static Finding NothingFits(Job job, Regulation regulation, int index, TurnSite site, Turn turn, TurnSolver.Found found, Telling telling)
    {
        var wanted = Planner.Wanted(job, regulation);
        var shorts = new List<string>();
        if (found.Narrow < wanted.Narrow - Tolerance.Same) shorts.Add($"narrow ends of {job.Units.Print(found.Narrow, 2)} along the faces where {job.Units.Print(wanted.Narrow, 2)} is wanted");
        if (found.Going < wanted.Going - Tolerance.Same) shorts.Add($"a going of {job.Units.Print(found.Going, 2)} on the walking line where {job.Units.Print(wanted.Going, 2)} is wanted");
        ImmutableArray<Remedy> candidates = telling.Hints ? [.. Candidates(job, regulation, index, site, turn, wanted)] : [];
        return new(Code, Severity.Breach, "layout.turn",
            $"{turn.Tapered} tapered steps round a newel of {job.Units.Print(2 * site.HalfNewel)} leave {string.Join(" and ", shorts)}, with the riser faces {job.Units.Print(found.FirstRiser)} and {job.Units.Print(found.LastRiser)} outside the newel's centre",
            telling.Hints ? Words(candidates) : "")
        {
            Remedies = !telling.Remedies(Code) ? [] : Trial.Freeing(job, regulation, Code, candidates.Select(c => (Way)c)),
        };
    }

    /// <summary>What would bring the turn of a plan to a going and a narrow end.</summary>
    public static Advice For(StairPlan plan, TurnSolver.Wanted wanted)
    {
        if (plan.Turns.FirstOrDefault(t => t.Kind == TurnKind.Winders) is not { } turn) return "";
        ImmutableArray<Remedy> candidates = [.. Candidates(plan.Job, plan.Regulation, turn.Index, turn.Site, turn.Turn, wanted)];
        return new(Words(candidates), [.. candidates.Select(c => (Way)c)]);
    }

    /// <summary>A landing always frees tapered steps, also where the flights are too short to be offered it at one press.</summary>
    private static string Words(ImmutableArray<Remedy> remedies)
    {
        const string Landing = "landing in place of the tapered steps";
        return string.Join("; ", remedies.Select(r => r.Words).Where(w => !w.EndsWith(Landing, StringComparison.Ordinal)).Append("a quarter " + Landing));
    }

    private static IEnumerable<Remedy> Candidates(Job job, Regulation regulation, int index, TurnSite site, Turn turn, TurnSolver.Wanted wanted)
    {
        var method = TurnCatalogue.Find(turn.Method)!;
        var open = turn with { FirstRiser = null, LastRiser = null };
        var letGo = Remedied.WithTurn(job, index, open);
        var isFixed = turn.FirstRiser is not null || turn.LastRiser is not null;
        if (isFixed && Try(site, open) is { Fits: true } freed)
            yield return Remedy.Of($"let the risers be solved: {job.Units.Print(freed.FirstRiser)} outside the centre keeps every limit", letGo);
        foreach (var newel in Remedied.Newels(job.Units).Where(n => n > 2 * site.HalfNewel))
        {
            if (!Try(site with { HalfNewel = newel / 2 }, open).Fits) continue;
            yield return WithRisersLetGo(Remedied.Newel(job.Units, newel));
            break;
        }
        var pace = job.Units.Nearby(10);
        for (var add = pace; add <= 300; add += pace)
        {
            var clear = site.OuterFace - site.InnerFace + add;
            var wider = site with { OuterFace = site.OuterFace + add, Walking = site.InnerFace + regulation.WalkingLine.InsetFor(clear, job.ModelScale) };
            if (!Try(wider, open).Fits) continue;
            yield return WithRisersLetGo(Remedied.Width(job.Units, job.Width + add));
            break;
        }
        if (turn.Tapered > 2 * turn.Quarters && Try(site, open with { Tapered = turn.Tapered - 1 }) is { Fits: true } fewer
            && ChangesOfSteps.Turn(job, index, open with { Tapered = turn.Tapered - 1 }) is { } change)
        {
            yield return Remedy.Of($"{turn.Tapered - 1} tapered steps in the turn, with goings of {job.Units.Print(fewer.Going)}", change);
        }
        var course = Course.Of(job.Layout);
        if (method.Shares)
        {
            for (var shared = Math.Max(turn.SharedBefore, turn.SharedAfter) + 1; shared <= 4; shared++)
            {
                var more = open with { SharedBefore = Math.Min(shared, course.Goings[index]), SharedAfter = Math.Min(shared, course.Goings[index + 1]) };
                if (!Try(site, more).Fits) continue;
                yield return Remedy.Of($"the taper shared with {more.SharedBefore} steps before the turn and {more.SharedAfter} after it", Remedied.WithTurn(job, index, more));
                break;
            }
        }
        if (course.Goings[index] > 0 && course.Goings[index + 1] > 0 && !method.Shares)
        {
            var past = job.Units.Up(site.HalfNewel + job.Practice.Riser + job.Practice.Cover);
            for (var e = past; e <= past + 150; e += job.Units.Nearby(5))
            {
                if (!Try(site, turn with { FirstRiser = e, LastRiser = e }).Fits) continue;
                yield return Remedied.TurnRisers(job, index, e, e) with { Words = $"risers past the newel, {job.Units.Print(e)} outside its centre (firstRiser and lastRiser)" };
                break;
            }
        }
        if (Remedied.Landing(job, index) is { } landing) yield return landing;

        TurnSolver.Found Try(TurnSite changed, Turn with) => TurnSolver.Solve(changed, method, with, wanted, regulation.Going, job.Practice, job.Going);

        Remedy WithRisersLetGo(Remedy remedy) => isFixed ? remedy with { Words = remedy.Words + ", the risers solved", Changes = [.. remedy.Changes, letGo] } : remedy;
    }
}
