namespace Rodwright.Geometry.Solids;

/// <summary>
/// Straight segments in a plane, cut where they meet: points closer than <see cref="Tolerance.Weld"/> are one, and no edge passes another or a point.
/// Each edge knows which outlines run along it an odd number of times.
/// </summary>
internal sealed class PlaneGraph
{
    private const double Near = Tolerance.Weld;
    private const double Cell = 64 * Near;
    private const int Rounds = 16;

    private readonly Dictionary<(long, long), List<int>> grid = [];
    private List<Segment> segments = [];

    private readonly record struct Segment(int A, int B, int Outline);

    /// <summary>Corners.</summary>
    public List<Point2> Points { get; } = [];

    /// <summary>Edges between corners, each once.</summary>
    public List<(int A, int B)> Edges { get; } = [];

    /// <summary>For each edge, the outlines that change when it is crossed.</summary>
    public List<OutlineSet> Changes { get; } = [];

    /// <summary>Adds a segment of an outline; a negative outline only divides.</summary>
    public void Add(Point2 from, Point2 to, int outline)
    {
        var (a, b) = (PointAt(from), PointAt(to));
        if (a != b) segments.Add(new(a, b, outline));
    }

    /// <summary>Cuts the segments where they meet and makes the edges.</summary>
    /// <exception cref="InvalidOperationException">The cutting does not settle.</exception>
    public void Settle(int outlines)
    {
        // A cut may move a segment by a hair on to another point, so look again until nothing is cut.
        var round = 0;
        while (CutOnce()) if (++round > Rounds) throw new InvalidOperationException("outlines meet so closely that they cannot be told apart");
        var known = new Dictionary<(int, int), int>(segments.Count);
        foreach (var s in segments)
        {
            var key = s.A < s.B ? (s.A, s.B) : (s.B, s.A);
            if (!known.TryGetValue(key, out var edge))
            {
                known[key] = edge = Edges.Count;
                Edges.Add(key);
                Changes.Add(new(outlines));
            }
            if (s.Outline >= 0) Changes[edge].Flip(s.Outline);
        }
    }

    private int PointAt(Point2 p)
    {
        var (x, y) = (p.X / Cell, p.Y / Cell);
        const double reach = Near / Cell;
        for (var i = (long)Math.Floor(x - reach); i <= (long)Math.Floor(x + reach); i++)
            for (var j = (long)Math.Floor(y - reach); j <= (long)Math.Floor(y + reach); j++)
                if (grid.TryGetValue((i, j), out var there))
                    foreach (var k in there) if (Points[k].DistanceTo(p) <= Near) return k;
        var home = ((long)Math.Floor(x), (long)Math.Floor(y));
        if (!grid.TryGetValue(home, out var list)) grid[home] = list = new(1);
        list.Add(Points.Count);
        Points.Add(p);
        return Points.Count - 1;
    }

    private bool CutOnce()
    {
        var box = Box2.Of(Points);
        var wide = box.Width >= box.Height;
        var spans = new Span[segments.Count];
        for (var i = 0; i < spans.Length; i++)
        {
            var (a, b) = (Points[segments[i].A], Points[segments[i].B]);
            var (a1, b1, a2, b2) = wide ? (a.X, b.X, a.Y, b.Y) : (a.Y, b.Y, a.X, b.X);
            spans[i] = new(Math.Min(a1, b1), Math.Max(a1, b1), Math.Min(a2, b2), Math.Max(a2, b2), i);
        }
        Array.Sort(spans, static (p, q) => p.From != q.From ? p.From.CompareTo(q.From) : p.Index.CompareTo(q.Index));
        var cuts = new List<(int Segment, double Along, int Point)>();
        var open = new List<Span>();
        foreach (var span in spans)
        {
            var kept = 0;
            for (var i = 0; i < open.Count; i++)
            {
                var other = open[i];
                if (other.To < span.From - Near) continue;
                open[kept++] = other;
                if (other.Low <= span.High + Near && span.Low <= other.High + Near) Meet(other.Index, span.Index, cuts);
            }
            open.RemoveRange(kept, open.Count - kept);
            open.Add(span);
        }
        if (cuts.Count == 0) return false;
        cuts.Sort();
        var parts = new List<Segment>(segments.Count + cuts.Count);
        var next = 0;
        for (var i = 0; i < segments.Count; i++)
        {
            var from = segments[i].A;
            for (; next < cuts.Count && cuts[next].Segment == i; next++)
            {
                if (cuts[next].Point == from) continue;
                parts.Add(new(from, cuts[next].Point, segments[i].Outline));
                from = cuts[next].Point;
            }
            if (from != segments[i].B) parts.Add(new(from, segments[i].B, segments[i].Outline));
        }
        segments = parts;
        return true;
    }

    private void Meet(int i, int j, List<(int, double, int)> cuts)
    {
        var (s, t) = (segments[i], segments[j]);
        var before = cuts.Count;
        Touch(i, s, t.A, cuts);
        Touch(i, s, t.B, cuts);
        Touch(j, t, s.A, cuts);
        Touch(j, t, s.B, cuts);
        if (cuts.Count > before || s.A == t.A || s.A == t.B || s.B == t.A || s.B == t.B) return;
        var (a, c) = (Points[s.A], Points[t.A]);
        var (u, v) = (Points[s.B] - a, Points[t.B] - c);
        var (c1, d1) = (u.Cross(c - a), u.Cross(c + v - a));
        var (a1, b1) = (v.Cross(a - c), v.Cross(a + u - c));
        if (c1 > 0 == d1 > 0 || a1 > 0 == b1 > 0) return;
        var along = a1 / (a1 - b1);
        var point = PointAt(a + along * u);
        if (point != s.A && point != s.B) cuts.Add((i, along, point));
        if (point != t.A && point != t.B) cuts.Add((j, c1 / (c1 - d1), point));
    }

    private void Touch(int i, Segment s, int point, List<(int, double, int)> cuts)
    {
        if (point == s.A || point == s.B) return;
        var (a, p) = (Points[s.A], Points[point]);
        var u = Points[s.B] - a;
        var length = u.Length;
        if (Math.Abs(u.Cross(p - a)) > Near * length) return;
        var along = u.Dot(p - a) / (length * length);
        if (along > 0 && along < 1) cuts.Add((i, along, point));
    }

    private readonly record struct Span(double From, double To, double Low, double High, int Index);
}
