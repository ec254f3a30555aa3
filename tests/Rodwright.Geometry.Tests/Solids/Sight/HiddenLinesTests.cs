using CsCheck;
using Rodwright.Geometry.Solids;
using Rodwright.Geometry.Solids.Sight;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests.Solids.Sight;

/// <summary>What of solids is seen, against counts and lengths worked out by hand.</summary>
public class HiddenLinesTests
{
    private static readonly ParallelView Corner = ParallelView.From(new(1, -1, 1));

    [Fact]
    public void A_cube_seen_over_a_corner_shows_nine_edges_and_hides_three()
    {
        var edges = HiddenLines.Of([Box(0, 0, 0, 100, 100, 100)], ParallelView.From(new(1.1, -1, 0.9)), withHidden: true);
        Assert.Equal((9, 3), (edges.Count(e => e.IsSeen), edges.Count(e => !e.IsSeen)));
        Assert.Equal(6, edges.Count(e => e.IsSeen && e.IsContour));
    }

    [Fact]
    public void Seen_exactly_over_a_corner_it_is_the_same_though_corners_coincide()
    {
        var edges = HiddenLines.Of([Box(0, 0, 0, 100, 100, 100)], Corner, withHidden: true);
        Assert.Equal((9, 3), (edges.Count(e => e.IsSeen), edges.Count(e => !e.IsSeen)));
        Assert.All(edges, e => Assert.Equal(100 * Math.Sqrt(2.0 / 3), e.Length, 1e-9));
    }

    [Fact]
    public void Seen_square_on_it_is_four_edges_and_the_back_is_hidden_behind_them()
    {
        var edges = HiddenLines.Of([Box(0, 0, 0, 100, 100, 100)], ParallelView.From(new(0, -1, 0)), withHidden: true);
        Assert.Equal((4, 4), (edges.Count(e => e.IsSeen), edges.Count(e => !e.IsSeen)));
        Assert.Equal([0, 0, 0, 0, 100, 100, 100, 100], edges.Where(e => e.IsSeen).SelectMany(e => new[] { e.From.X, e.To.X }).Order());
    }

    [Fact]
    public void The_isometric_view_shortens_all_three_ways_alike()
    {
        var view = ParallelView.Isometric(new(1, -1));
        foreach (var way in (Vector3[])[new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)]) Assert.Equal(Math.Sqrt(2.0 / 3), view.At(default(Point3) + way).DistanceTo(Point2.Origin), 1e-12);
        Assert.Equal(0, view.At(new(0, 0, 7)).X, 1e-12);
    }

    [Fact]
    public void A_cube_before_another_cuts_its_edges_where_they_meet_on_the_picture()
    {
        // From the front: the nearer one covers x 60..160 and z 50..150 of the further one's 0..100 by 0..100.
        var edges = HiddenLines.Of([Box(0, 200, 0, 100, 300, 100), Box(60, 0, 50, 160, 100, 150)], ParallelView.From(new(0, -1, 0)), withHidden: true);
        var far = edges.Where(e => e.Solid == 0 && e.IsSeen).ToList();
        Assert.Equal(400 - 40 - 50, far.Sum(e => e.Length), 1e-9);
        Assert.Contains(far, e => Same(e, new(0, 100), new(60, 100)));
        Assert.Contains(far, e => Same(e, new(100, 0), new(100, 50)));
        Assert.Equal(400, edges.Where(e => e.Solid == 1 && e.IsSeen).Sum(e => e.Length), 1e-9);
    }

    [Fact]
    public void A_pocket_shows_its_rim_and_as_much_of_its_floor_as_the_eye_reaches()
    {
        // A pocket 80 by 40, 8 deep, in the top of a board, seen from the front at 45 degrees: 8 of its floor is hidden behind the front rim.
        var board = SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 300, 100), 20)], [new(Top, Path2.Rectangle(50, 30, 130, 70), 8)]);
        var edges = HiddenLines.Of([board], ParallelView.From(new(0, -1, 1)), withHidden: true);
        var half = Math.Sqrt(0.5);
        Assert.Equal(1, Count(30, 0, true)); // the front rim
        Assert.Equal(1, Count(70, 0, true));
        Assert.Equal(1, Count(30, -8, false)); // the floor's front edge
        Assert.Equal(1, Count(70, -8, true));
        // Of the floor's sides 32 of 40 lie further back than the rim hides; the eye looks along the pocket's sides, so they fall on the rim's.
        Assert.All(edges.Where(e => !e.IsSeen && e.From.X is > 50 and < 130), e => Assert.True(Math.Max(e.From.Y, e.To.Y) <= half * 30 + 1e-6));

        int Count(double y, double z, bool isSeen) => edges.Count(e => e.IsSeen == isSeen && Math.Abs(e.Length - 80) < 1e-6 && Math.Abs(e.From.Y - half * (y + z)) < 1e-6 && Math.Abs(e.To.Y - half * (y + z)) < 1e-6);
    }

    [Fact]
    public void A_round_bar_shows_its_ends_and_two_lines_and_no_chords_between()
    {
        var bar = SolidMaker.Of(new Extrusion(Top, Path2.Circle(new(0, 0), 30), 200));
        var edges = HiddenLines.Of([bar], ParallelView.From(new(0.3, -1, 0.4)));
        var view = ParallelView.From(new(0.3, -1, 0.4));
        var along = 200 * view.Up.Z;
        Assert.Equal(2, edges.Count(e => Math.Abs(e.Length - along) < 1e-6));
        // The upper end is a whole ellipse, the lower one half of it.
        var rim = edges.Where(e => e.Length < along / 2).Sum(e => e.Length);
        var ellipse = edges.Where(e => e.Length < along / 2 && Math.Max(e.From.Y, e.To.Y) > -40).Sum(e => e.Length);
        Assert.Equal(1.5 * ellipse, rim, 0.02 * ellipse);
    }

    [Fact]
    public void Pieces_that_only_touch_do_not_hide_the_line_in_which_they_meet()
    {
        // A block on a table: the four lower edges of the block lie on the table's top; the two at the front are seen.
        var edges = HiddenLines.Of([Box(0, 0, -20, 400, 400, 0), Box(100, 100, 0, 200, 200, 60)], ParallelView.From(new(1, -1.2, 0.8)));
        Assert.Equal(9, edges.Count(e => e.Solid == 1));
    }

    [Fact]
    public void An_open_solid_is_refused()
    {
        var box = Box(0, 0, 0, 1, 1, 1);
        Assert.Throws<ArgumentException>(() => HiddenLines.Of([new(box.Vertices, box.Faces[1..])], Corner));
        Assert.Throws<ArgumentException>(() => ParallelView.From(new(0, 0, 0)));
    }

    [Fact]
    public void What_is_seen_and_what_is_hidden_are_the_whole_length_of_every_edge() =>
        Gen.Select(Boxes, Ways).Holds((boxes, way) =>
        {
            if (way.Length < 1) return;
            var view = ParallelView.From(way);
            var edges = HiddenLines.Of(boxes, view, withHidden: true);
            for (var s = 0; s < boxes.Count; s++)
            {
                var size = boxes[s].Bounds.Size;
                var whole = 4 * (view.At(new(size.X, 0, 0)).DistanceTo(Point2.Origin) + view.At(new(0, size.Y, 0)).DistanceTo(Point2.Origin) + view.At(new(0, 0, size.Z)).DistanceTo(Point2.Origin));
                Assert.Equal(whole, edges.Where(e => e.Solid == s).Sum(e => e.Length), 0.001 + 1e-4 * 12);
            }
            Assert.Equal([.. edges.Where(e => e.IsSeen)], HiddenLines.Of(boxes, view));
        }, 300);

    [Fact]
    public void A_point_is_seen_when_no_box_stands_between_it_and_the_eye() =>
        Gen.Select(Boxes, Ways).Holds((boxes, way) =>
        {
            if (way.Length < 1) return;
            var view = ParallelView.From(way);
            foreach (var edge in HiddenLines.Of(boxes, view, withHidden: true).Where(e => e.Length > 2))
            {
                // Points of the edge itself, found again on the box it belongs to.
                var middle = edge.From.Towards(edge.To, 0.5);
                var hits = boxes.SelectMany(b => Through(b.Bounds, view, middle)).ToList();
                var own = Through(boxes[edge.Solid].Bounds, view, middle, 1e-6).ToList();
                if (own.Count == 0) continue;
                var nearest = hits.Count == 0 ? double.NegativeInfinity : hits.Max();
                var grazing = boxes.SelectMany(b => Through(b.Bounds, view, middle, 1e-6)).Max();
                if (edge.IsSeen) Assert.True(nearest <= own.Max() + 0.1, $"seen, but {nearest - own.Max()} behind");
                else Assert.True(grazing >= own.Min() - 0.1, "hidden, but nothing before it");
            }
        }, 300);

    private static readonly Gen<Vector3> Ways = Gen.Select(Gen.Int[-5, 5], Gen.Int[-5, 5], Gen.Int[-5, 5], (x, y, z) => new Vector3(x, y, z));

    private static readonly Gen<List<Solid>> Boxes = Gen.Select(Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[0, 20], Gen.Int[1, 10], Gen.Int[1, 10], Gen.Int[1, 10],
        (x, y, z, a, b, c) => Box(10 * x, 10 * y, 10 * z, 10 * (x + a), 10 * (y + b), 10 * (z + c))).List[1, 5];

    /// <summary>How near the eye the line of sight through a point of the picture is where it comes out of a box; nothing where it misses it.</summary>
    private static IEnumerable<double> Through(Box3 box, ParallelView view, Point2 at, double slack = -1e-6)
    {
        var (low, high) = (double.NegativeInfinity, double.PositiveInfinity);
        var start = at.X * view.Right + at.Y * view.Up;
        foreach (var (p, d, from, to) in new[] { (start.X, view.Eye.X, box.Min.X, box.Max.X), (start.Y, view.Eye.Y, box.Min.Y, box.Max.Y), (start.Z, view.Eye.Z, box.Min.Z, box.Max.Z) })
        {
            if (Math.Abs(d) < 1e-12)
            {
                if (p < from - slack || p > to + slack) yield break;
                continue;
            }
            var (a, b) = ((from - slack - p) / d, (to + slack - p) / d);
            (low, high) = (Math.Max(low, Math.Min(a, b)), Math.Min(high, Math.Max(a, b)));
        }
        if (low <= high) yield return high;
    }

    private static readonly Frame3 Top = new(default, new(1, 0, 0), new(0, 1, 0));

    private static Solid Box(double x0, double y0, double z0, double x1, double y1, double z1) =>
        SolidMaker.Of(new Extrusion(new(new(0, 0, z1), new(1, 0, 0), new(0, 1, 0)), Path2.Rectangle(x0, y0, x1, y1), z1 - z0)).Placed(new(new(0, 0, z1), new(1, 0, 0), new(0, 1, 0)));

    private static bool Same(SightEdge e, Point2 a, Point2 b) => (e.From.DistanceTo(a) < 1e-6 && e.To.DistanceTo(b) < 1e-6) || (e.From.DistanceTo(b) < 1e-6 && e.To.DistanceTo(a) < 1e-6);
}
