using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;

namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>The remedies that many findings share, each with its words.</summary>
internal static class Remedied
{
    /// <summary>A newel of another size.</summary>
    public static Remedy Newel(Units units, double side) => Remedy.Of($"a newel of {units.Print(side)}", FieldChange.To("practice.newel", side));

    /// <summary>Newels of the sizes kept in stock that are larger than one.</summary>
    public static Way NewelsAbove(Units units, double side) => Way.Of(Newels(units).Where(n => n > side).Select(n => Newel(units, n)));

    // Sizes a timber yard keeps or a shop planes to, finished (trade-practice.md 4b and common practice).
    public static ImmutableArray<double> Newels(Units units) => units.IsInches ? InchNewels : MetricNewels;

    private static ImmutableArray<double> MetricNewels { get; } = [69, 75, 90, 100, 120, 140, 150];

    // 2 3/4, 3, 3 1/4, 3 1/2 (a dressed 4 x 4), 4, 4 1/2, 5 1/2 (a dressed 6 x 6) and 6 inches.
    private static ImmutableArray<double> InchNewels { get; } = [.. new[] { 2.75, 3, 3.25, 3.5, 4, 4.5, 5.5, 6 }.Select(i => Units.Inches.Stock(i * Units.Inch))];

    /// <summary>A size of practice, by its field; the first of several that will do.</summary>
    public static Way Size(Units units, string path, string name, params IEnumerable<double> sizes) =>
        Way.Of(sizes.Select(units.Stock).Distinct().Select(v => v >= 0 ? Remedy.Of($"{name} {units.Print(v, 2)}", FieldChange.To(path, v)) : null));

    /// <summary>A stair of another width over strings.</summary>
    public static Remedy Width(Units units, double width) => Remedy.Of($"a stair {units.Print(width)} wide", FieldChange.To("width", width));

    /// <summary>Another going of the straight steps.</summary>
    public static Remedy Going(Units units, double going) => Remedy.Of($"a going of {units.Print(going, 2)}", FieldChange.To("going", going));

    /// <summary>More or fewer risers; null when the flights cannot give so many.</summary>
    public static Remedy? Risers(Job job, int risers) => ChangesOfSteps.Risers(job, risers) is { } change
        ? Remedy.Of($"{Number.Print(risers, 0)} risers of {job.Units.Print(job.Survey.Height / risers, 2)}", change)
        : null;

    /// <summary>A turn with so many tapered steps, the number of risers kept.</summary>
    public static Remedy? Tapered(Job job, int index, int tapered) => TurnOf(job, index) is { Kind: TurnKind.Winders } turn
        && ChangesOfSteps.Turn(job, index, turn with { Tapered = tapered }) is { } change ? Remedy.Of($"{Number.Print(tapered, 0)} tapered steps in the turn", change) : null;

    /// <summary>A landing in place of the tapered steps of a turn, the number of risers kept.</summary>
    public static Remedy? Landing(Job job, int index) => TurnOf(job, index) is { Kind: TurnKind.Winders } turn && ChangesOfSteps.Landing(job, index) is { } change
        ? Remedy.Of($"a {(turn.Quarters == 1 ? "quarter" : "half")} landing in place of the tapered steps", change)
        : null;

    /// <summary>A turn so many steps up the stair: the flights before and after it give and take.</summary>
    public static Remedy? TurnMoved(Job job, int index, int steps)
    {
        var course = Course.Of(job.Layout);
        if (index >= course.Turns.Length || steps == 0 || course.Goings[index] + steps < 0 || course.Goings[index + 1] - steps < 0) return null;
        var count = Math.Abs(steps);
        var goings = course.Goings.SetItem(index, course.Goings[index] + steps).SetItem(index + 1, course.Goings[index + 1] - steps);
        return Remedy.Of($"the turn {(count == 1 ? "one step" : $"{Number.Print(count, 0)} steps")} {(steps > 0 ? "up" : "down")}", ChangesOfSteps.Sequence(course with { Goings = goings }));
    }

    /// <summary>The risers of a turn fixed so far outside the newel's centre.</summary>
    public static Remedy TurnRisers(Job job, int index, double first, double last) => Remedy.Of(
        first == last ? $"the turn's risers {job.Units.Print(first)} outside the newel's centre" : $"the turn's risers {job.Units.Print(first)} and {job.Units.Print(last)} outside the newel's centre",
        WithTurn(job, index, TurnOf(job, index)! with { FirstRiser = first, LastRiser = last }));

    /// <summary>The sequence with a turn's own fields changed; its number of steps stays.</summary>
    public static FieldChange WithTurn(Job job, int index, Turn turn)
    {
        var course = Course.Of(job.Layout);
        // Where the sequence says the same as its course, only the item itself is put in its place.
        return job.Layout.Sequence.OfType<Turn>().Count() == course.Turns.Length
            ? FieldChange.ToSequence(Replaced(job.Layout.Sequence, index, turn))
            : ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(index, turn) });
    }

    /// <summary>A turn of the job's course; null when it has not so many.</summary>
    public static Turn? TurnOf(Job job, int index) => Course.Of(job.Layout).Turns.ElementAtOrDefault(index);

    private static IEnumerable<LayoutItem> Replaced(ImmutableArray<LayoutItem> sequence, int index, Turn turn)
    {
        var at = 0;
        foreach (var item in sequence) yield return item is Turn && at++ == index ? turn : item;
    }
}
