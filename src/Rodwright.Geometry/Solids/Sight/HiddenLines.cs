using System.Collections.Immutable;

namespace Rodwright.Geometry.Solids.Sight;

/// <summary>
/// Which edges of solids are seen from an eye far off. Worked out line by line, not dot by dot: every edge is cut where the outline of a face before it crosses it, so that ends are exact.
/// Solids may touch; where they fill one place, each is taken to be seen only outside the other.
/// </summary>
public static class HiddenLines
{
    // Stretches shorter than this are taken to what is beside them: nothing is drawn off so closely, mm.
    private const double Least = 0.01;

    /// <summary>
    /// The edges of the solids on the picture, solid by solid: arrises, and of rounds the lines where they turn out of sight. Edges that are looked along are left out.
    /// </summary>
    /// <param name="solids">Closed solids as they stand in the world.</param>
    /// <param name="view">The eye.</param>
    /// <param name="withHidden">Whether to add the stretches that are hidden.</param>
    /// <exception cref="ArgumentException">A solid is open.</exception>
    public static ImmutableArray<SightEdge> Of(IReadOnlyList<Solid> solids, ParallelView view, bool withHidden = false)
    {
        var (lines, faces) = (new List<SightLine>(), new List<SightFace>());
        var first = 0;
        for (var s = 0; s < solids.Count; s++)
        {
            var solid = solids[s];
            lines.AddRange(SightLine.Of(solid, s, first, view).Where(l => l.IsOpen || withHidden));
            for (var f = 0; f < solid.Faces.Length; f++)
                if (view.Eye.Dot(solid.Faces[f].Normal) > 1e-6) faces.Add(new(solid, solid.Faces[f], first + f, view));
            first += solid.Faces.Length;
        }
        var grid = new SightGrid(faces);
        return [.. lines.AsParallel().AsOrdered().SelectMany(l => Split(l, grid, withHidden))];
    }

    private static List<SightEdge> Split(SightLine line, SightGrid grid, bool withHidden)
    {
        var hidden = line.IsOpen ? HiddenOf(line, grid) : [(0, 1)];
        var found = new List<SightEdge>();
        var at = 0.0;
        foreach (var (from, to) in hidden)
        {
            if (from > at) found.Add(Stretch(at, from, true));
            if (withHidden) found.Add(Stretch(from, to, false));
            at = to;
        }
        if (at < 1) found.Add(Stretch(at, 1, true));
        return found;

        SightEdge Stretch(double from, double to, bool isSeen) => new(
            line.Solid, from == 0 ? line.From : line.From.Towards(line.To, from), to == 1 ? line.To : line.From.Towards(line.To, to), isSeen, line.IsContour);
    }

    /// <summary>The hidden stretches of a line in order, apart from one another.</summary>
    private static List<(double From, double To)> HiddenOf(SightLine line, SightGrid grid)
    {
        var (faces, hidden, work) = (new List<SightFace>(), new List<(double From, double To)>(), new List<double>());
        grid.Find(Box2.Of([line.From, line.To]), Math.Min(line.FromNear, line.ToNear), faces);
        foreach (var face in faces)
            if (face.Index != line.Left && face.Index != line.Right) face.Hide(line, hidden, work);
        hidden.Sort();
        var least = Least / line.From.DistanceTo(line.To);
        var merged = new List<(double From, double To)>();
        foreach (var (from, to) in hidden)
        {
            // Clamped to the line: a crossing is worked out on its endless continuation.
            if (merged.Count > 0 && from <= merged[^1].To + least) merged[^1] = (merged[^1].From, Math.Max(merged[^1].To, to));
            else merged.Add((from <= least ? 0 : from, to));
        }
        for (var i = 0; i < merged.Count; i++) if (merged[i].To >= 1 - least) merged[i] = (merged[i].From, 1);
        merged.RemoveAll(m => m.To - m.From < least && m != (0, 1));
        return merged;
    }
}
