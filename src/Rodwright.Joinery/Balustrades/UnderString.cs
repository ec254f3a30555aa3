using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>The lower edge of the string that a balustrade ends under, in the rail's (s, z), and what is left of pieces cut along it.</summary>
/// <param name="String">Id of the string.</param>
/// <param name="Edge">Its lower edge, running in +s and down.</param>
internal sealed record UnderString(string String, Path2 Edge)
{
    /// <summary>What a rail ends under; null where it ends in a newel.</summary>
    public static UnderString? Of(RailRun rail, IEnumerable<StringBoard> boards)
    {
        if (rail.Stop is not { } stop || boards.FirstOrDefault(b => b.Site.Id == stop.String.Id) is not { } board) return null;
        var zero = rail.Centre.Station(board.Site.Face.Through);
        return new(stop.String.Id, board.LowerEdge.MapMirrored(p => new(zero - p.X, p.Y)));
    }

    /// <summary>Where a line that climbs in +s comes to the edge; null where it stays below it from end to end.</summary>
    public double? Meets(Path2 line)
    {
        var (from, to) = (line.Vertices[0].At.X, line.Vertices[^1].At.X);
        if (Over(to) <= Tolerance.Same) return null;
        return Over(from) >= 0 ? from : Roots.Between(Over, from, to);

        double Over(double s) => GraphCut.HeightAt(line, s) - GraphCut.HeightAt(Edge, s);
    }

    /// <summary>What lies between two lines from the one x to the other, and below the edge.</summary>
    public Path2 Trim(Path2 low, Path2 high)
    {
        if (Meets(high) is not { } top) return BaseRail.Between(low, high);
        var (from, end) = (low.Vertices[0].At.X, Meets(low) ?? low.Vertices[^1].At.X);
        var vertices = new List<Vertex2>();
        vertices.AddRange(GraphCut.Between(low, from, end).Vertices);
        if (end - top > Tolerance.Same) vertices.AddRange(GraphCut.Between(Edge, top, end).Reversed().Vertices);
        if (top - from > Tolerance.Same) vertices.AddRange(GraphCut.Between(high, from, top).Reversed().Vertices);
        // Where two stretches meet, the first one's last corner has no edge of its own.
        return new(vertices.Where((v, i) => !v.At.IsSame(vertices[(i + 1) % vertices.Count].At) || v.Bulge != 0), true);
    }
}
