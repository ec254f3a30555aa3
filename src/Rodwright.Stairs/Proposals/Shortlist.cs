using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// Of each layout of a family (numbers of risers and steps, split of the goings) the going, newel and width that rank best. What fails in plan gives way to the next best of its
/// own layout, so that no better going is passed over.
/// </summary>
internal sealed class Shortlist(Brief brief, Regulation table, Search search, SearchRange range, Ranking ranking, Func<Job, string?> confirm)
{
    /// <summary>Plans that are tried of one layout before it is given up.</summary>
    private const int TriesOfLayout = 40;

    /// <summary>Layouts of one family that are tried.</summary>
    private const int TriesOfFamily = 60;

    /// <summary>Stairs set out in full for one family, and for one layout, before the rest is given up.</summary>
    private const int TriesInFull = 12;
    private const int TriesInFullOfLayout = 3;
    private readonly List<DroppedCandidate> dropped = [];
    private string? against;
    private int tried;

    /// <summary>What held in plan and was dropped when it was set out in full.</summary>
    public IReadOnlyList<DroppedCandidate> Dropped => dropped;

    /// <summary>What stood against the best candidate that kept every quick limit; null when none failed in plan.</summary>
    public string? Against => against;

    /// <summary>The best layouts of a family, as many as are tried, the best first.</summary>
    public List<Candidate> Layouts(Family family)
    {
        var best = new Dictionary<long, Best>();
        search.Run(family, range, (plan, steps, well, risers, goings, going, fits, _) =>
        {
            if (!fits) return;
            var key = Key(steps, well, risers, goings);
            var score = ranking.Of(plan.Measures);
            if (!best.TryGetValue(key, out var so)) best[key] = new(score, plan, steps, well, risers, [.. goings], going);
            else if (score < so.Score) best[key] = so with { Score = score, Plan = plan, Going = going };
        });
        return [.. best.OrderBy(b => b.Value.Score).ThenBy(b => b.Key).Take(TriesOfFamily).Select(b => Again(family, b.Value))];
    }

    /// <summary>The best of one layout so far: nothing is kept of it that can be judged again.</summary>
    private readonly record struct Best(double Score, QuickPlan Plan, ImmutableArray<int> Steps, double? Well, int Risers, int[] Goings, int Going);

    private static Candidate Again(Family family, Best best)
    {
        Span<double> over = stackalloc double[QuickPlan.Bounds];
        best.Plan.Judge(best.Risers, best.Goings, best.Going, over, whole: false);
        return Taken(family, best.Plan, best.Steps, best.Well, best.Risers, best.Goings, best.Going, best.Score);
    }

    /// <summary>Those that hold in plan and set out in full, one for each number of risers and steps.</summary>
    public IEnumerable<(Candidate Candidate, FullCheck Check)> Holding(Family family, List<Candidate> layouts)
    {
        var had = new HashSet<(int, string)>();
        foreach (var layout in layouts)
        {
            var kind = (layout.Risers, string.Join(',', layout.Steps));
            if (had.Contains(kind) || tried >= TriesInFull) continue;
            if (Held(family, layout) is not { } held) continue;
            had.Add(kind);
            yield return held;
        }
    }

    private (Candidate, FullCheck)? Held(Family family, Candidate layout)
    {
        var tries = 0;
        if (Check(layout, ref tries) is { Against: null } check) return (layout, check);
        var others = new List<Candidate>();
        lock (search)
        {
            search.Along(layout, range, (plan, steps, well, risers, goings, going, fits, _) =>
            {
                if (fits) others.Add(Taken(family, plan, steps, well, risers, goings, going, ranking.Of(plan.Measures)));
            });
        }
        // Shorter stairs are the easier ones to fit in: where neither the shortest nor one half way to the best holds, the others are not tried.
        var byGoing = others.OrderBy(o => o.Going).ToList();
        if (byGoing.Count > 4 && !IsPlanned(byGoing[0]) && !IsPlanned(byGoing[byGoing.Count / 2])) return null;
        foreach (var other in others.OrderBy(o => o.Score).ThenBy(o => o.Going).Skip(1).Take(TriesOfLayout))
            if (tries <= TriesInFullOfLayout && Check(other, ref tries) is { Against: null } found) return (other, found);
        return null;
    }

    private bool IsPlanned(Candidate candidate) => FullCheck.Of(candidate.Job(brief, brief.Wishes?.Hand ?? Hand.Left), table).Against is null;

    private FullCheck Check(Candidate candidate, ref int tries)
    {
        var job = candidate.Job(brief, brief.Wishes?.Hand ?? Hand.Left);
        var check = FullCheck.Of(job, table);
        if (check.Against is null)
        {
            (tried, tries) = (tried + 1, tries + 1);
            if (confirm(job) is { } reason)
            {
                dropped.Add(new(candidate.Family, DecisionWords.Whole(candidate, brief), reason));
                check = check with { Against = reason };
            }
        }
        against ??= check.Against;
        return check;
    }

    private static Candidate Taken(Family family, QuickPlan plan, ImmutableArray<int> steps, double? well, int risers, ReadOnlySpan<int> goings, int going, double score) =>
        new(family, steps, well, risers, [.. goings], plan.Pace.At(going), plan.Job.Practice.Newel, plan.Job.Width)
        {
            Offsets = [.. plan.Found.Select(f => f.Fixed ? f.Offset : (double?)null)], Measures = plan.Measures, Score = score,
        };

    private static long Key(ImmutableArray<int> steps, double? well, int risers, ReadOnlySpan<int> goings)
    {
        long key = risers;
        foreach (var n in steps) key = key * 16 + n;
        foreach (var n in goings) key = key * 64 + n;
        return key * 4096 + (long)(well ?? 0);
    }
}
