using System.Runtime.CompilerServices;

namespace Rodwright.Cutting.Search;

/// <summary>
/// The best pattern for every room along a strip at once, in whole numbers: items in order, each at most so often, every item worth something, and worth more or less where
/// it begins at a certain place. Exact: a beginning of a pattern is put aside only where another, no longer, is worth so much more that nothing that can follow makes up for it.
/// </summary>
internal sealed class Knapsack(int[] weight, int room)
{
    // What is kept: where a beginning ends, by that in order, what it is worth, and its place among the nodes.
    private Beginnings kept = new();
    private Beginnings spare = new();

    // How each was made: from which, by so many of an item. The first is the empty one.
    private int[] from = new int[64];
    private int[] item = new int[64];
    private int[] times = new int[64];
    private int nodes;

    /// <summary>Steps taken so far.</summary>
    public long Steps { get; private set; }

    /// <summary>Fills the table with items, all of them from the first on.</summary>
    /// <param name="most">How often each item may be taken; 0 for one that may not.</param>
    /// <param name="worth">Worth of each item.</param>
    /// <param name="special">For an item, what is added to its worth where it begins; null for none.</param>
    public void Fill(int[] most, long[] worth, Func<int, Dictionary<int, long>?> special)
    {
        Begin();
        Add(0, weight.Length, most, worth, special);
    }

    /// <summary>Empties the table.</summary>
    public void Begin()
    {
        nodes = 0;
        kept.Clear();
        kept.Append(0, 0, Node(0, -1, 0));
    }

    /// <summary>Adds the items of a range to what is in the table; what follows them can be added later, were nothing in the range to have a special worth.</summary>
    public void Add(int start, int end, int[] most, long[] worth, Func<int, Dictionary<int, long>?> special)
    {
        // What special worths still to come can make up for at most: gained behind one beginning, lost behind the other.
        var slack = 0L;
        for (var i = start; i < end; i++) if (special(i) is { } more) foreach (var value in more.Values) slack += Math.Abs(value);
        for (var i = start; i < end; i++)
        {
            var bound = Math.Min(most[i], room / weight[i]);
            if (special(i) is { } more)
            {
                if (bound > 0) Pass(i, bound, worth[i], more, slack);
                foreach (var value in more.Values) slack -= Math.Abs(value);
            }
            else if (bound > 0 && worth[i] > 0)
            {
                // One, two, four and so on: every number up to the bound is a sum of those.
                for (var n = 1; bound > 0; n *= 2)
                {
                    var bundle = Math.Min(n, bound);
                    Join(kept, i, bundle, bundle * worth[i], slack);
                    bound -= bundle;
                }
            }
        }
    }

    /// <summary>The best pattern within a room, and its worth; pattern 0 is the empty one.</summary>
    // A plan is over before a method made quickly first would be made again well.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public (int Pattern, long Worth) Best(int within)
    {
        var best = 0;
        for (var n = 1; n < kept.Count && kept.At[n] <= within; n++) if (kept.Worth[n] > kept.Worth[best]) best = n;
        Steps += kept.Count;
        return (kept.Node[best], kept.Worth[best]);
    }

    /// <summary>Counts of the items of a pattern.</summary>
    public int[] Counts(int pattern)
    {
        var counts = new int[weight.Length];
        for (; pattern != 0; pattern = from[pattern]) counts[item[pattern]] += times[pattern];
        return counts;
    }

    /// <summary>Once more at a time, for the worth of each depends on where it begins.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Pass(int i, int bound, long worth, Dictionary<int, long> special, long slack)
    {
        var last = kept.Copy();
        for (var c = 1; c <= bound; c++)
        {
            var next = new Beginnings();
            for (var n = 0; n < last.Count && last.At[n] + weight[i] <= room; n++)
                next.Append(last.At[n] + weight[i], last.Worth[n] + worth + special.GetValueOrDefault(last.At[n]), Node(last.Node[n], i, 1));
            Steps += 12L * next.Count;
            if (next.Count == 0) return;
            Join(next, -1, 0, 0, slack);
            last = next;
        }
    }

    /// <summary>Puts beginnings that go on with so many of an item among those that are kept; item -1 for what has been made already.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Join(Beginnings more, int i, int bundle, long gain, long slack)
    {
        var shift = i < 0 ? 0 : bundle * weight[i];
        var (a, b, highest) = (0, 0, long.MinValue);
        spare.Clear();
        while (true)
        {
            var isMore = b < more.Count && more.At[b] + shift <= room;
            if (!isMore && a == kept.Count) break;
            var (there, other) = (a < kept.Count ? kept.At[a] : int.MaxValue, isMore ? more.At[b] + shift : int.MaxValue);
            var (worth, at) = there <= other ? (kept.Worth[a], there) : (more.Worth[b] + gain, other);
            var isOther = other < there;
            if (there == other && more.Worth[b] + gain > worth) (worth, isOther) = (more.Worth[b] + gain, true);
            if (highest == long.MinValue || worth > highest - slack)
            {
                var node = !isOther ? kept.Node[a] : i < 0 ? more.Node[b] : Node(more.Node[b], i, bundle);
                spare.Append(at, worth, node);
                highest = Math.Max(highest, worth);
            }
            if (there == at) a++;
            if (other == at) b++;
        }
        Steps += 6L * (a + b);
        (kept, spare) = (spare, kept);
    }

    private int Node(int before, int of, int often)
    {
        if (nodes == from.Length)
        {
            Array.Resize(ref from, 2 * nodes);
            Array.Resize(ref item, 2 * nodes);
            Array.Resize(ref times, 2 * nodes);
        }
        (from[nodes], item[nodes], times[nodes]) = (before, of, often);
        return nodes++;
    }

    private sealed class Beginnings
    {
        public int[] At = new int[64];
        public long[] Worth = new long[64];
        public int[] Node = new int[64];

        public int Count { get; private set; }

        public void Clear() => Count = 0;

        public void Append(int at, long worth, int node)
        {
            if (Count == At.Length)
            {
                Array.Resize(ref At, 2 * Count);
                Array.Resize(ref Worth, 2 * Count);
                Array.Resize(ref Node, 2 * Count);
            }
            (At[Count], Worth[Count], Node[Count]) = (at, worth, node);
            Count++;
        }

        public Beginnings Copy() => new() { At = [.. At.AsSpan(0, Count)], Worth = [.. Worth.AsSpan(0, Count)], Node = [.. Node.AsSpan(0, Count)], Count = Count };
    }
}
