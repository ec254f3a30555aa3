namespace Rodwright.Geometry.Solids;

/// <summary>Where in t a body that runs across must be divided, so that within each division its surfaces are flat and pass no other surface.</summary>
internal static class Breaks
{
    /// <summary>Values of t strictly within the body, in order.</summary>
    public static List<double> Of(List<Body> bodies, Body body)
    {
        var breaks = new List<double>();
        foreach (var ring in body.Rings) breaks.AddRange(ring.Select(p => p.X));
        var slants = body.Slants;
        foreach (var other in bodies)
        {
            if (ReferenceEquals(other, body)) continue;
            if (other.IsAlong)
            {
                foreach (var slant in slants)
                {
                    Cross(slant, other.From, breaks);
                    Cross(slant, other.To, breaks);
                }
            }
            else if (other.Box.Overlaps(body.Box, -Tolerance.Weld) && other.From <= body.To + Tolerance.Weld && body.From <= other.To + Tolerance.Weld)
            {
                foreach (var a in slants) foreach (var b in other.Slants) Cross(a, b, breaks);
            }
        }
        breaks.Sort();
        var kept = new List<double>();
        foreach (var t in breaks)
            if (t > body.Box.MinX + Tolerance.Weld && t < body.Box.MaxX - Tolerance.Weld && (kept.Count == 0 || t > kept[^1] + Tolerance.Weld)) kept.Add(t);
        return kept;
    }

    private static void Cross(Level slant, double w, List<double> breaks)
    {
        if (slant.FromW < w != slant.ToW < w) breaks.Add(slant.FromT + (w - slant.FromW) / slant.Slope);
    }

    private static void Cross(Level a, Level b, List<double> breaks)
    {
        var (from, to) = (Math.Max(a.FromT, b.FromT), Math.Min(a.ToT, b.ToT));
        if (from >= to) return;
        var (d1, d2) = (a.HeightAt(from) - b.HeightAt(from), a.HeightAt(to) - b.HeightAt(to));
        if (d1 < 0 != d2 < 0) breaks.Add(from + (to - from) * d1 / (d1 - d2));
    }
}
