using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>What a shop has after a plan has been cut.</summary>
public static class Racks
{
    /// <summary>The shop with the plan's offcuts on its rack: those used are gone, what is long enough to be kept lies there with a new number.</summary>
    public static Shop After(BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var shop = plan.List.Shop;
        var used = plan.Boards.Where(b => !b.IsBought).Select(b => b.Offcut).ToHashSet();
        return shop with { Offcuts = [.. shop.Offcuts.Where(o => !used.Contains(o.Id)), .. plan.Offcuts] };
    }
}
