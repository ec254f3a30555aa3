using System.Collections.Immutable;
using Rodwright.Cutting;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Shops;

namespace Rodwright.Joinery.Timber;

/// <summary>The cheapest boards for a cutting list, and how each is cut. Boards of one material and thickness are planned together; a wide board may be ripped into strips.</summary>
/// <param name="List">The list.</param>
/// <param name="Sections">By material and thickness, boards before sheets.</param>
/// <param name="Findings">What could not be planned.</param>
public sealed record BoardPlan(CuttingList List, ImmutableArray<SectionPlan> Sections, ImmutableArray<Finding> Findings)
{
    /// <summary>Effort for one section: twice what the hardest sample takes.</summary>
    private static readonly CuttingEffort Usual = new(1_200_000_000);

    /// <summary>Every board.</summary>
    public IEnumerable<PlannedBoard> Boards => Sections.SelectMany(s => s.Boards);

    /// <summary>Cost of all that is bought.</summary>
    public double Cost => Sections.Sum(s => s.Cost);

    /// <summary>No plan costs less.</summary>
    public double Bound => Sections.Sum(s => s.Bound);

    /// <summary>No plan buys less length of boards, mm; sheets not counted.</summary>
    public double LengthBound => Sections.Where(s => !s.IsSheet).Sum(s => s.LengthBound);

    /// <summary>Whether every section is proven best.</summary>
    public bool IsProven => Sections.All(s => s.IsProven);

    /// <summary>Length of all boards bought, mm; sheets not counted.</summary>
    public double BoughtLength => Sections.Where(s => !s.IsSheet).Sum(s => s.BoughtLength);

    /// <summary>What goes back to the rack: long enough to be kept.</summary>
    public ImmutableArray<ShopOffcut> Offcuts => Leftovers.Of(this);

    /// <summary>Plans a list, as hard as is usual: for who knows no solver.</summary>
    /// <param name="list">The list.</param>
    /// <param name="stop">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BoardPlan Of(CuttingList list, CancellationToken stop) => Of(list, null, null, null, stop);

    /// <summary>Plans a list.</summary>
    /// <param name="list">The list.</param>
    /// <param name="effort">How hard to look at each section; the usual when null.</param>
    /// <param name="solver">Finds the plans; the own one when null.</param>
    /// <param name="progress">Told which section has been planned.</param>
    /// <param name="stop">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static BoardPlan Of(CuttingList list, CuttingEffort? effort = null, ICuttingSolver? solver = null, IProgress<string>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(list);
        var groups = list.Woods.GroupBy(w => (w.Wood.Material, w.Wood.SawnThickness, w.Stock))
            .OrderBy(g => g.Key.Stock).ThenBy(g => g.Key.Material, StringComparer.Ordinal).ThenBy(g => g.Key.SawnThickness).ToList();
        // Sections have nothing to do with one another: what is found does not depend on which is done first.
        var found = new SectionPlan[groups.Count];
        Parallel.For(0, found.Length, new() { CancellationToken = stop }, i =>
        {
            var (key, woods) = (groups[i].Key, groups[i].Select(w => w.Wood));
            found[i] = new SectionProblem(list.Shop, SawnSizes.Mark(list.Kit.Plan.Units), key.Material, key.SawnThickness, key.Stock == StockKind.Sheet, [.. woods]).Solve(solver ?? new BranchAndPrice(), effort ?? Usual, stop);
            progress?.Report($"{key.Material} {list.Kit.Plan.Units.Print(key.SawnThickness)}");
        });
        var number = 1;
        ImmutableArray<SectionPlan> sections = [.. found.Select(s => s with { Boards = [.. s.Boards.Select(b => b with { Number = number++ })] })];
        return new(list, sections, [.. sections.Where(s => !s.Uncut.IsEmpty).Select(s => Missing(list, s))]);
    }

    private static Finding Missing(CuttingList list, SectionPlan section)
    {
        var units = list.Kit.Plan.Units;
        var largest = section.Uncut.OrderByDescending(w => w.SawnLength).ThenByDescending(w => w.SawnWidth).First();
        return new("RW4302", Severity.Advice, string.Join(", ", section.Uncut.Select(w => w.Id)),
            $"the shop has no {section.Material} {units.Print(section.Thickness)} thick left for {(section.Uncut.Length == 1 ? "it" : $"these {Number.Print(section.Uncut.Length, 0)}")}; the largest is sawn {units.Print(largest.SawnLength)} × {units.Print(largest.SawnWidth)}",
            "add longer, wider or more boards to the shop file, or have the piece scarfed or glued up");
    }
}
