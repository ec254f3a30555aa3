using System.Collections.Immutable;

namespace Rodwright.Rod.Stages;

/// <summary>How a line is found and drawn: from which datum, how far, which way, and why.</summary>
/// <param name="Measures">The distances to mark off, in order; at least one.</param>
/// <param name="Act">What is then done, beginning with a verb.</param>
/// <param name="Why">The rule, and its formula with the values in it.</param>
/// <param name="Source">Where the rule is published; empty where none is known.</param>
public sealed record Instruction(ImmutableArray<Measure> Measures, string Act, string Why, string Source = "")
{
    /// <summary>What to do, in sentences.</summary>
    public string What => $"{Upper(string.Join("; ", Measures.Select(m => m.Words)))}. {Upper(Act)}.";

    /// <summary>Why, with its source in brackets.</summary>
    public string Reason => Source.Length == 0 ? $"{Upper(Why)}." : $"{Upper(Why)} ({Source}).";

    private static string Upper(string words) => words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];
}
