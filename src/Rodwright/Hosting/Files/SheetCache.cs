using System.Collections.Immutable;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Packs;

namespace Rodwright.Hosting.Files;

/// <summary>The sheets drawn last: a page of thumbnails asks for them one by one. Safe for use by many at once.</summary>
internal static class SheetCache
{
    private const int Most = 12;
    private static readonly Lock Door = new();
    private static readonly LinkedList<(Stair Stair, RodStyle Style, Lazy<ImmutableArray<Sheet>> Sheets)> Drawn = [];

    /// <summary>The set of sheets of a rod.</summary>
    public static ImmutableArray<Sheet> Of(RodJob rod)
    {
        Lazy<ImmutableArray<Sheet>> sheets;
        lock (Door)
        {
            var known = Drawn.FirstOrDefault(d => ReferenceEquals(d.Stair, rod.Stair) && d.Style == rod.Style);
            sheets = known.Sheets ?? new(() => [.. Pack.Draw(rod).Set.Sheets]);
            if (known.Sheets is null) Drawn.AddFirst((rod.Stair, rod.Style, sheets));
            while (Drawn.Count > Most) Drawn.RemoveLast();
        }
        return sheets.Value;
    }
}
