namespace Rodwright.Geometry.Solids;

/// <summary>
/// The surfaces of columns over cells: tops, undersides, and walls where neighbours differ. Every height at a corner of the base plane is one point for all
/// that meet there, so the surfaces close by themselves.
/// </summary>
internal sealed class ColumnSurfaces
{
    private static readonly List<Column.Stretch> Open = [];

    private readonly PlaneGraph graph;
    private readonly PlaneCells cells;
    private readonly double[] ts; // by corner
    private readonly List<Column.Stretch>[] wood; // by ring that bounds a cell
    private readonly FacePatches patches = new();
    private int[] first = []; // of a corner's points; they rise in height

    public ColumnSurfaces(PlaneGraph graph, PlaneCells cells, Vector2 tAxis)
    {
        this.graph = graph;
        this.cells = cells;
        ts = [.. graph.Points.Select(p => tAxis.Dot(p - Point2.Origin))];
        wood = new List<Column.Stretch>[cells.Rings.Count];
        Array.Fill(wood, Open);
        TAxis = tAxis;
    }

    private Vector2 TAxis { get; }

    /// <summary>Says what stands over a cell; <paramref name="over"/> is asked at the middle of the cell's range of t.</summary>
    public void Set(int ring, Func<double, List<Column.Stretch>> over)
    {
        var (min, max) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var half in cells.Rings[ring])
        {
            var t = ts[cells.From(half)];
            (min, max) = (Math.Min(min, t), Math.Max(max, t));
        }
        wood[ring] = over((min + max) / 2);
    }

    /// <summary>All surfaces.</summary>
    public FacePatches Faces()
    {
        MakePoints();
        var rings = cells.Rings.Select((_, i) => i).GroupBy(r => cells.CellOf[r]).Where(g => g.Key >= 0 && wood[g.Key].Count > 0).ToList();
        foreach (var cell in rings)
            foreach (var stretch in wood[cell.Key])
            {
                Cap(cell, stretch.High, up: true);
                Cap(cell, stretch.Low, up: false);
            }
        for (var half = 0; half < graph.Edges.Count * 2; half++) Walls(half);
        return patches;
    }

    private List<Column.Stretch> WoodBeside(int half)
    {
        var cell = cells.CellOf[cells.RingOf[half]];
        return cell < 0 ? Open : wood[cell];
    }

    private void MakePoints()
    {
        var heights = new List<(int Corner, double W)>();
        for (var half = 0; half < graph.Edges.Count * 2; half++)
        {
            var corner = cells.From(half);
            foreach (var stretch in WoodBeside(half))
            {
                heights.Add((corner, stretch.Low.HeightAt(ts[corner])));
                heights.Add((corner, stretch.High.HeightAt(ts[corner])));
            }
        }
        heights.Sort();
        first = new int[graph.Points.Count + 1];
        var k = 0;
        for (var corner = 0; corner < graph.Points.Count; corner++)
        {
            first[corner] = patches.Points.Count;
            var last = double.NegativeInfinity;
            for (; k < heights.Count && heights[k].Corner == corner; k++)
            {
                if (heights[k].W - last > Tolerance.Weld) patches.Points.Add(new(graph.Points[corner].X, graph.Points[corner].Y, heights[k].W));
                last = heights[k].W;
            }
        }
        first[^1] = patches.Points.Count;
    }

    private int PointAt(int corner, Level level)
    {
        var w = level.HeightAt(ts[corner]);
        // The last point not above it: heights that run together were made one, named by the lowest.
        var i = first[corner + 1] - 1;
        while (i > first[corner] && patches.Points[i].Z > w) i--;
        return i;
    }

    private void Cap(IEnumerable<int> rings, Level level, bool up)
    {
        var patch = patches.Planes.Count;
        var start = -1;
        foreach (var ring in rings)
        {
            var corners = cells.Rings[ring].ConvertAll(half => PointAt(cells.From(half), level));
            start = corners[0];
            if (!up) corners.Reverse();
            patches.AddRing(patch, corners);
        }
        var (slope, length) = (level.Slope, Math.Sqrt(1 + level.Slope * level.Slope));
        var normal = new Vector3(-slope * TAxis.X / length, -slope * TAxis.Y / length, 1 / length);
        patches.Planes.Add(new(patches.Points[start], patches.Points[start], up ? normal : -normal));
    }

    private void Walls(int half)
    {
        var mine = WoodBeside(half);
        if (mine.Count == 0) return;
        var theirs = WoodBeside(half ^ 1);
        if (ReferenceEquals(mine, theirs)) return;
        var (a, b) = (cells.From(half), cells.From(half ^ 1));
        foreach (var (low, high) in Column.Less(mine, theirs, (ts[a] + ts[b]) / 2))
        {
            var (al, ah, bl, bh) = (PointAt(a, low), PointAt(a, high), PointAt(b, low), PointAt(b, high));
            if (al >= ah && bl >= bh) continue;
            var patch = patches.Planes.Count;
            var corners = new List<int>();
            for (var i = bl; i <= bh; i++) corners.Add(i);
            for (var i = ah; i >= al; i--) corners.Add(i);
            patches.AddRing(patch, corners);
            var along = (graph.Points[b] - graph.Points[a]).Unit;
            patches.Planes.Add(new(patches.Points[al], patches.Points[bl], new(along.Y, -along.X, 0)));
        }
    }
}
