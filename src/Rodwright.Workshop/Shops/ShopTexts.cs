using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;

namespace Rodwright.Workshop.Shops;

/// <summary>The shop as the pages reckon with it.</summary>
/// <param name="Shop">The shop's own, or usual sizes and example prices where none is kept or what is kept no longer reads.</param>
/// <param name="Version">Version of what is kept; 0 for nothing.</param>
/// <param name="Findings">Why what is kept does not read; empty where it does.</param>
public sealed record ShopInUse(Shop Shop, int Version, ImmutableArray<Finding> Findings)
{
    /// <summary>Whether it is the shop's own.</summary>
    public bool IsOwn => Version > 0 && Findings.IsEmpty;
}

/// <summary>Shops as they are kept, read as the engine takes them.</summary>
public static class ShopTexts
{
    /// <summary>The shop a job is reckoned by.</summary>
    /// <param name="kept">Where it is kept.</param>
    /// <param name="job">Says what the usual shop's timber is called, and in what units it sells; null for no job in particular.</param>
    /// <param name="stop">Gives up.</param>
    public static async Task<ShopInUse> InUse(this IOwnShop kept, Job? job, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(kept);
        var usual = job is null ? UsualShop.Of(new Practice().Timber, new Practice().RiserMaterial) : UsualShop.For(job);
        if (await kept.Newest(stop) is not { } card) return new(usual, 0, []);
        var read = ShopFile.Read(card.Text);
        return read.Value is { } shop ? new(shop, card.Version, []) : new(usual, card.Version, [.. read.Findings]);
    }
}
