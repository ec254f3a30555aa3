namespace Rodwright.Geometry;

/// <summary>Cuts and reads open paths that run steadily in +x, such as the edges of a string.</summary>
public static class GraphCut
{
    /// <summary>The part of a path between two x, cut exactly, arcs included. Both must lie within the path.</summary>
    public static Path2 Between(Path2 path, double fromX, double toX)
    {
        var vertices = new List<Vertex2>();
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            if (b.X <= fromX + Tolerance.Same && i < path.EdgeCount - 1) continue;
            if (a.X >= toX - Tolerance.Same && vertices.Count > 0) break;
            var (low, high) = (Math.Max(a.X, fromX), Math.Min(b.X, toX));
            var (start, end) = (At(a, b, bulge, low), At(a, b, bulge, high));
            vertices.Add(new(start, Part(a, b, bulge, start, end)));
            if (high >= toX - Tolerance.Same || i == path.EdgeCount - 1)
            {
                vertices.Add(new(end));
                break;
            }
        }
        return new(vertices, false);
    }

    /// <summary>Height of the path at x; beyond its ends the first or last edge (straight) is produced.</summary>
    public static double HeightAt(Path2 path, double x)
    {
        for (var i = 0; i < path.EdgeCount; i++)
        {
            var (a, b, bulge) = path.Edge(i);
            if (x <= b.X || i == path.EdgeCount - 1) return At(a, b, bulge, x).Y;
        }
        throw new System.Diagnostics.UnreachableException();
    }

    private static Point2 At(Point2 a, Point2 b, double bulge, double x)
    {
        if (Math.Abs(x - a.X) <= 1e-12) return a;
        if (Math.Abs(x - b.X) <= 1e-12) return b;
        var onChord = a.Towards(b, (x - a.X) / (b.X - a.X));
        if (bulge == 0 || x < a.X || x > b.X) return onChord;
        return new(x, onChord.Y + new ChordArc(a, b, bulge).Reach(onChord, new(0, 1)));
    }

    private static double Part(Point2 a, Point2 b, double bulge, Point2 start, Point2 end) => bulge == 0 ? 0 : Angle.Tan(new ChordArc(a, b, bulge).Turn(start, end) / 4);
}
