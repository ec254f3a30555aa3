using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>The cutting list of a kit: every part with its finished and sawn sizes, glue-ups strip by strip, and what is counted.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Shop">The shop whose allowances and stock it is made for.</param>
/// <param name="Pieces">Every part, in the kit's order.</param>
/// <param name="Counts">How many there are of what fixings and work are counted by; see <see cref="ShopFields.Counted"/>. Boards and cuts are the board plan's.</param>
/// <param name="Findings">What the shop has no wood for.</param>
public sealed record CuttingList(Kit Kit, Shop Shop, ImmutableArray<ListedPiece> Pieces, ImmutableSortedDictionary<string, int> Counts, ImmutableArray<Finding> Findings)
{
    /// <summary>The list of a kit, for a shop.</summary>
    public static CuttingList Of(Kit kit, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(shop);
        var maker = new WoodOfParts(kit, shop);
        ImmutableArray<ListedPiece> pieces = [.. kit.Parts.Select(maker.Of)];
        var missing = pieces.Where(p => p.Stock == StockKind.None)
            .GroupBy(p => (p.Part.Material, p.Woods[0].Thickness, p.Woods[0].SawnThickness, p.Woods[0].SawnWidth))
            .Select(g => new Finding("RW4301", Severity.Advice, string.Join(", ", g.Select(p => p.Part.Mark)), NoWood(kit.Plan.Units, g.Key),
                $"add {g.Key.Material} of that size to the shop file, or give the job a timber it has"));
        return new(kit, shop, pieces, Counting.Of(kit, pieces), [.. missing]);
    }

    /// <summary>Everything that is to be sawn from boards or sheets.</summary>
    public IEnumerable<(Wood Wood, StockKind Stock)> Woods => Pieces.Where(p => p.Stock is StockKind.Board or StockKind.Sheet).SelectMany(p => p.Woods.Select(w => (w, p.Stock)));

    private static string NoWood(Units units, (string Material, double Thickness, double SawnThickness, double SawnWidth) wood) =>
        $"the shop has no {wood.Material} that {units.Print(wood.Thickness)} finished comes out of; sawn {units.Print(wood.SawnThickness)} × {units.Print(wood.SawnWidth)} is wanted";
}
