using Rodwright.Cutting;
using Xunit;

namespace Rodwright.Cutting.Tests;

public class BranchAndPriceTests
{
    private static readonly BranchAndPrice Solver = new();

    public static TheoryData<string, Func<int, CuttingProblem>, int> Proven => new()
    {
        { "few long", Demands.FewLong, 12 },
        { "near equal", Demands.NearEqual, 8 },
        { "mixed", Demands.Mixed, 8 },
        { "ripped", Demands.Ripped, 6 },
        { "priced", Demands.Priced, 8 },
    };

    public static TheoryData<string, Func<int, CuttingProblem>, int> Bounded => new()
    {
        { "many short", Demands.ManyShort, 4 },
    };

    [Theory]
    [MemberData(nameof(Proven))]
    public void Lists_of_this_shape_are_planned_and_proven_best(string shape, Func<int, CuttingProblem> list, int seeds)
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var plan = Solver.Solve(list(seed));
            Assert.Empty(PlanCheck.Faults(list(seed), plan));
            Assert.True(plan.IsProven, $"{shape} {seed}: {plan.Cost}, bound {plan.Bound}");
        }
    }

    [Theory]
    [MemberData(nameof(Bounded))]
    public void Lists_of_this_shape_are_planned_within_three_in_a_hundred_of_the_bound(string shape, Func<int, CuttingProblem> list, int seeds)
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var plan = Solver.Solve(list(seed), new(600_000_000));
            Assert.Empty(PlanCheck.Faults(list(seed), plan));
            Assert.True(plan.Gap <= 0.03, $"{shape} {seed}: {plan.Cost}, bound {plan.Bound}");
        }
    }

    [Fact]
    public void Small_lists_are_planned_as_cheaply_as_trying_everything_plans_them()
    {
        for (var seed = 0; seed < 400; seed++)
        {
            var problem = Demands.Small(seed);
            var plan = Solver.Solve(problem);
            Assert.Empty(PlanCheck.Faults(problem, plan));
            Assert.True(plan.IsProven, $"seed {seed}");
            Assert.True((plan.Uncut.Length, plan.Cost) == Exhaustive.Best(problem), $"seed {seed}: {plan.Uncut.Length} uncut for {plan.Cost}, tried {Exhaustive.Best(problem)}");
        }
    }

    [Fact]
    public void The_bound_holds_however_soon_the_search_is_ended()
    {
        for (var seed = 0; seed < 60; seed++)
        {
            var problem = Demands.Small(seed);
            var (uncut, cost) = Exhaustive.Best(problem);
            var plan = Solver.Solve(problem, new(seed * 40));
            Assert.Empty(PlanCheck.Faults(problem, plan));
            if (plan.Uncut.Length == uncut) Assert.InRange(cost, plan.Bound, plan.Cost);
            Assert.True(!plan.IsProven || (plan.Uncut.Length, plan.Cost) == (uncut, cost));
        }
    }

    [Fact]
    public void A_kerf_is_lost_between_two_pieces_and_not_behind_the_last()
    {
        var board = new StockBoard("board", 1000, 0, 1);
        Assert.Single(Solver.Solve(new([new("p", 498, 0, 2)], [board], new(4, 0, 0))).Boards);
        Assert.Equal(2, Solver.Solve(new([new("p", 499, 0, 2)], [board], new(4, 0, 0))).Boards.Length);
    }

    [Fact]
    public void Both_ends_are_trimmed()
    {
        var board = new StockBoard("board", 1000, 0, 1);
        Assert.Empty(Solver.Solve(new([new("p", 980, 0, 1)], [board], new(4, 10, 0))).Uncut);
        Assert.Single(Solver.Solve(new([new("p", 981, 0, 1)], [board], new(4, 10, 0))).Uncut);
    }

    [Fact]
    public void Offcuts_that_cost_nothing_are_taken_first()
    {
        var plan = Solver.Solve(new([new("p", 900, 0, 3)], [new("new", 2000, 0, 20), new("offcut", 1000, 0, 0, 1)], Saw.None));
        Assert.Equal(20, plan.Cost);
        Assert.Contains(plan.Boards, b => b.Stock.Id == "offcut");
    }

    [Fact]
    public void A_wide_board_is_ripped_where_that_is_cheaper()
    {
        var plan = Solver.Solve(new([new("p", 900, 95, 4)], [new("narrow", 2000, 100, 60), new("wide", 2000, 200, 100)], new(4, 0, 0)));
        Assert.Equal(100, plan.Cost);
        Assert.Equal([95, 95], Assert.Single(plan.Boards).Strips.Select(s => s.Width));
    }

    [Fact]
    public void As_few_pieces_as_can_be_are_left_uncut_where_stock_runs_out()
    {
        var plan = Solver.Solve(new([new("long", 900, 0, 1), new("short", 450, 0, 3)], [new("board", 1000, 0, 5, 2)], Saw.None));
        Assert.Single(plan.Uncut);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void The_same_problem_has_the_same_plan()
    {
        var (one, other) = (Solver.Solve(Demands.Priced(3)), new BranchAndPrice().Solve(Demands.Priced(3)));
        Assert.Equal(one.Work, other.Work);
        Assert.Equal(one.Boards.Select(b => b.Stock), other.Boards.Select(b => b.Stock));
        Assert.Equal(one.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Pieces), other.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Pieces));
    }

    [Fact]
    public void A_search_that_is_stopped_says_so()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => Solver.Solve(Demands.ManyShort(1), stop: stop.Token));
    }

    [Fact]
    public void Progress_is_told_as_plan_and_bound_come_together()
    {
        var told = new List<CuttingProgress>();
        var plan = Solver.Solve(Demands.Priced(1), null, new Listener(told));
        Assert.NotEmpty(told);
        Assert.Equal(told.Select(t => t.Cost).OrderDescending(), told.Select(t => t.Cost));
        Assert.Equal(plan.Cost, told[^1].Cost);
    }

    [Fact]
    public void Nothing_wanted_is_a_plan_without_boards()
    {
        var plan = Solver.Solve(new([], [new("board", 1000, 0, 5)], Saw.None));
        Assert.Empty(plan.Boards);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void Numbers_that_mean_nothing_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new CuttingProblem([new("p", 0, 0, 1)], [], Saw.None));
        Assert.Throws<ArgumentException>(() => new CuttingProblem([new("p", 10, 0, 0)], [], Saw.None));
        Assert.Throws<ArgumentException>(() => new CuttingProblem([], [new("b", 10, 0, -1)], Saw.None));
    }

    private sealed class Listener(List<CuttingProgress> told) : IProgress<CuttingProgress>
    {
        public void Report(CuttingProgress value) => told.Add(value);
    }
}
