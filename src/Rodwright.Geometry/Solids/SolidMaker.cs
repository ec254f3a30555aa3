namespace Rodwright.Geometry.Solids;

/// <summary>
/// Makes the solid that is common to some extrusions, less others. Every extrusion must run along the first one's w, or across it in one direction for all:
/// then the base plane falls into cells over each of which the wood is a column between flat surfaces, and no general solid arithmetic is needed.
/// </summary>
public static class SolidMaker
{
    /// <summary>The solid of one extrusion, in its own frame.</summary>
    /// <param name="extrusion">What it is carried from.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    public static Solid Of(Extrusion extrusion, double chord = Tolerance.Chord) => Of([extrusion], [], chord);

    /// <summary>What lies in all the extrusions kept and in none of the cuts, in the frame of the first one kept. Nothing left gives a solid without faces.</summary>
    /// <param name="kept">At least one.</param>
    /// <param name="cuts">Taken away.</param>
    /// <param name="chord">How far a chord may leave the arc it stands for, mm.</param>
    /// <exception cref="ArgumentException">None is kept, or the extrusions run in more than one direction across the first.</exception>
    public static Solid Of(IReadOnlyList<Extrusion> kept, IReadOnlyList<Extrusion> cuts, double chord = Tolerance.Chord)
    {
        if (kept.Count == 0) throw new ArgumentException("a solid needs something to be made of", nameof(kept));
        var basis = kept[0].Frame;
        var s = RunOf(basis, kept.Concat(cuts));
        var bodies = new List<Body>();
        foreach (var e in kept) bodies.Add(Body.Of(basis, s, e, false, chord));
        foreach (var e in cuts) bodies.Add(Body.Of(basis, s, e, true, chord));
        var graph = Graph(bodies, s);
        var cells = new PlaneCells(graph, bodies.Count);
        var columns = new ColumnSurfaces(graph, cells, s.Right);
        for (var ring = 0; ring < cells.Rings.Count; ring++) if (cells.CellOf[ring] == ring) columns.Set(ring, t => Over(bodies, cells.OutlinesOf(ring), t));
        return FaceMerge.Join(columns.Faces());
    }

    private static Vector2 RunOf(Frame3 basis, IEnumerable<Extrusion> all)
    {
        Vector2? run = null;
        foreach (var e in all)
        {
            if (Body.RunOf(basis, e) is not { } r) continue;
            run ??= r;
            if (Math.Abs(run.Value.Cross(r)) > 1e-9) throw new ArgumentException("extrusions run in more than one direction across the first", nameof(all));
        }
        return run ?? new(0, 1);
    }

    private static PlaneGraph Graph(List<Body> bodies, Vector2 s)
    {
        var graph = new PlaneGraph();
        for (var k = 0; k < bodies.Count; k++)
        {
            var body = bodies[k];
            if (body.IsAlong)
            {
                foreach (var ring in body.Rings) AddRing(ring, k);
                continue;
            }
            AddRing([At(body.Box.MinX, body.From), At(body.Box.MaxX, body.From), At(body.Box.MaxX, body.To), At(body.Box.MinX, body.To)], k);
            foreach (var t in Breaks.Of(bodies, body)) graph.Add(At(t, body.From), At(t, body.To), -1);
        }
        graph.Settle(bodies.Count);
        return graph;

        void AddRing(IReadOnlyList<Point2> ring, int outline)
        {
            for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++) graph.Add(ring[i], ring[j], outline);
        }

        Point2 At(double t, double along) => Point2.Origin + t * s.Right + along * s;
    }

    private static List<Column.Stretch> Over(List<Body> bodies, OutlineSet inside, double t)
    {
        List<Column.Stretch>? wood = null;
        for (var k = 0; k < bodies.Count; k++)
        {
            if (bodies[k].IsCut && !inside.Has(k)) continue;
            if (!inside.Has(k)) return [];
            var own = StretchesOf(bodies[k], t);
            wood = wood is null ? own : bodies[k].IsCut ? Column.Less(wood, own, t, Tolerance.Weld) : Column.Both(wood, own, t, Tolerance.Weld);
            if (wood.Count == 0) break;
        }
        return wood!;
    }

    private static List<Column.Stretch> StretchesOf(Body body, double t)
    {
        if (body.IsAlong) return [new(Level.At(body.From), Level.At(body.To))];
        var levels = new List<Level>(4);
        foreach (var slant in body.Slants)
        {
            if (slant.FromT > t) break;
            if (t < slant.ToT) levels.Add(slant);
        }
        levels.Sort((a, b) => a.HeightAt(t).CompareTo(b.HeightAt(t)));
        var stretches = new List<Column.Stretch>(levels.Count / 2);
        for (var i = 0; i + 1 < levels.Count; i += 2) stretches.Add(new(levels[i], levels[i + 1]));
        return stretches;
    }
}
