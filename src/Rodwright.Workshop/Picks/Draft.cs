using System.Collections.Immutable;

namespace Rodwright.Workshop.Picks;

/// <summary>Puts a pick together.</summary>
internal static class Draft
{
    public static Pick Pick(string id, string title, string kind, IEnumerable<string> related, IEnumerable<Fact> facts) =>
        new(id, char.ToUpperInvariant(title[0]) + title[1..], kind, [.. related.Where(r => r != id).Distinct()], [.. facts]);
}
