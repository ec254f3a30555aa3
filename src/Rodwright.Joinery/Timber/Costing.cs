using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>What a stair costs by a shop's own prices, line by line.</summary>
/// <param name="Lines">Timber, sheets, waste, fixings, work, each with its formula.</param>
/// <param name="Wood">Timber and sheets, waste included.</param>
/// <param name="Fixings">Fixings.</param>
/// <param name="Work">Work.</param>
/// <param name="Minutes">Work in minutes.</param>
/// <param name="Costs">All of them.</param>
/// <param name="Price">Costs with the margin.</param>
public sealed record Costing(ImmutableArray<CostLine> Lines, double Wood, double Fixings, double Work, double Minutes, double Costs, double Price)
{
    /// <summary>The costing of a board plan.</summary>
    public static Costing Of(BoardPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (shop, units) = (plan.List.Shop, plan.List.Kit.Plan.Units);
        var lines = ImmutableArray.CreateBuilder<CostLine>();
        foreach (var section in plan.Sections)
        {
            foreach (var group in section.Boards.Where(b => b.IsBought).GroupBy(b => (b.Width, b.Length, b.Price)).OrderByDescending(g => g.Key.Length))
            {
                lines.Add(new(section.IsSheet ? "sheets" : "timber", $"{section.Material} {units.Print(section.Thickness)} × {units.Print(group.Key.Width)} × {units.Print(group.Key.Length)}",
                    $"{Number.Print(group.Count(), 0)} × {Money(shop, group.Key.Price)}", group.Count() * group.Key.Price));
            }
        }
        var bought = lines.Sum(l => l.Amount);
        lines.Add(new("timber", "waste", $"{Number.Print(shop.Rates.Waste)} % of {Money(shop, bought)}", bought * shop.Rates.Waste / 100));
        var wood = bought * (1 + shop.Rates.Waste / 100);
        foreach (var fixing in shop.Fixings)
            if (Count(plan, fixing.Per) is > 0 and var n) lines.Add(new("fixings", fixing.Name, $"{Of(n, fixing.Per)} × {Money(shop, fixing.Price)}", n * fixing.Price));
        var fixings = lines.Where(l => l.Group == "fixings").Sum(l => l.Amount);
        var minutes = 0.0;
        foreach (var operation in shop.Work)
        {
            var n = Count(plan, operation.Per);
            if (n == 0) continue;
            minutes += n * operation.Minutes;
            lines.Add(new("work", operation.Name, $"{Of(n, operation.Per)} × {Number.Print(operation.Minutes)} min at {Money(shop, shop.Rates.Hour)} an hour", n * operation.Minutes / 60 * shop.Rates.Hour));
        }
        var work = minutes / 60 * shop.Rates.Hour;
        var costs = wood + fixings + work;
        lines.Add(new("total", "costs", $"wood {Money(shop, wood)} + fixings {Money(shop, fixings)} + work {Money(shop, work)}", costs));
        lines.Add(new("total", "margin", $"{Number.Print(shop.Rates.Margin)} % of {Money(shop, costs)}", costs * shop.Rates.Margin / 100));
        lines.Add(new("total", "price", "costs + margin", costs * (1 + shop.Rates.Margin / 100)));
        return new(lines.ToImmutable(), wood, fixings, work, minutes, costs, costs * (1 + shop.Rates.Margin / 100));
    }

    /// <summary>An amount with the shop's sign.</summary>
    public static string Money(Shop shop, double amount) => shop.Currency + Number.Fixed(amount, 2);

    private static int Count(BoardPlan plan, string per) => per switch
    {
        "board" => plan.Boards.Count(),
        "cut" => plan.Boards.Sum(b => b.Strips.Length - 1 + b.Strips.Sum(s => s.Cuts.Length)),
        _ => plan.List.Counts.GetValueOrDefault(per),
    };

    private static string Of(int n, string per) => $"{Number.Print(n, 0)} {per.Replace('-', ' ')}{(n == 1 ? "" : "s")}";
}
