namespace Rodwright.Geometry.Solids;

/// <summary>
/// An extrusion as seen in the base frame: either along w (its outline lies in the base plane) or across it (its outline lies in t and w, and it runs
/// along s, square to t).
/// </summary>
internal sealed class Body
{
    private Body(List<IReadOnlyList<Point2>> rings, bool isAlong, double from, double to, bool isCut)
    {
        Rings = rings;
        IsAlong = isAlong;
        From = from;
        To = to;
        IsCut = isCut;
        Box = Box2.Of(rings.SelectMany(r => r));
        Slants = isAlong ? [] : SlantsOf(rings);
    }

    /// <summary>Outline and holes: in the base plane, or in (t, w).</summary>
    public List<IReadOnlyList<Point2>> Rings { get; }

    /// <summary>Along w, or across.</summary>
    public bool IsAlong { get; }

    /// <summary>Where it begins: in w, or in s.</summary>
    public double From { get; }

    /// <summary>Where it ends.</summary>
    public double To { get; }

    /// <summary>Taken away.</summary>
    public bool IsCut { get; }

    /// <summary>Box round its rings.</summary>
    public Box2 Box { get; }

    /// <summary>Unit direction in the base plane along which a body runs across; null when it runs along w.</summary>
    /// <exception cref="ArgumentException">It does neither.</exception>
    public static Vector2? RunOf(Frame3 basis, Extrusion extrusion)
    {
        var w = extrusion.Frame.W;
        var along = w.Dot(basis.W);
        if (Math.Abs(along) > 1 - 1e-12) return null;
        if (Math.Abs(along) > 1e-9) throw new ArgumentException("an extrusion stands neither square to the first one nor along it", nameof(extrusion));
        return new Vector2(w.Dot(basis.U), w.Dot(basis.V)).Unit;
    }

    /// <summary>The body of an extrusion; s is the direction of those that run across.</summary>
    public static Body Of(Frame3 basis, Vector2 s, Extrusion extrusion, bool isCut, double chord)
    {
        var isAlong = RunOf(basis, extrusion) is null;
        var (origin, w) = basis.ToLocal(extrusion.Frame.Origin);
        var inward = isAlong ? -extrusion.Frame.W.Dot(basis.W) : -new Vector2(extrusion.Frame.W.Dot(basis.U), extrusion.Frame.W.Dot(basis.V)).Dot(s);
        var start = isAlong ? w : s.Dot(origin - Point2.Origin);
        var end = start + (inward > 0 ? extrusion.Depth : -extrusion.Depth);
        var rings = new List<IReadOnlyList<Point2>>();
        foreach (var outline in extrusion.Holes.Prepend(extrusion.Outline))
        {
            var ring = outline.Flattened(chord).Select(p =>
            {
                var (at, height) = basis.ToLocal(extrusion.Frame.ToWorld(p));
                return isAlong ? at : new Point2(s.Right.Dot(at - Point2.Origin), height);
            });
            rings.Add([.. ring]);
        }
        return new(rings, isAlong, Math.Min(start, end), Math.Max(start, end), isCut);
    }

    /// <summary>Edges of a body that runs across, from the lesser t to the greater, by where they begin; upright ones left out.</summary>
    public Level[] Slants { get; }

    private static Level[] SlantsOf(List<IReadOnlyList<Point2>> rings)
    {
        var slants = new List<Level>();
        foreach (var ring in rings)
        {
            for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
            {
                var (a, b) = ring[i].X <= ring[j].X ? (ring[i], ring[j]) : (ring[j], ring[i]);
                if (b.X - a.X > Tolerance.Weld) slants.Add(new(a.X, a.Y, b.X, b.Y));
            }
        }
        return [.. slants.OrderBy(l => l.FromT)];
    }
}
