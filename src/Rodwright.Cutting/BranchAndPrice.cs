using Rodwright.Cutting.Models;
using Rodwright.Cutting.Search;

namespace Rodwright.Cutting;

/// <summary>
/// Column generation with an exact knapsack, dives for whole plans, and branch and price over the boards' paths until plan and bound meet. Nothing is drawn by lot and
/// nothing looks at a clock: the same problem has the same plan everywhere.
/// </summary>
public sealed class BranchAndPrice : ICuttingSolver
{
    /// <inheritdoc/>
    public CuttingPlan Solve(CuttingProblem problem, CuttingEffort? effort = null, IProgress<CuttingProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var model = ModelMaker.Of(problem);
        effort ??= CuttingEffort.Usual;
        var toil = new Toil(effort.Steps, stop);
        var tree = new Tree(model, toil, effort.Below ?? long.MaxValue, (cost, bound) => progress?.Report(new(cost, bound)));
        var (plan, bound) = tree.Search();
        var (boards, uncut) = Assembly.Of(problem, model, plan);
        var cost = boards.Sum(b => b.Stock.Cost);
        var shortage = plan.Taken.Sum(t => t.Column.Shortage >= 0 ? t.Count * t.Column.Cost : 0);
        // Every way of ripping must have been looked at, or the bound is only one over those that were.
        if (!model.IsWhole) bound = 0;
        var isProven = bound >= plan.Cost;
        return new(boards, uncut, cost, isProven ? cost : Math.Clamp(bound - shortage, 0, cost), isProven, new(toil.Done, tree.Patterns, tree.Nodes)) { IsRuledOut = bound >= effort.Below };
    }
}
