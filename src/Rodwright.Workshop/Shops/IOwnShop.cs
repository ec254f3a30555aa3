namespace Rodwright.Workshop.Shops;

/// <summary>
/// Where a shop keeps its stock, prices and rates, beside its jobs: one text, every version of it for ever. When a method returns, what it wrote outlives the process. Safe for use
/// by many at once; a store that cannot be reached is an exception.
/// </summary>
public interface IOwnShop
{
    /// <summary>The shop as it was kept last; null when none was.</summary>
    Task<ShopCard?> Newest(CancellationToken stop = default);

    /// <summary>Keeps the shop, unless it is no longer as it was when the change was begun.</summary>
    /// <param name="text">The shop file.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="basedOn">Version the change was made to; 0 where there was none.</param>
    /// <param name="stop">Gives up before the write; never half way.</param>
    /// <exception cref="ArgumentException">Nobody's name, or a text that cannot be kept.</exception>
    Task<ShopSaved> Save(string text, string by, int basedOn, CancellationToken stop = default);
}

/// <summary>A shop as it is kept.</summary>
/// <param name="Version">1 when first kept, one more with every change.</param>
/// <param name="ChangedBy">Who changed it last.</param>
/// <param name="ChangedAt">When.</param>
/// <param name="Text">The shop file.</param>
public sealed record ShopCard(int Version, string ChangedBy, DateTimeOffset ChangedAt, string Text);

/// <summary>What came of keeping a shop.</summary>
/// <param name="Kept">False when somebody else was first; nothing was written then.</param>
/// <param name="Card">The shop as it is kept now.</param>
public sealed record ShopSaved(bool Kept, ShopCard Card);
