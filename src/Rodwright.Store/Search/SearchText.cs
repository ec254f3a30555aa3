using System.Collections.Immutable;
using System.Text;

namespace Rodwright.Store.Search;

/// <summary>
/// What searching looks through, worked out here so that every database finds the same: small letters without accents. A letter written in one piece and
/// one written as letter and accent are the same. Scripts other than Latin, Greek and Cyrillic are found as they were typed.
/// </summary>
internal static class SearchText
{
    private const char FirstAccent = '\u0300';
    private const char LastAccent = '\u036F';

    /// <summary>What is looked through for a job. No word holds a line break, so none reaches from title into summary.</summary>
    public static string Of(string title, string summary) => Fold(title) + "\n" + Fold(summary);

    /// <summary>The different words of a question, folded; a word within another is left out, since finding the longer finds both.</summary>
    public static ImmutableArray<string> Words(string text)
    {
        var words = Fold(text).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Distinct(StringComparer.Ordinal).ToList();
        return [.. words.Where(w => !words.Exists(longer => longer.Length > w.Length && longer.Contains(w, StringComparison.Ordinal)))];
    }

    /// <summary>A text in small letters without accents.</summary>
    public static string Fold(string text)
    {
        var folded = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
        {
            var small = Rune.ToLowerInvariant(rune);
            if (!small.IsBmp) folded.Append(small.ToString());
            else if (Letters.TypedAs.TryGetValue((char)small.Value, out var typed)) folded.Append(typed);
            else if (small.Value is < FirstAccent or > LastAccent) folded.Append((char)small.Value);
        }
        return folded.ToString();
    }
}
