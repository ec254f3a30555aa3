using System.Collections.Immutable;
using Rodwright.Stairs.Regulations.Tables;

namespace Rodwright.Stairs.Regulations;

/// <summary>Every published regulation this version knows, one table each. A shop's own tables are beside them on a <see cref="RegulationShelf"/>.</summary>
public static class RegulationCatalogue
{
    /// <summary>The tables, in the order they are offered.</summary>
    public static ImmutableArray<Regulation> All { get; } =
    [
        England2013Private.Table, England2013Others.Utility, England2013Others.GeneralAccess,
        Wales1998.Private, Wales1998.Institutional, Wales1998.Other,
        Scotland.Table, ScotlandAnyOther.Table,
        Ireland2014.Table, NorthernIreland2012.Table,
        UsaIrc2021.Table, UsaIrc2024.Table, AustraliaNcc2022.Table,
        Din18065.Dwelling, Din18065.Others, Din18065.Additional,
        Bs5395.Table, Bs5395Others.TwoWay, Bs5395Others.NormalUse,
        UkWarranty.Table, UkWarranty.Scotland,
    ];

    /// <summary>The table with an id; null when there is none.</summary>
    public static Regulation? Find(string id) => All.FirstOrDefault(r => r.Id == id);
}
