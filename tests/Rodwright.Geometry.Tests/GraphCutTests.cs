using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class GraphCutTests
{
    // Straight at 10, a rounded rise, straight at a slope: like the upper edge of a string with an easing.
    private static readonly Path2 Edge = new(
        [new(new(0, 10)), new(new(100, 10), Angle.Tan(Math.PI / 16)), new(new(100 + 300 * Math.Sqrt(0.5), 10 + 300 * (1 - Math.Sqrt(0.5)))), new(new(700, 10 + 300 * (1 - Math.Sqrt(0.5)) + 700 - 100 - 300 * Math.Sqrt(0.5)))], false);

    /// <summary>Edges that climb steadily in x, arcs among them.</summary>
    private static Gen<Path2> Graphs { get; } =
        from steps in Gen.Select(Gen.Double[50, 300], Gen.Double[-100, 200], Gen.Double[-0.15, 0.15], Gen.Bool).Array[2, 7]
        select Climb(steps);

    [Fact]
    public void Height_on_an_arc_is_that_of_its_circle()
    {
        // The easing's centre stands 300 above its start.
        Assert.Equal(310 - Math.Sqrt(300 * 300 - 100 * 100), GraphCut.HeightAt(Edge, 200), 9);
        Assert.Equal(10, GraphCut.HeightAt(Edge, 50), 9);
    }

    [Fact]
    public void Beyond_the_ends_the_straight_edges_are_produced()
    {
        var line = Path2.Polyline(new Point2(0, 0), new Point2(100, 50));
        Assert.Equal(-50, GraphCut.HeightAt(line, -100), 9);
        Assert.Equal(100, GraphCut.HeightAt(line, 200), 9);
    }

    [Fact]
    public void Both_halves_of_a_cut_make_up_the_whole() =>
        Gen.Select(Graphs, Gen.Double[0.05, 0.95]).Holds((path, part) =>
        {
            var (from, to) = (path.Vertices[0].At.X, path.Vertices[^1].At.X);
            var x = from + part * (to - from);
            var (left, right) = (GraphCut.Between(path, from, x), GraphCut.Between(path, x, to));
            return Math.Abs(left.Length + right.Length - path.Length) < 1e-6
                && left.Vertices[^1].At.IsSame(right.Vertices[0].At)
                && left.Vertices[0].At.IsSame(path.Vertices[0].At) && right.Vertices[^1].At.IsSame(path.Vertices[^1].At);
        });

    [Fact]
    public void A_piece_lies_on_the_path_it_was_cut_from() =>
        Gen.Select(Graphs, Gen.Double[0, 0.45], Gen.Double[0.55, 1]).Holds((path, a, b) =>
        {
            var (from, to) = (path.Vertices[0].At.X, path.Vertices[^1].At.X);
            var piece = GraphCut.Between(path, from + a * (to - from), from + b * (to - from));
            return piece.Flattened().All(p => path.DistanceTo(p) < 1e-6 && Math.Abs(GraphCut.HeightAt(path, p.X) - p.Y) < 1e-5);
        });

    [Theory]
    [InlineData(2e-8)]
    [InlineData(-5e-7)]
    [InlineData(1e-5)]
    public void An_arc_whose_centre_lies_thousands_of_kilometres_off_is_cut_on_its_line(double bulge)
    {
        var path = new Path2([new(new(0, 0), bulge), new(new(250, 80))], false);
        var piece = GraphCut.Between(path, 30, 170);
        Assert.All(piece.Flattened(), p => Assert.Equal(0, path.DistanceTo(p), 1e-10));
        // So shallow that it is all but a parabola on its chord.
        Assert.Equal(32 - bulge * path.Vertices[0].At.DistanceTo(path.Vertices[1].At) / 2 * 4 * 0.4 * 0.6 * (path.Length / 250), GraphCut.HeightAt(path, 100), 1e-7);
    }

    [Fact]
    public void A_cut_at_a_vertex_makes_no_edge_without_length()
    {
        var left = GraphCut.Between(Edge, 0, 100);
        Assert.Equal(2, left.Vertices.Length);
        Assert.Equal(100, left.Length, 9);
        var right = GraphCut.Between(Edge, 100, 700);
        Assert.Equal(3, right.Vertices.Length);
        Assert.Equal(Edge.Vertices[1].Bulge, right.Vertices[0].Bulge, 9);
    }

    private static Path2 Climb((double Going, double Rise, double Bulge, bool Bulged)[] steps)
    {
        var at = Point2.Origin;
        var vertices = new List<Vertex2>();
        foreach (var (going, rise, bulge, bulged) in steps)
        {
            vertices.Add(new(at, bulged ? bulge : 0));
            // Kept shallow enough that an arc never turns back on itself.
            at += new Vector2(going, Math.Clamp(rise, -going / 3, going / 3));
        }
        vertices.Add(new(at));
        return new(vertices, false);
    }
}
