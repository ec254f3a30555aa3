using Rodwright.Geometry;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Timber;

namespace Rodwright.Output;

/// <summary>Cutting list, board plan and costing as text.</summary>
internal static class TimberText
{
    public static void Write(TextWriter to, string file, BoardPlan plan)
    {
        var (units, shop) = (plan.List.Kit.Plan.Units, plan.List.Shop);
        to.WriteLine($"{file}: timber from {shop.Name}");
        Table(to, TimberTables.List(plan.List));
        Table(to, TimberTables.Counts(plan.List));
        Table(to, TimberTables.Boards(plan));
        to.WriteLine();
        foreach (var section in plan.Sections)
            to.WriteLine($"  {section.Material} {units.Print(section.Thickness)}: {Number.Print(section.Boards.Length, 0)} {(section.IsSheet ? "sheet" : "board")}{(section.Boards.Length == 1 ? "" : "s")}, {Costing.Money(shop, section.Cost)}, {section.Claim}");
        to.WriteLine($"  Bought: {units.With(plan.BoughtLength)} of boards, {Costing.Money(shop, plan.Cost)} with sheets{(plan.IsProven ? ", proven best" : "")}.");
        if (!plan.Offcuts.IsEmpty)
            to.WriteLine($"  Back to the rack: {string.Join("; ", plan.Offcuts.Select(o => $"{o.Id} {o.Material} {units.Print(o.Thickness)} x {units.Print(o.Width)} x {units.Print(o.Length)}"))}.");
    }

    public static void WriteCosting(TextWriter to, string file, BoardPlan plan)
    {
        to.WriteLine($"{file}: costing by {plan.List.Shop.Name}");
        Table(to, TimberTables.Costs(plan));
    }

    private static void Table(TextWriter to, TimberTable table)
    {
        to.WriteLine();
        to.WriteLine("  " + table.Title);
        Columns.Write(to, [[.. table.Heading], .. table.Rows.Select(r => r.ToArray())], [.. table.Numbers]);
    }
}
