using System.Collections.Immutable;

namespace Rodwright.Stairs.Regulations;

/// <summary>Every regulation this version knows, one table and one line each.</summary>
public static class RegulationCatalogue
{
    /// <summary>The tables, in the order they are offered.</summary>
    public static ImmutableArray<Regulation> All { get; } =
        [Tables.England2013Private.Table, Tables.Scotland.Table, Tables.UsaIrc2021.Table, Tables.Bs5395.Table];

    /// <summary>The table with an id; null when there is none.</summary>
    public static Regulation? Find(string id) => All.FirstOrDefault(r => r.Id == id);
}
