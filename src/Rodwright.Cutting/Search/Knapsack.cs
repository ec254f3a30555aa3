namespace Rodwright.Cutting.Search;

/// <summary>
/// The best pattern for every room along a strip at once, in whole numbers: items in order, each at most so often, every item worth something, and worth more or less where
/// it begins at a certain place. Exact. Only places that pieces can end at are looked at, as long as those are few.
/// </summary>
internal sealed class Knapsack
{
    private const long Never = long.MinValue / 4;
    private readonly int[] weight;
    private readonly int room;
    private readonly long[] best;
    private readonly long[] before;
    private readonly long[] pass;
    private readonly int[] queue;
    private readonly int[]?[] taken;

    // Places that can be reached, in order; the first so many of the array.
    private int[] places;
    private int[] other;
    private int count;
    private bool isDense;

    public Knapsack(int[] weight, int room)
    {
        (this.weight, this.room) = (weight, room);
        (best, before, pass) = (new long[room + 1], new long[room + 1], new long[room + 1]);
        (queue, places, other) = (new int[room + 1], new int[room + 1], new int[room + 1]);
        taken = new int[weight.Length][];
    }

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
        Array.Fill(best, Never);
        best[0] = 0;
        (places[0], count, isDense) = (0, 1, false);
        Steps += room / 8;
    }

    /// <summary>Adds the items of a range to what is in the table; what follows them can be added later.</summary>
    public void Add(int from, int to, int[] most, long[] worth, Func<int, Dictionary<int, long>?> special)
    {
        for (var i = from; i < to; i++)
        {
            var bound = Math.Min(most[i], room / weight[i]);
            var more = bound > 0 ? special(i) : null;
            if (bound <= 0 || worth[i] <= 0 && more is null)
            {
                taken[i] = null;
                continue;
            }
            var counts = taken[i] ??= new int[room + 1];
            Array.Clear(counts);
            Steps += room / 16;
            // Where most places are reached it is quicker to look at all of them.
            isDense |= count > room / 4;
            if (more is not null)
            {
                if (isDense) Collect();
                FillByPasses(weight[i], bound, worth[i], more, counts);
            }
            else if (bound == 1 && isDense) FillOnce(weight[i], worth[i], counts);
            else if (bound > 1 && (isDense || (long)count * bound > room))
            {
                FillOften(weight[i], bound, worth[i], counts);
                isDense = true;
            }
            else FillByPasses(weight[i], bound, worth[i], null, counts);
        }
        if (isDense) Collect();
    }

    /// <summary>Where the best pattern within a room ends, and its worth.</summary>
    public (int End, long Worth) Best(int within)
    {
        var end = 0;
        for (var n = 0; n < count && places[n] <= within; n++) if (best[places[n]] > best[end]) end = places[n];
        Steps += count;
        return (end, best[end]);
    }

    /// <summary>Counts of the items of the best pattern that ends at a place, of the first so many items; no other may have been added since.</summary>
    public int[] Pattern(int end, int items)
    {
        var counts = new int[weight.Length];
        for (var i = items - 1; i >= 0; i--)
        {
            if (taken[i] is not { } t) continue;
            counts[i] = t[end];
            end -= counts[i] * weight[i];
        }
        return counts;
    }

    /// <summary>Once more at a time, from every place that was reached the time before.</summary>
    private void FillByPasses(int w, int bound, long worth, Dictionary<int, long>? special, int[] counts)
    {
        var from = places.AsSpan(0, count).ToArray();
        foreach (var u in from) before[u] = best[u];
        for (var c = 1; c <= bound; c++)
        {
            var reached = 0;
            while (reached < from.Length && from[reached] + w <= room) reached++;
            if (reached == 0) return;
            for (var n = 0; n < reached; n++)
            {
                var u = from[n];
                pass[u + w] = before[u] + worth + (special is not null && special.TryGetValue(u, out var more) ? more : 0);
            }
            for (var n = 0; n < reached; n++)
            {
                var u = from[n] = from[n] + w;
                before[u] = pass[u];
                if (pass[u] <= best[u]) continue;
                best[u] = pass[u];
                counts[u] = c;
            }
            Array.Resize(ref from, reached);
            Merge(from);
            Steps += 4L * reached + count;
        }
    }

    private void Merge(int[] more)
    {
        var (made, i, j) = (0, 0, 0);
        while (i < count || j < more.Length)
        {
            var next = j == more.Length || i < count && places[i] <= more[j] ? places[i] : more[j];
            if (i < count && places[i] == next) i++;
            if (j < more.Length && more[j] == next) j++;
            other[made++] = next;
        }
        (places, other, count) = (other, places, made);
    }

    /// <summary>At most so many times: along each row of places a weight apart, the best of the last so many, kept in a queue.</summary>
    private void FillOften(int w, int bound, long worth, int[] counts)
    {
        Array.Copy(best, before, room + 1);
        for (var start = 0; start < w && start <= room; start++)
        {
            var (head, tail) = (0, 0);
            for (int u = start, j = 0; u <= room; u += w, j++)
            {
                if (before[u] != Never)
                {
                    var own = before[u] - j * worth;
                    while (tail > head && before[queue[tail - 1] * w + start] - queue[tail - 1] * worth < own) tail--;
                    queue[tail++] = j;
                }
                while (head < tail && queue[head] < j - bound) head++;
                if (head == tail) continue;
                var from = queue[head];
                best[u] = before[from * w + start] + (j - from) * worth;
                counts[u] = j - from;
            }
        }
        Steps += 4L * room;
    }

    private void FillOnce(int w, long worth, int[] counts)
    {
        for (var u = room; u >= w; u--)
        {
            var with = best[u - w] + worth;
            if (best[u - w] == Never || with <= best[u]) continue;
            best[u] = with;
            counts[u] = 1;
        }
        Steps += room;
    }

    private void Collect()
    {
        count = 0;
        for (var u = 0; u <= room; u++) if (best[u] != Never) places[count++] = u;
        Steps += room;
    }
}
