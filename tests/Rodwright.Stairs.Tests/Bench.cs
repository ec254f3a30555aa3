using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Tests;

/// <summary>Stairs to measure, in the fewest words.</summary>
internal static class Bench
{
    public const double Inch = 25.4;

    public static Job Flight(double height, int risers, double going) => new()
    {
        Title = "bench", Regulation = "england-2013-private", Survey = new() { FloorToFloor = [height] }, Going = going, Width = 860,
        Layout = new(Hand.Left, [new Flight(risers - 1)]), Sides = Sides.For(Hand.Left),
    };

    public static Job Turned(double height, double going, int before, Turn turn, int after) =>
        Flight(height, 2, going) with { Layout = new(Hand.Left, [new Flight(before), turn, new Flight(after)]) };

    public static Turn Winders(int steps, double? e = null, string method = "equal-goings") => new(TurnKind.Winders, steps, e, e, method);

    public static Turn Landing { get; } = new(TurnKind.Landing, 1, null, null, "");

    public static StairPlan Plan(this Job job, string regulation = "england-2013-private") =>
        Planner.SetOut(job with { Regulation = regulation }, RegulationCatalogue.Find(regulation)!).Value!;

    /// <summary>The check of a rule; where a table has several clauses for it, the one whose number holds <paramref name="clause"/>.</summary>
    public static ClauseCheck Check(this StairPlan plan, string rule, string clause = "") =>
        Judge.Check(plan).Checks.First(c => c.Clause.Rule.Id == rule && c.Clause.Number.Contains(clause, StringComparison.Ordinal));

    /// <summary>The plan with what is measured on its tapered steps put in.</summary>
    public static StairPlan WithSteps(this StairPlan plan, Func<TaperedStep, TaperedStep> change) =>
        plan with { Turns = [.. plan.Turns.Select(t => t with { Steps = [.. t.Steps.Select(change)] })] };
}
