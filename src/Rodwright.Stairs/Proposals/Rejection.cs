using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Proposals;

/// <summary>Finds what decides against a family: of all its candidates, those that fail in one thing alone, and of these the one that fails by least.</summary>
internal static class Rejection
{
    private const int MostHelps = 3;

    /// <summary>What counts as an equally large shortage of each bound: mm, degrees of slope as mm of rise, risers.</summary>
    private static double Unit(Bound bound) => bound switch
    {
        Bound.WellLength or Bound.WellWidth or Bound.RoomLength or Bound.RoomWidth or Bound.ClearWidth or Bound.Landing => 100,
        Bound.Going or Bound.TaperedGoing or Bound.LongestGoing or Bound.TwoRiseAndGoing or Bound.Narrow or Bound.StringWidth => 10,
        Bound.Rise or Bound.Pitch or Bound.TaperedPitch => 5,
        Bound.RisersPerFlight or Bound.StraightRun => 1,
        _ => 50,
    };

    public static RejectedFamily Of(Brief brief, Regulation table, Search search, SearchRange range, Family family, string? wholeStair, Func<Job, string?> confirm)
    {
        // What kept every quick limit was turned down on its plan or when it was set out.
        if (wholeStair is not null) return new(family, wholeStair, []);
        var nearest = new Dictionary<Bound, Nearest>();
        (int Count, double Over, Bound Bound, Candidate? Candidate) fewest = (int.MaxValue, double.PositiveInfinity, default, null);
        (double Sum, double[] Over, Candidate? Candidate) ofHouse = (double.PositiveInfinity, [], null);
        search.All(family, range.Wider(), (plan, steps, well, risers, goings, going, _, over) =>
        {
            var (count, worst, sum, house) = (0, (Bound)0, 0.0, true);
            for (var i = 0; i < over.Length; i++)
            {
                if (over[i] <= 1e-6) continue;
                count++;
                sum += over[i] / Unit((Bound)i);
                house &= IsOfHouse((Bound)i);
                if (count == 1 || over[i] / Unit((Bound)i) > over[(int)worst] / Unit(worst)) worst = (Bound)i;
            }
            if (count > 0 && house && sum < ofHouse.Sum) ofHouse = (sum, over.ToArray(), Taken(family, plan, steps, well, risers, goings, going));
            if (count == 0 || count > fewest.Count) return;
            var by = over[(int)worst];
            if (count < fewest.Count || by / Unit(worst) < fewest.Over) fewest = (count, by / Unit(worst), worst, Taken(family, plan, steps, well, risers, goings, going));
            if (count > 1) return;
            if (!nearest.TryGetValue(worst, out var list)) nearest[worst] = list = new();
            if (list.Takes(by)) list.Add(by, Taken(family, plan, steps, well, risers, goings, going));
        });
        var together = new Lazy<Relaxation?>(() => ofHouse.Candidate is { } moved ? Relaxations.Together(brief, table, ofHouse.Over, moved, confirm) : null);
        if (nearest.Count == 0)
        {
            return fewest.Candidate is { } best
                ? new(family, $"several limits at once, the worst of them: {DecisionWords.Decided(search.Rules, fewest.Bound, fewest.Over * Unit(fewest.Bound), best, brief)}", together.Value is { } all ? [all] : [])
                : new(family, "there are fewer steps than its turns need", []);
        }
        var order = nearest.OrderBy(n => n.Value.Least.Over / Unit(n.Key)).ToList();
        var helps = order.Select(n => n.Value.All.Select(c => Relaxations.Of(brief, table, n.Key, c.Over, c.Candidate, search.Rules, confirm)).FirstOrDefault(r => r is not null)).OfType<Relaxation>().Take(MostHelps).ToList();
        if (helps.Count == 0 && together.Value is { } changes) helps.Add(changes);
        // Of what the house lacks, the whole stair may ask for more than boxes tell: then that is said.
        var (decided, nearestOf) = (order[0].Key, order[0].Value.Least);
        var off = IsOfHouse(decided) ? Math.Max(nearestOf.Over, helps.FirstOrDefault(h => h.Bound == decided)?.By ?? 0) : nearestOf.Over;
        return new(family, DecisionWords.Decided(search.Rules, decided, off, nearestOf.Candidate, brief), [.. helps]);
    }

    private static bool IsOfHouse(Bound bound) => bound is Bound.WellLength or Bound.WellWidth or Bound.RoomLength or Bound.RoomWidth;

    private static Candidate Taken(Family family, QuickPlan plan, ImmutableArray<int> steps, double? well, int risers, ReadOnlySpan<int> goings, int going) =>
        new(family, steps, well, risers, [.. goings], plan.Pace.At(going), plan.Job.Practice.Newel, plan.Job.Width)
        {
            Offsets = [.. plan.Found.Select(f => f.Fixed ? f.Offset : (double?)null)], Measures = plan.Measures,
        };
}
