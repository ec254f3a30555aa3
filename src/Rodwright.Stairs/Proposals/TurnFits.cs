using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Proposals;

/// <summary>
/// Where the risers of one turn stand for every going of the flights: the solver's own answer, and where a table asks for more than it keeps, the least offset in whole millimetres, or
/// sixteenths of an inch, that keeps it, inside the newel or past it. All limits from below only grow easier with the offset, so one walk up through the offsets serves all goings.
/// </summary>
internal sealed class TurnFits
{
    private const double PastMost = 150;
    private readonly Pace goingPace;
    private readonly Pace pace;
    private readonly Job job;
    private readonly Turn turn;
    private readonly Regulation table;
    private readonly RuleBounds bounds;
    private readonly TurnMethod method;
    private readonly double? second;
    private readonly int from;
    private readonly TurnFit?[] fits;
    private readonly NewelArrises arrises;
    private readonly Dictionary<int, TurnMeasure> measured = [];
    private readonly Dictionary<int, bool> clear = [];

    /// <param name="job">Any job of the practice, newel and width in question.</param>
    /// <param name="turn">The turn, its risers open.</param>
    /// <param name="table">The regulation.</param>
    /// <param name="bounds">What it asks.</param>
    /// <param name="goings">First and last going asked for, counted in steps of goings.</param>
    public TurnFits(Job job, Turn turn, Regulation table, RuleBounds bounds, (int Least, int Most) goings)
    {
        (this.job, this.turn, this.table, this.bounds, from) = (job, turn, table, bounds, goings.Least);
        var clear = job.Width - PlanShape.Thickness(job, job.InnerSide) - PlanShape.Thickness(job, job.OuterSide);
        Site = PlanShapes.Site(job, turn, clear, table.WalkingLine.InsetFor(clear, job.ModelScale));
        second = table.WalkingLine.SecondInsetFor(clear, job.ModelScale) is { } inset ? Site.InnerFace + inset : null;
        method = turn.Kind == TurnKind.Landing ? QuarterLanding.Instance : TurnCatalogue.Find(turn.Method)!;
        (goingPace, pace) = (Pace.OfGoings(job.Units), Pace.OfRisers(job.Units));
        arrises = new(job.Practice);
        fits = new TurnFit?[goings.Most - goings.Least + 1];
    }

    public TurnSite Site { get; }

    public Turn Turn => turn;

    public bool IsLanding => turn.Kind == TurnKind.Landing;

    // Offsets are counted in steps, as goings are.
    private int Inside => pace.Down(Site.HalfNewel - job.Practice.Cover, Tolerance.Same);

    private int Past => pace.Up(Site.HalfNewel + job.Practice.Riser + job.Practice.Cover, Tolerance.Same);

    private int LastPast => Past + pace.Up(PastMost, 0);

    public TurnFit For(int going) => fits[going - from] ??= IsLanding ? Landing() : method.Shares && turn.SharedBefore > 0 ? Shared(goingPace.At(going)) : Alone(going, goingPace.At(going));

    /// <summary>The longest landing in the way in or out is as long as from the riser to the wall string.</summary>
    private TurnFit Landing()
    {
        var asked = Math.Max(bounds.Landing, bounds.LandingAtLeastClear ? Site.OuterFace - Site.InnerFace : 0);
        var e = pace.Up(Math.Max(0, asked - Site.OuterFace), Tolerance.Same);
        if (e > Inside) e = Math.Max(e, Past);
        return new(pace.At(e), e > 0, e >= Past && e > Inside, default, 0, 0);
    }

    private TurnFit Alone(int count, double going)
    {
        var (least, narrow) = Wanted(going);
        var most = Inside;
        var start = count > from && fits[count - from - 1] is { NarrowShort: 0, GoingShort: 0, Past: false } before ? pace.Down(before.Offset, Tolerance.Same) : 0;
        var solved = First(0, most, e => Solves(e, going));
        if (solved is not null && First(Math.Max(start, solved.Value), most, e => Keeps(At(e), least, narrow)) is { } inside)
            return new(pace.At(inside), inside != solved.Value, false, At(inside), 0, 0);
        if (turn.Quarters == 1 && First(Past, LastPast, e => Keeps(At(e), least, narrow) && Solves(e, going)) is { } first && Clear(first) is { } past)
            return new(pace.At(past), true, true, At(past), 0, 0);
        var reached = At(Math.Max(0, most));
        return new(pace.At(Math.Max(0, most)), false, false, reached, NarrowShort(reached, narrow), Math.Max(0, Math.Max(least - reached.Going, OuterLeast(going) - reached.Outer)));
    }

    /// <summary>The first offset from one on at which the risers between the first and the last keep clear of the newel's arrises; null when none does.</summary>
    private int? Clear(int from)
    {
        var e = from;
        while (e <= LastPast && !IsClear(e)) e++;
        return e <= LastPast ? e : null;
    }

    private TurnFit Shared(double going)
    {
        var wanted = new TurnSolver.Wanted(Math.Max(table.TaperedAtLeastStraight ? going : 0, table.LeastGoing * job.ModelScale), table.LeastNarrow * job.ModelScale);
        var found = TurnSolver.Solve(Site, method, turn, wanted, table.Going, job.Practice, going);
        var measure = TurnMeasure.Of(Site, method, TurnSolver.Setting(turn, found.FirstRiser, found.LastRiser, job.Practice, going, wanted.Narrow), table.Going, second);
        var (least, narrow) = Wanted(going);
        return new(found.FirstRiser, false, false, measure, Math.Max(NarrowShort(measure, narrow), found.Fits ? 0 : wanted.Narrow - found.Narrow), Math.Max(0, least - Tolerance.Joint - measure.Going));
    }

    /// <summary>What the solver itself keeps.</summary>
    private bool Solves(int e, double going) => At(e).Going >= Math.Max(table.TaperedAtLeastStraight ? going : 0, table.LeastGoing * job.ModelScale) - Tolerance.Same
        && At(e).Faces >= table.LeastNarrow * job.ModelScale - Tolerance.Same;

    private bool Keeps(TurnMeasure m, double least, double narrow) => m.Going >= least - Tolerance.Same && m.Outer >= OuterLeast(least) - Tolerance.Same && NarrowShort(m, narrow) <= 0;

    private (double Going, double Narrow) Wanted(double going) => (Math.Max(bounds.TaperedAtLeastStraight ? going : 0, bounds.TaperedGoing), bounds.NarrowFaces);

    private double OuterLeast(double going) => Math.Max(bounds.OuterGoing, bounds.OuterAtLeastStraight ? going : 0);

    private double NarrowShort(TurnMeasure m, double faces) => Math.Max(0, Math.Max(faces - Tolerance.Same - m.Faces,
        Math.Max(bounds.NarrowStraight - Tolerance.Same - m.Straight, bounds.NarrowTread - Tolerance.Same - m.Faces - job.Practice.Nosing)));

    private TurnMeasure At(int e)
    {
        if (measured.TryGetValue(e, out var known)) return known;
        return measured[e] = TurnMeasure.Of(Site, method, Setting(e), table.Going, second);
    }

    private bool IsClear(int e) => clear.TryGetValue(e, out var known) ? known : clear[e] = arrises.AreClear(Site, method.Lines(Site, Setting(e)));

    private TurnSetting Setting(int e) => TurnSolver.Setting(turn, pace.At(e), pace.At(e), job.Practice, 0, table.LeastNarrow * job.ModelScale);

    /// <summary>The first number of a range at which something holds that goes on holding; null when it never does.</summary>
    private static int? First(int low, int high, Func<int, bool> holds)
    {
        if (high < low || !holds(high)) return null;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(middle)) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
