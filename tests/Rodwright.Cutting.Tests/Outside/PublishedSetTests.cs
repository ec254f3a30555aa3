using System.Globalization;
using Rodwright.Cutting;
using Xunit;

namespace Rodwright.Cutting.Tests.Outside;

/// <summary>
/// The hundred instances of Schwerin and Waescher, International Transactions in Operational Research 4 (1997), 377-389; where they come from stands beside them. Every one
/// has 18 boards as its optimum.
/// </summary>
public class PublishedSetTests
{
    [Fact]
    public void Every_published_instance_is_solved_to_its_optimum_and_proven()
    {
        var instances = Read().ToList();
        Assert.Equal(100, instances.Count);
        foreach (var problem in instances)
        {
            var plan = new BranchAndPrice().Solve(problem);
            Assert.Empty(PlanCheck.Faults(problem, plan));
            Assert.Equal(18, plan.Cost);
            Assert.True(plan.IsProven);
            // The least that lengths alone allow is the same: a bound that nothing of ours has a hand in.
            Assert.Equal(18, (problem.Pieces.Sum(p => p.Length * p.Quantity) + 999) / 1000);
        }
    }

    private static IEnumerable<CuttingProblem> Read()
    {
        var lines = new Queue<string>(File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Outside", "Published", "SCH_WAE1.BPP")).Where(l => l.Trim().Length > 0));
        while (lines.TryDequeue(out _))
        {
            var kinds = (int)Number();
            var board = Number();
            var pieces = Enumerable.Range(0, kinds).Select(i => lines.Dequeue().Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => long.Parse(w, CultureInfo.InvariantCulture)).ToArray())
                .Select((n, i) => new CutPiece("p" + i, n[0], 0, (int)n[1])).ToList();
            yield return new([.. pieces], [new("board", board, 0, 1)], Saw.None);
        }

        long Number() => long.Parse(lines.Dequeue(), CultureInfo.InvariantCulture);
    }
}
