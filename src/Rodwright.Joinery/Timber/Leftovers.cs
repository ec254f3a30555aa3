using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>What a board plan leaves that is worth keeping: ends of strips, and what is left along a ripped board's far edge.</summary>
internal static class Leftovers
{
    /// <summary>Narrowest strip that is kept, mm.</summary>
    private const double Narrowest = 40;

    public static ImmutableArray<ShopOffcut> Of(BoardPlan plan)
    {
        var shop = plan.List.Shop;
        var kept = new List<ShopOffcut>();
        foreach (var section in plan.Sections.Where(s => !s.IsSheet))
        {
            foreach (var board in section.Boards)
            {
                foreach (var strip in board.Strips) Keep(board, strip.Left, strip.Width);
                var last = board.Strips[^1];
                if (board.IsRipped) Keep(board, board.Length - 2 * shop.Saw.EndTrim, board.Width - last.From - last.Width - shop.Saw.Kerf - shop.Saw.EdgeTrim);
            }
        }
        return [.. kept];

        void Keep(PlannedBoard board, double length, double width)
        {
            if (length < Math.Max(1, shop.Saw.LeastOffcut) || width < Narrowest) return;
            var taken = shop.Offcuts.Select(o => o.Id).Concat(kept.Select(o => o.Id)).ToHashSet();
            var id = Enumerable.Range(1, int.MaxValue).Select(i => $"K{Number.Print(i, 0)}").First(i => !taken.Contains(i));
            kept.Add(new() { Id = id, Material = board.Material, Thickness = board.Thickness, Width = Math.Floor(width), Length = Math.Floor(length) });
        }
    }
}
