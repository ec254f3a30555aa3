using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Stairs.Shops;

namespace Rodwright.Hosting.Files;

/// <summary>The board plans made last: a page of downloads asks for one of them several times. Safe for use by many at once.</summary>
internal sealed class TimberCache
{
    private const int Most = 8;
    private readonly Lock door = new();
    private readonly LinkedList<(Stair Stair, Shop Shop, Lazy<BoardPlan> Plan)> made = [];

    /// <summary>The board plan of a stair for a shop.</summary>
    public BoardPlan Of(Stair stair, Shop shop)
    {
        Lazy<BoardPlan> plan;
        lock (door)
        {
            var known = made.FirstOrDefault(m => ReferenceEquals(m.Stair, stair) && m.Shop == shop);
            plan = known.Plan ?? new(() => BoardPlan.Of(CuttingList.Of(stair.Kit, shop)));
            if (known.Plan is null) made.AddFirst((stair, shop, plan));
            while (made.Count > Most) made.RemoveLast();
        }
        return plan.Value;
    }
}
