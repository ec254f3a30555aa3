using System.Collections.Immutable;

namespace Rodwright.Stairs.Findings;

/// <summary>What would free something that pinches: in words, and as changes where a number is known that may do. Not tried yet.</summary>
/// <param name="Words">In bench words; may say more than the changes can do.</param>
/// <param name="Ways">Each sufficient by itself.</param>
public sealed record Advice(string Words, ImmutableArray<Way> Ways)
{
    /// <summary>Words, and the ways they speak of.</summary>
    public static Advice Of(string words, params ImmutableArray<Way> ways) => new(words, ways);

    /// <summary>Words alone.</summary>
    public static implicit operator Advice(string words) => new(words, []);
}
