using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Benchmarks;

/// <summary>The jobs that are measured.</summary>
internal static class Jobs
{
    /// <summary>The regulation they are judged by.</summary>
    public static Regulation Regulation { get; } = RegulationCatalogue.Find("england-2013-private")!;

    /// <summary>A straight flight of so many steps.</summary>
    public static Job Straight(int steps) => Of(steps, [new Flight(steps)]);

    /// <summary>A kite turn low down: as many steps in all, three of them tapered.</summary>
    public static Job Kite(int steps)
    {
        var before = Math.Min(2, steps - 3);
        return Of(steps, [new Flight(before), new Turn(TurnKind.Winders, 3, null, null, "equal-goings"), new Flight(steps - 3 - before)]);
    }

    /// <summary>A half turn of two kites between two flights: as many steps in all, at least eight, six of them tapered.</summary>
    public static Job HalfTurn(int steps)
    {
        var straight = Math.Max(2, steps - 6);
        return Of(straight + 6, [new Flight(straight / 2), new Turn(TurnKind.Winders, 6, null, null, "equal-goings") { Quarters = 2 }, new Flight(straight - straight / 2)]);
    }

    /// <summary>The same job after one change, a different one each time: nothing can be remembered from one run to the next.</summary>
    public static Job Changed(Job job, int time) => job with { Going = job.Going + time % 16 * 0.5 };

    private static Job Of(int steps, ImmutableArray<LayoutItem> sequence) => new()
    {
        Title = "measured", Regulation = Regulation.Id, Survey = new() { FloorToFloor = [(steps + 1) * 195.0] }, Going = 225, Width = 860,
        Layout = new(Hand.Left, sequence), Sides = Sides.For(Hand.Left),
    };
}
