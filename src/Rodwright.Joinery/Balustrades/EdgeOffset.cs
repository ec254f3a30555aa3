using Rodwright.Geometry;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Lines a constant distance from a string's edge: arcs stay arcs about their centres, straight pieces meet at their corners.</summary>
internal static class EdgeOffset
{
    // The straight ends are carried on so far before the line is cut plumb again, mm: more than any rail is high.
    private const double Beyond = 400;

    /// <summary>The line a distance above an open path that runs steadily in +x and begins and ends straight, cut plumb at the path's own ends.</summary>
    public static Path2 Above(Path2 path, double distance)
    {
        var (from, to) = (path.Vertices[0].At.X, path.Vertices[^1].At.X);
        var pieces = Enumerable.Range(0, path.EdgeCount).Select(path.Edge).Select(e => Piece(e, distance)).ToList();
        pieces[0] = pieces[0] with { From = pieces[0].From + Beyond * (pieces[0].From - pieces[0].To).Unit };
        pieces[^1] = pieces[^1] with { To = pieces[^1].To + Beyond * (pieces[^1].To - pieces[^1].From).Unit };
        var vertices = new List<Vertex2> { new(pieces[0].From, pieces[0].Bulge) };
        for (var i = 1; i < pieces.Count; i++)
        {
            var (a, b) = (pieces[i - 1], pieces[i]);
            // Where two straight pieces were not eased their offsets meet elsewhere than at their ends.
            var meets = a.Bulge == 0 && b.Bulge == 0 ? Line2.Between(a.From, a.To).Cross(Line2.Between(b.From, b.To)) ?? b.From : b.From;
            vertices.Add(new(meets, b.Bulge));
        }
        vertices.Add(new(pieces[^1].To));
        return GraphCut.Between(new(vertices, false), from, to);
    }

    private static (Point2 From, Point2 To, double Bulge) Piece((Point2 From, Point2 To, double Bulge) edge, double distance)
    {
        var along = (edge.To - edge.From).Direction;
        // At its ends an arc's direction is its chord's, turned by half its sweep.
        var half = 2 * Angle.Atan(edge.Bulge);
        return (edge.From + distance * Vector2.At(along - half).Left, edge.To + distance * Vector2.At(along + half).Left, edge.Bulge);
    }
}
