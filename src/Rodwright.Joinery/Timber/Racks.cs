using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>What a shop has after a plan has been cut.</summary>
public static class Racks
{
    /// <summary>
    /// The shop with the plan's offcuts on its rack: offcuts and boards that were used are gone, where they are counted; what is long enough to be kept lies there with a number of its own.
    /// </summary>
    public static Shop After(BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var shop = plan.List.Shop;
        var used = plan.Boards.Where(b => !b.IsBought).Select(b => b.Offcut).ToHashSet();
        return shop with { Boards = [.. shop.Boards.SelectMany(b => Left(b, plan))], Offcuts = [.. shop.Offcuts.Where(o => !used.Contains(o.Id)), .. plan.Offcuts] };
    }

    /// <summary>Lengths of which as many are left stand together.</summary>
    private static IEnumerable<ShopBoard> Left(ShopBoard board, BoardPlan plan)
    {
        if (board.Quantity is not { } quantity) return [board];
        return board.Lengths.GroupBy(length => quantity - plan.Boards.Count(b => b.IsBought && b.Material == board.Material && Same(b.Thickness, board.Thickness) && Same(b.Width, board.Width) && Same(b.Length, length)))
            .Where(g => g.Key > 0).Select(g => board with { Quantity = g.Key, Lengths = [.. g] });
    }

    private static bool Same(double a, double b) => Math.Abs(a - b) < Tolerance.Same;
}
