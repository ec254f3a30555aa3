using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;

namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>The remedies that many findings share, each with its words.</summary>
internal static class Remedied
{
    /// <summary>A newel of another size.</summary>
    public static Remedy Newel(double side) => Remedy.Of($"a newel of {Number.Print(side)}", FieldChange.To("practice.newel", side));

    /// <summary>Newels of the sizes kept in stock that are larger than one.</summary>
    public static Way NewelsAbove(double side) => Way.Of(Newels.Where(n => n > side).Select(Newel));

    // Sizes a timber yard keeps or a shop planes to, finished (trade-practice.md 4b and common practice).
    public static ImmutableArray<double> Newels { get; } = [69, 75, 90, 100, 120, 140, 150];

    /// <summary>A size of practice, by its field; the first of several that will do.</summary>
    public static Way Size(string path, string name, params IEnumerable<double> sizes) =>
        Way.Of(sizes.Select(v => v >= 0 ? Remedy.Of($"{name} {Number.Print(v, 2)}", FieldChange.To(path, v)) : null));

    /// <summary>A stair of another width over strings.</summary>
    public static Remedy Width(double width) => Remedy.Of($"a stair {Number.Print(width)} wide", FieldChange.To("width", width));

    /// <summary>Another going of the straight steps.</summary>
    public static Remedy Going(double going) => Remedy.Of($"a going of {Number.Print(going, 2)}", FieldChange.To("going", going));

    /// <summary>More or fewer risers; null when the flights cannot give so many.</summary>
    public static Remedy? Risers(Job job, int risers) => ChangesOfSteps.Risers(job, risers) is { } change
        ? Remedy.Of($"{Number.Print(risers, 0)} risers of {Number.Print(job.Survey.Height / risers, 2)}", change)
        : null;

    /// <summary>A turn with so many tapered steps, the number of risers kept.</summary>
    public static Remedy? Tapered(Job job, int tapered) => job.Layout.Turn is { Kind: TurnKind.Winders } turn
        && ChangesOfSteps.Turn(job, turn with { Tapered = tapered }) is { } change ? Remedy.Of($"{Number.Print(tapered, 0)} tapered steps in the turn", change) : null;

    /// <summary>A quarter landing in place of tapered steps, the number of risers kept.</summary>
    public static Remedy? Landing(Job job) => job.Layout.Turn is { Kind: TurnKind.Winders } && ChangesOfSteps.Landing(job) is { } change
        ? Remedy.Of("a quarter landing in place of the tapered steps", change)
        : null;

    /// <summary>The turn so many steps up the stair.</summary>
    public static Remedy? TurnMoved(Job job, int steps)
    {
        var (before, after) = (job.Layout.GoingsBefore + steps, job.Layout.GoingsAfter - steps);
        if (job.Layout.Turn is not { } turn || steps == 0 || before < 0 || after < 0) return null;
        var count = Math.Abs(steps);
        return Remedy.Of($"the turn {(count == 1 ? "one step" : $"{Number.Print(count, 0)} steps")} {(steps > 0 ? "up" : "down")}", ChangesOfSteps.Sequence(before, turn, after));
    }

    /// <summary>The risers of the turn fixed so far outside the newel's centre.</summary>
    public static Remedy TurnRisers(Job job, double first, double last) => Remedy.Of(
        first == last ? $"the turn's risers {Number.Print(first)} outside the newel's centre" : $"the turn's risers {Number.Print(first)} and {Number.Print(last)} outside the newel's centre",
        WithTurn(job, job.Layout.Turn! with { FirstRiser = first, LastRiser = last }));

    /// <summary>The sequence with the turn's own fields changed; its number of steps stays.</summary>
    public static FieldChange WithTurn(Job job, Turn turn) => FieldChange.ToSequence(job.Layout.Sequence.Select(item => item is Turn ? turn : item));
}
