using Rodwright.Cutting.Models;

namespace Rodwright.Cutting.Search;

/// <summary>Branch and price: the search divided by broken counts, lowest bound first, until the bound meets the best plan, or the cost that is of interest, or the steps are spent.</summary>
internal sealed class Tree(Model model, Toil toil, long below, Action<long, long> told)
{
    private readonly Master master = new(model, toil);
    private long bound;

    /// <summary>Branches looked into.</summary>
    public int Nodes { get; private set; }

    public int Patterns => master.Patterns;

    /// <summary>The best plan and what none goes below. Some plan is always found: the first is made before steps are counted.</summary>
    public (Remainder Plan, long Bound) Search()
    {
        var whole = Remainder.Whole(model);
        Incumbent best = null!;
        best = new(below, cost => told(cost, bound));
        if (Greedy.Finish(whole, master, toil) is { } first) best.Offer(first);
        var root = master.Solve(whole, [], best.Limit);
        Raise(Math.Min(root.Bound, best.Limit), best);
        var dive = new Dive(model, master, best, toil);
        if (best.Limit > bound && !root.IsShort)
        {
            dive.Down(whole, root, 0, bound);
            if (best.Limit > bound) dive.Down(whole, root, model.Rippings.Length > 0 ? 1 : 2, bound);
        }
        if (best.Limit > bound) Divide(root, best, dive);
        return (best.Plan!, Math.Min(bound, best.Limit));
    }

    private void Divide(Relaxed root, Incumbent best, Dive dive)
    {
        var open = new PriorityQueue<(Node Node, Relaxed Relaxed), (long, int, int)>();
        var made = 0;
        open.Enqueue((new([]), root), (root.Bound, 0, 0));
        // Where boards are ripped it is the bound that lags behind; where only lengths count it is the plan.
        var share = model.Rippings.Length > 0 ? 12 : 2;
        // The least bound of a branch that could be neither divided nor read: what is proven stops there.
        var (diving, unsettled) = (0L, long.MaxValue);
        while (open.TryDequeue(out var next, out var key))
        {
            if (key.Item1 >= best.Limit) break; // all that is open is at least as dear
            Raise(Math.Min(key.Item1, unsettled), best);
            if (toil.IsSpent) return;
            Nodes++;
            if (Division.Of(model, next.Relaxed) is not { } by)
            {
                if (!next.Relaxed.IsShort && Paths.Read(model, next.Relaxed) is { } plan) best.Offer(plan);
                if (best.Limit > key.Item1) unsettled = Math.Min(unsettled, key.Item1);
                continue;
            }
            foreach (var isLeast in (bool[])[true, false])
            {
                var limit = (int)Math.Floor(by.Value) + (isLeast ? 1 : 0);
                var node = new Node([.. next.Node.Branches, new(by.What, by.Index, by.Class, by.At, isLeast, limit)]);
                var relaxed = master.Solve(Remainder.Whole(model), node.Branches, best.Limit, next.Relaxed);
                var own = Math.Max(relaxed.Bound, key.Item1);
                if (own >= best.Limit) continue;
                // A plan is looked for from here too, as long as that takes no more than its share.
                if (!relaxed.IsShort && diving <= toil.Done / share)
                {
                    var before = toil.Done;
                    dive.Down(Remainder.Whole(model), relaxed, 0, bound);
                    diving += toil.Done - before;
                }
                if (own < best.Limit) open.Enqueue((node, relaxed), (own, -node.Branches.Length, made++));
            }
        }
        Raise(Math.Min(best.Limit, unsettled), best);
    }

    private void Raise(long to, Incumbent best)
    {
        if (to <= bound) return;
        bound = to;
        if (best.Plan is not null) told(best.Cost, bound);
    }

    /// <summary>A part of the search: the counts that are held in it.</summary>
    private sealed record Node(Branch[] Branches);
}
