using Rodwright.Rod;
using Rodwright.Workshop.Sessions;

namespace Rodwright.Workshop.Shops;

/// <summary>Sheets and machining files as this shop makes them: whichever page or file asks, they are drawn for the same cutters.</summary>
public static class ShopRods
{
    /// <summary>The rod of a state of a job, cut by the routers of the shop as it is kept now.</summary>
    /// <param name="kept">Where the shop is kept.</param>
    /// <param name="state">A state with a stair.</param>
    /// <param name="style">How to print.</param>
    /// <param name="stop">Gives up.</param>
    /// <exception cref="ArgumentException">The state has no stair: what it reads cannot be one.</exception>
    public static async Task<RodJob> Rod(this IOwnShop kept, BenchState state, RodStyle style, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(state);
        return (await kept.InUse(state.Job, stop)).Rod(state, style);
    }

    /// <summary>The same by a shop that has been read already, so that what else is reckoned by it is of the same version.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="state">A state with a stair.</param>
    /// <param name="style">How to print.</param>
    /// <exception cref="ArgumentException">The state has no stair: what it reads cannot be one.</exception>
    public static RodJob Rod(this ShopInUse shop, BenchState state, RodStyle style)
    {
        ArgumentNullException.ThrowIfNull(shop);
        ArgumentNullException.ThrowIfNull(state);
        if (state is not { Stair: { } stair, Proof: { } proof }) throw new ArgumentException("There is no rod without a stair.", nameof(state));
        return new(stair, proof, style) { Router = shop.Shop.Router };
    }
}
