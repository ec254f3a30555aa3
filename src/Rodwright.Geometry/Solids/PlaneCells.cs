namespace Rodwright.Geometry.Solids;

/// <summary>
/// The cells of a <see cref="PlaneGraph"/>. Half-edge 2e runs along edge e, 2e + 1 against it; the cell lies to its left. A ring is a closed run of half-edges:
/// a cell's outline, or (clockwise) the outside of a patch that lies in some cell or in the open.
/// </summary>
internal sealed class PlaneCells
{
    private readonly PlaneGraph graph;
    private readonly int[] next;
    private readonly int[] patchOf; // by corner
    private readonly List<double> areas = [];
    private readonly Dictionary<int, int> outsideOf = []; // the clockwise ring of a patch
    private readonly OutlineSet?[] inside;

    public PlaneCells(PlaneGraph graph, int outlines)
    {
        this.graph = graph;
        next = Next();
        RingOf = new int[next.Length];
        FindRings();
        patchOf = Patches();
        for (var ring = 0; ring < Rings.Count; ring++) if (areas[ring] <= 0) outsideOf[patchOf[From(Rings[ring][0])]] = ring;
        CellOf = new int[Rings.Count];
        for (var ring = 0; ring < Rings.Count; ring++) CellOf[ring] = areas[ring] > 0 ? ring : -2;
        foreach (var ring in outsideOf.Values) Home(ring);
        inside = new OutlineSet?[Rings.Count];
        foreach (var ring in outsideOf.Values) Flood(ring, outlines);
    }

    /// <summary>Rings, each a list of half-edges.</summary>
    public List<List<int>> Rings { get; } = [];

    /// <summary>The ring of each half-edge.</summary>
    public int[] RingOf { get; }

    /// <summary>The cell a ring bounds, named by its outline's ring; -1 for the open.</summary>
    public int[] CellOf { get; }

    /// <summary>Where a half-edge starts.</summary>
    public int From(int half) => (half & 1) == 0 ? graph.Edges[half >> 1].A : graph.Edges[half >> 1].B;

    /// <summary>Which outlines a cell lies in.</summary>
    public OutlineSet OutlinesOf(int ring) => inside[ring]!.Value;

    private int[] Next()
    {
        var halves = new int[graph.Edges.Count * 2];
        var angles = new double[halves.Length];
        var starts = new int[halves.Length];
        for (var h = 0; h < halves.Length; h++)
        {
            halves[h] = h;
            starts[h] = From(h);
            angles[h] = (graph.Points[From(h ^ 1)] - graph.Points[starts[h]]).Direction;
        }
        Array.Sort(halves, (a, b) => starts[a] != starts[b] ? starts[a].CompareTo(starts[b]) : angles[a].CompareTo(angles[b]));
        var result = new int[halves.Length];
        for (var i = 0; i < halves.Length;)
        {
            var end = i + 1;
            while (end < halves.Length && starts[halves[end]] == starts[halves[i]]) end++;
            // Coming in against an edge, the ring goes on along the next one clockwise.
            for (var k = i; k < end; k++) result[halves[k] ^ 1] = halves[k == i ? end - 1 : k - 1];
            i = end;
        }
        return result;
    }

    private void FindRings()
    {
        Array.Fill(RingOf, -1);
        for (var h = 0; h < next.Length; h++)
        {
            if (RingOf[h] >= 0) continue;
            var (ring, twice) = (new List<int>(), 0.0);
            var origin = graph.Points[From(h)];
            for (var k = h; RingOf[k] < 0; k = next[k])
            {
                RingOf[k] = Rings.Count;
                ring.Add(k);
                twice += (graph.Points[From(k)] - origin).Cross(graph.Points[From(k ^ 1)] - origin);
            }
            Rings.Add(ring);
            areas.Add(twice);
        }
    }

    private int[] Patches()
    {
        var parent = new int[graph.Points.Count];
        for (var i = 0; i < parent.Length; i++) parent[i] = i;
        foreach (var (a, b) in graph.Edges) parent[Root(a)] = Root(b);
        for (var i = 0; i < parent.Length; i++) parent[i] = Root(i);
        return parent;

        int Root(int i)
        {
            while (parent[i] != i) i = parent[i] = parent[parent[i]];
            return i;
        }
    }

    /// <summary>The cell a patch lies in: what is seen from its leftmost corner, looking left.</summary>
    private int Home(int ring)
    {
        if (CellOf[ring] != -2) return CellOf[ring];
        var p = Rings[ring].Select(h => graph.Points[From(h)]).MinBy(q => q.X);
        var patch = patchOf[From(Rings[ring][0])];
        var (best, seen) = (double.NegativeInfinity, -1);
        for (var e = 0; e < graph.Edges.Count; e++)
        {
            var (a, b) = (graph.Points[graph.Edges[e].A], graph.Points[graph.Edges[e].B]);
            if (a.Y > p.Y == b.Y > p.Y || patchOf[graph.Edges[e].A] == patch) continue;
            var x = a.X + (b.X - a.X) * (p.Y - a.Y) / (b.Y - a.Y);
            if (x >= p.X || x <= best) continue;
            // The half that runs down has the patch on its left.
            (best, seen) = (x, b.Y < a.Y ? 2 * e : 2 * e + 1);
        }
        return CellOf[ring] = seen < 0 ? -1 : areas[RingOf[seen]] > 0 ? RingOf[seen] : Home(RingOf[seen]);
    }

    private void Flood(int ring, int outlines)
    {
        if (inside[ring] is not null) return;
        var home = CellOf[ring];
        if (home >= 0 && inside[home] is null) Flood(outsideOf[patchOf[From(Rings[home][0])]], outlines);
        inside[ring] = home >= 0 ? inside[home] : new OutlineSet(outlines);
        var waiting = new Stack<int>([ring]);
        while (waiting.TryPop(out var here))
        {
            foreach (var half in Rings[here])
            {
                var there = RingOf[half ^ 1];
                if (inside[there] is not null) continue;
                inside[there] = inside[here]!.Value.With(graph.Changes[half >> 1]);
                waiting.Push(there);
            }
        }
    }
}
