using Rodwright.Geometry;

namespace Rodwright.Joinery.Strings;

/// <summary>
/// An edge of a string before it is eased: the margin line's pieces offset square, neighbours intersected. A piece so short that its neighbours meet before
/// it is left out.
/// </summary>
internal sealed class EdgeLine
{
    private readonly List<Line2> lines = [];
    private readonly List<int> pieces = []; // which piece of the margin line each line was offset from
    private readonly List<Point2> corners = []; // corners[i] is where lines[i] ends and lines[i + 1] begins

    /// <summary>Offsets each piece of the margin line to the left (up) by its own distance.</summary>
    public EdgeLine(IReadOnlyList<Point2> margin, IReadOnlyList<double> offsets)
    {
        for (var i = 0; i + 1 < margin.Count; i++) Add(Line2.Between(margin[i], margin[i + 1]).OffsetLeft(offsets[i]), i);
    }

    /// <summary>Where the pieces meet.</summary>
    public IReadOnlyList<Point2> Corners => corners;

    /// <summary>Height at s, the end pieces produced.</summary>
    public double HeightAt(double s)
    {
        var line = lines[PieceAt(s)];
        return line.Through.Y + (s - line.Through.X) * line.Along.Y / line.Along.X;
    }

    /// <summary>Where the edge crosses a level nearest its lower end, end pieces produced.</summary>
    public double StationAtHeight(double z)
    {
        var piece = 0;
        while (piece < corners.Count && corners[piece].Y < z) piece++;
        return OnPiece(piece, z);
    }

    /// <summary>Where the edge's last piece (produced) reaches a level.</summary>
    public double LastStationAtHeight(double z) => OnPiece(lines.Count - 1, z);

    /// <summary>Square distance of a point above the edge's piece at its station (negative below), and which piece of the margin line that is.</summary>
    public (double Clear, int Piece) Above(Point2 p)
    {
        var i = PieceAt(p.X);
        return (lines[i].LeftOf(p), pieces[i]);
    }

    /// <summary>
    /// The edge between two stations with a tangent arc at each corner: tangent length at most <paramref name="tangent"/> and half the shorter neighbour,
    /// made shorter while <paramref name="keeps"/> refuses the arc (centre, radius, tangent points).
    /// </summary>
    public Path2 Eased(double from, double to, double tangent, string edge, Func<Arc2, Point2, Point2, bool> keeps, List<Easing> easings)
    {
        var vertices = new List<Vertex2> { new(new(from, HeightAt(from))) };
        for (var i = 0; i < corners.Count; i++)
        {
            var corner = corners[i];
            if (corner.X <= from + Tolerance.Same || corner.X >= to - Tolerance.Same) continue;
            var before = i > 0 && corners[i - 1].X > from ? corners[i - 1] : new(from, HeightAt(from));
            var after = i + 1 < corners.Count && corners[i + 1].X < to ? corners[i + 1] : new(to, HeightAt(to));
            var most = Math.Min(tangent, Math.Min(corner.DistanceTo(before), corner.DistanceTo(after)) / 2);
            var (d1, d2) = (lines[i].Along, lines[i + 1].Along);
            var turn = Angle.Atan2(d1.Cross(d2), d1.Dot(d2));
            var best = Longest(most, t => keeps(Arc2.FromBulge(corner - t * d1, corner + t * d2, Angle.Tan(turn / 4)), corner - t * d1, corner + t * d2));
            easings.Add(new(edge, corner, best, best / Angle.Tan(Math.Abs(turn) / 2), Angle.FromRadians(turn)));
            if (best < 1)
            {
                vertices.Add(new(corner));
                continue;
            }
            vertices.Add(new(corner - best * d1, Angle.Tan(turn / 4)));
            vertices.Add(new(corner + best * d2));
        }
        vertices.Add(new(new(to, HeightAt(to))));
        return new(Distinct(vertices), false);
    }

    private static double Longest(double most, Func<double, bool> keeps)
    {
        if (most < 1) return 0;
        if (keeps(most)) return most;
        // Shorter tangents only leave more wood: halve the interval to the whole millimetre.
        var (low, high) = (0, (int)Math.Ceiling(most));
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            if (keeps(middle)) low = middle;
            else high = middle;
        }
        return low;
    }

    private static List<Vertex2> Distinct(List<Vertex2> vertices)
    {
        // Two easings that share a piece end to end leave a repeated point between them.
        for (var i = vertices.Count - 2; i >= 0; i--)
            if (vertices[i].Bulge == 0 && vertices[i].At.IsSame(vertices[i + 1].At) && vertices.Count > 2) vertices.RemoveAt(i);
        return vertices;
    }

    private int PieceAt(double s)
    {
        var piece = 0;
        while (piece < corners.Count && corners[piece].X < s) piece++;
        return piece;
    }

    private double OnPiece(int piece, double z)
    {
        var line = lines[piece];
        return line.Through.X + (z - line.Through.Y) * line.Along.X / line.Along.Y;
    }

    private void Add(Line2 line, int piece)
    {
        while (lines.Count > 0)
        {
            var meet = lines[^1].Cross(line);
            if (meet is { } m && (corners.Count == 0 || m.X > corners[^1].X + Tolerance.Same))
            {
                corners.Add(m);
                break;
            }
            if (corners.Count == 0)
            {
                lines.Clear();
                pieces.Clear();
                break;
            }
            corners.RemoveAt(corners.Count - 1);
            lines.RemoveAt(lines.Count - 1);
            pieces.RemoveAt(pieces.Count - 1);
        }
        lines.Add(line);
        pieces.Add(piece);
    }
}

/// <summary>A tangent arc where an edge of a string changes pitch.</summary>
/// <param name="Edge">Upper or lower.</param>
/// <param name="Corner">Where the two straight pieces meet, (s, z).</param>
/// <param name="Tangent">T, tangent length either side, mm; 0 where none could be drawn.</param>
/// <param name="Radius">T / tan(turn / 2), mm.</param>
/// <param name="Turn">Change of pitch; positive where the string gets steeper going up.</param>
public sealed record Easing(string Edge, Point2 Corner, double Tangent, double Radius, Angle Turn);
