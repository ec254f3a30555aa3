using System.Collections.Immutable;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Packs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Hosting.Files;

/// <summary>The sheets drawn last: a page of thumbnails asks for them one by one. Safe for use by many at once.</summary>
internal sealed class SheetCache
{
    private const int Most = 12;
    private readonly Lock door = new();
    private readonly LinkedList<(Stair Stair, RodStyle Style, ShopRouter Router, Lazy<ImmutableArray<Sheet>> Sheets)> drawn = [];

    /// <summary>The set of sheets of a rod.</summary>
    public ImmutableArray<Sheet> Of(RodJob rod)
    {
        Lazy<ImmutableArray<Sheet>> sheets;
        lock (door)
        {
            var known = drawn.FirstOrDefault(d => ReferenceEquals(d.Stair, rod.Stair) && d.Style == rod.Style && d.Router == rod.Router);
            sheets = known.Sheets ?? new(() => [.. Pack.Draw(rod).Set.Sheets]);
            if (known.Sheets is null) drawn.AddFirst((rod.Stair, rod.Style, rod.Router, sheets));
            while (drawn.Count > Most) drawn.RemoveLast();
        }
        return sheets.Value;
    }
}
