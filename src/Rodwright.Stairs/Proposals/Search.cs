using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Proposals;

/// <summary>Goes through every candidate of a family.</summary>
/// <param name="brief">What is to be chosen.</param>
/// <param name="table">Its regulation.</param>
internal sealed class Search(Brief brief, Regulation table)
{
    private const double LeastSum = 550;
    private const double MostSum = 700;
    private readonly Dictionary<(FamilyTurn, int, double?, double, double, (int, int)), TurnFits> fits = [];

    public RuleBounds Rules { get; } = RuleBounds.Of(table, brief.ModelScale);

    public long Judged { get; private set; }

    /// <summary>A stair with its judgement, before another takes its place in the same storage.</summary>
    public delegate void Seen(QuickPlan plan, ImmutableArray<int> steps, double? well, int risers, ReadOnlySpan<int> goings, int going, bool fits, ReadOnlySpan<double> over);

    /// <summary>
    /// Judges the candidates of a family in a range: at every going the smallest newel that keeps every limit, and no going longer than the room holds. What follows from the number of
    /// risers alone is not tried going by going.
    /// </summary>
    public void Run(Family family, SearchRange range, Seen seen) => Run(family, range, seen, whole: false);

    /// <summary>Judges every candidate with every newel, those that are known to fail too: to see by how much.</summary>
    public void All(Family family, SearchRange range, Seen seen) => Run(family, range, seen, whole: true);

    private void Run(Family family, SearchRange range, Seen seen, bool whole)
    {
        if (range.Goings.Most < range.Goings.Least) return;
        Span<double> over = stackalloc double[QuickPlan.Bounds];
        Span<int> goings = stackalloc int[family.Turns.Length + 1];
        foreach (var (steps, well) in Variants(family))
        {
            foreach (var width in range.Widths)
            {
                var plans = Plans(family, steps, well, width, range);
                if (plans.Length == 0) continue;
                for (var risers = range.Risers.Least; risers <= range.Risers.Most; risers++)
                {
                    var straight = risers - 1 - plans[0].TurnSteps;
                    if (straight < Math.Max(0, family.Turns.Length - 1) * family.LeastBetween) continue;
                    goings.Clear();
                    Split(family, plans, (steps, well), risers, straight, goings, 0, whole ? GoingsNear(risers, range) : GoingsFor(risers, range), over, seen, whole);
                }
            }
        }
    }

    /// <summary>Judges every going of one layout.</summary>
    public void Along(Candidate of, SearchRange range, Seen seen)
    {
        Span<double> over = stackalloc double[QuickPlan.Bounds];
        foreach (var width in range.Widths)
            Goings(Plans(of.Family, of.Steps, of.Well, width, range), (of.Steps, of.Well), of.Risers, of.Goings.AsSpan(), GoingsFor(of.Risers, range), over, seen, whole: false);
    }

    private QuickPlan[] Plans(Family family, ImmutableArray<int> steps, double? well, double width, SearchRange range) =>
        [.. range.Newels.Select(n => PlanOf(family, steps, well, n, width, range.Goings)).OfType<QuickPlan>()];

    /// <summary>Goings that pitch and sum leave for a number of risers; none where the rise is not allowed.</summary>
    private (int Least, int Most) GoingsFor(int risers, SearchRange range)
    {
        var rise = brief.Survey.Height / risers;
        if (rise > Rules.Rise.Most + 1e-6 || rise < Rules.Rise.Least - 1e-6) return (1, 0);
        // Where a table says nothing of their sum, the widest of the books serves: nobody would propose beyond it.
        var sum = (Least: Math.Max(Rules.TwoRiseAndGoing.Least, LeastSum * brief.ModelScale), Most: Math.Min(Rules.TwoRiseAndGoing.Most, MostSum * brief.ModelScale));
        var (least, most) = (Math.Max(rise / Rules.Slope, sum.Least - 2 * rise), sum.Most - 2 * rise);
        return (Math.Max(range.Goings.Least, range.Steps.Up(Math.Max(0, least), 1e-6)), range.Steps.Down(Math.Min(range.Steps.At(range.Goings.Most), most), 1e-6));
    }

    /// <summary>Goings round the shortest that pitch and sum allow: a longer one only takes more room.</summary>
    private (int Least, int Most) GoingsNear(int risers, SearchRange range)
    {
        var rise = brief.Survey.Height / risers;
        var least = range.Steps.Up(Math.Max(Rules.Going.Least, Math.Max(rise / Rules.Slope, Rules.TwoRiseAndGoing.Least - 2 * rise)), 1e-6);
        return (Math.Max(range.Goings.Least, least - range.Steps.Up(12, 0)), Math.Min(range.Goings.Most, least + range.Steps.Up(4, 0)));
    }

    private void Split(
        Family family, QuickPlan[] plans, (ImmutableArray<int>, double?) variant, int risers, int left, Span<int> goings, int flight, (int, int) range, Span<double> over, Seen seen, bool whole)
    {
        if (flight == goings.Length - 1)
        {
            goings[flight] = left;
            Goings(plans, variant, risers, goings, range, over, seen, whole);
            return;
        }
        for (var n = flight == 0 ? 0 : family.LeastBetween; n <= left; n++)
        {
            if (flight == 0 && !family.Holds(n, left)) continue;
            goings[flight] = n;
            Split(family, plans, variant, risers, left - n, goings, flight + 1, range, over, seen, whole);
        }
    }

    private void Goings(
        QuickPlan[] plans, (ImmutableArray<int> Steps, double? Well) variant, int risers, ReadOnlySpan<int> goings, (int Least, int Most) range, Span<double> over, Seen seen, bool whole)
    {
        for (var going = range.Least; going <= range.Most; going++)
        {
            var hopeless = true;
            foreach (var plan in plans)
            {
                var fits = plan.Judge(risers, goings, going, over, whole);
                Judged++;
                seen(plan, variant.Steps, variant.Well, risers, goings, going, fits, over);
                if (whole) continue;
                hopeless &= QuickPlan.IsTooLarge(over);
                if (fits || !plan.WantsNewel(over)) break;
            }
            if (hopeless && !whole) return;
        }
    }

    /// <summary>Numbers of steps of the turns, and wells. Two turns of one kind have the same number of steps.</summary>
    internal static IEnumerable<(ImmutableArray<int> Steps, double? Well)> Variants(Family family)
    {
        var counts = family.Turns.IsEmpty ? [[]] : family.Turns.Select(t => t.Steps).MaxBy(s => s.Length)
            .Select(n => family.Turns.Select(t => t.Steps.Contains(n) ? n : t.Steps[0]).ToImmutableArray());
        var wells = family.Turns.FirstOrDefault(t => !t.Wells.IsEmpty) is { } open ? open.Wells.Select(w => (double?)w) : [null];
        return counts.SelectMany(c => wells.Select(w => (c, w)));
    }

    private QuickPlan? PlanOf(Family family, ImmutableArray<int> steps, double? well, double newel, double width, (int Least, int Most) goings)
    {
        var job = brief.With(new(Hand.Left, [new Flight(1)]), 1, width, newel);
        var clear = width - job.Practice.WallString.Thickness - job.Practice.NewelString.Thickness;
        if (clear <= newel || (well is { } open && open < newel * 1.25)) return null;
        var turns = family.Turns.Select((t, i) => FitsOf(t, steps[i], well, job, goings)).ToArray();
        return new(job, Rules, Pace.OfGoings(brief.Units), QuickRoom.Of(brief.Survey, job.OuterSide == SideKind.Wall), turns, [.. family.Turns.Select(t => t.Against)]);
    }

    private TurnFits FitsOf(FamilyTurn turn, int steps, double? well, Job job, (int, int) goings)
    {
        var key = (turn, steps, well, job.Practice.Newel, job.Width, goings);
        if (fits.TryGetValue(key, out var known)) return known;
        return fits[key] = new(job, Candidate.TurnOf(turn, steps, well, Hand.Left), table, Rules, goings);
    }
}
