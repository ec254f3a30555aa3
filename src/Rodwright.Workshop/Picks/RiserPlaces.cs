using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Picks;

/// <summary>Where a riser's face stands: in plan, and on the strings it is housed in.</summary>
internal static class RiserPlaces
{
    public static IEnumerable<Fact> InPlan(PickBench bench, int k)
    {
        var plan = bench.Plan;
        // In its flight, from the riser the flight is measured from.
        foreach (var flight in plan.Flights)
        {
            var from = flight.Index == 0 ? 1 : TurnPlaces.LastSquare(plan.Turns[flight.Index - 1]);
            var to = flight.Index == plan.Turns.Length ? plan.Risers : TurnPlaces.FirstSquare(plan.Turns[flight.Index]);
            if (k > from && k <= to) yield return Run($"from riser {Number.Print(from, 0)}", k - from);
        }
        foreach (var turn in plan.Turns)
        {
            var (first, last) = (TurnPlaces.FirstSquare(turn), TurnPlaces.LastSquare(turn));
            if (k < first || k > last) continue;
            if (k == first || k == last)
            {
                var (e, shared) = k == first ? (turn.FirstRiser, turn.FirstLine - first) : (turn.LastRiser, last - turn.LastLine);
                var label = plan.Turns.Length == 1 ? "outside the newel's centre line" : $"outside the centre line of the newel of {TurnWords.The(plan, turn)}";
                yield return bench.Mm(label, e + shared * plan.Going, Why.Rule($"what decided it: {turn.DecidedBy}"), Why.Steps, Working.Of(e) + Working.Of(shared) * plan.Going);
                continue;
            }
            var (j, n) = (k - first, turn.Steps.Length);
            var whole = turn.Steps.Sum(s => s.NarrowAlongFaces);
            yield return bench.Mm("narrow ends together", whole, Why.Rule($"along the newel's {(turn.Site.Quarters == 1 ? "two" : "three")} faces, from the turn's first riser to its last; the jog to the string is not counted"), "practice.newel",
                GoingFacts.Narrow(plan, turn));
            yield return bench.Mm("its narrow end, along the newel's faces", turn.Steps.Take(j).Sum(s => s.NarrowAlongFaces), Why.Rule(Method(turn)), Why.Steps, Working.Of(j) * Working.Of(whole) / n);
            yield return bench.Mm("its place along the walking line", turn.Steps.Take(j).Sum(s => s.GoingArc), Why.Rule("from the turn's first riser, along the line"), "",
                WalkingFacts.Stretch(plan, turn, 0, turn.Steps.Take(j).Sum(s => s.GoingArc)));
            yield return bench.Mm("wide ends so far, along the wall", turn.Steps.Take(j).Sum(s => s.Wide), Why.Rule("from the turn's first riser, round the corner where it lies beyond; the wall proves the riser"), "",
                GoingFacts.Wide(plan, turn, plan.Riser(first), plan.Riser(k)));
        }

        Fact Run(string from, int goings) => bench.Mm(from, goings * plan.Going, Why.Rule("goings are measured from riser face to riser face, all from one riser so that errors do not add up"), Why.Going, Working.Of(goings) * plan.Going);
    }

    /// <summary>How a method shares the narrow ends out, in words.</summary>
    public static string Method(TurnPlan turn) => TurnCatalogue.Find(turn.Method)?.Title ?? "square to the flights";

    /// <summary>Stations on the developments: each from the riser before it.</summary>
    public static IEnumerable<Fact> OnStrings(PickBench bench, int k)
    {
        foreach (var boards in bench.Developments())
        {
            var points = boards[0].PitchPoints;
            var at = -1;
            for (var i = 0; i < points.Length; i++) if (points[i].Riser == k) at = i;
            if (at < 0) continue;
            yield return bench.Mm($"along the {Name(boards)}", points[at].At.X, Why.Rule($"counted from {Datum(bench, boards[0])}; carried over from the plan"), "", Station(bench, boards[0], at));
        }
    }

    /// <summary>What a development counts from.</summary>
    public static string Datum(PickBench bench, StringBoard board) => board.Site.Lower.Kind == StringEndKind.Newel
        ? $"the {bench.Plan.Newels.First(n => n.Id == board.Site.Lower.Newel).Name}'s centre line"
        : board.PitchPoints.FirstOrDefault(p => Math.Abs(p.At.X) < 0.001) is { } first ? $"riser {Number.Print(first.Riser, 0)}'s face" : "the first riser's face";

    /// <summary>"wall strings" for those that meet round corners.</summary>
    public static string Name(System.Collections.Immutable.ImmutableArray<StringBoard> boards) => boards.Length == 1 ? boards[0].Part.Name : boards[0].Site.IsWall ? "wall strings" : "newel strings";

    /// <summary>A pitch point's station: the one before it and the going or wide end between; the first after a newel by its own offset.</summary>
    public static Working Station(PickBench bench, StringBoard board, int at)
    {
        var (plan, points) = (bench.Plan, board.PitchPoints);
        if (at == 0) return Working.Of(points[0].At.X);
        var (before, k) = (points[at - 1], points[at - 1].Riser);
        if (points[at].Riser != k + 1) return Working.Of(points[at].At.X);
        var between = plan.TurnOf(k) is { } turn && turn.Steps.FirstOrDefault(s => s.Number == k) is { } step ? board.Site.Inner == plan.IsInner(turn) ? step.NarrowAlongFaces : step.Wide : plan.Going;
        return Working.Of(before.At.X) + between;
    }

    /// <summary>Length of a riser's face: the clear width, or on the slant over the sides of a right angle.</summary>
    public static Working Length(PickBench bench, int k)
    {
        var line = bench.Plan.Riser(k);
        var (dx, dy) = (line.Outer.X - line.Inner.X, line.Outer.Y - line.Inner.Y);
        if (Math.Abs(dx) > 1e-6 && Math.Abs(dy) > 1e-6) return Working.Across(dx, dy);
        // Square across: the newel stands proud of the string it takes.
        var proud = bench.Plan.ClearWidth - line.Inner.DistanceTo(line.Outer);
        return proud > Tolerance.Same ? Working.Of(bench.Plan.ClearWidth) - proud : Working.Of(bench.Job.Width) - bench.Plan.InnerThickness - bench.Plan.OuterThickness;
    }
}
