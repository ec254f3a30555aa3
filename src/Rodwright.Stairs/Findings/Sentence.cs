namespace Rodwright.Stairs.Findings;

/// <summary>Findings, hints and names are written small, to stand in the middle of other words; where they begin a sentence they are begun here.</summary>
public static class Sentence
{
    /// <summary>The words with a capital at their beginning; nothing for none.</summary>
    public static string Begin(string words) => words.Length == 0 ? "" : char.ToUpperInvariant(words[0]) + words[1..];
}
