using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Path2Tests
{
    [Fact]
    public void A_path_of_one_point_is_refused() => Assert.Throws<ArgumentException>(() => Path2.Polyline(new Point2(0, 0)));

    [Theory]
    [InlineData(1e-9)]
    [InlineData(-1e-300)]
    public void An_edge_too_shallow_to_be_an_arc_is_straight(double bulge)
    {
        var path = new Path2([new(new(0, 0), bulge), new(new(1000, 0)), new(new(1000, 500))], true);
        Assert.Equal(0, path.Vertices[0].Bulge);
        Assert.Equal(3, path.Flattened().Count);
        Assert.Equal(250000, path.Area, 9);
    }

    [Fact]
    public void An_arc_without_length_is_straight_and_harms_nothing()
    {
        var path = new Path2([new(new(0, 0)), new(new(10, 0), 0.5), new(new(10, 0)), new(new(10, 10))], true);
        Assert.Equal(50, path.Area, 12);
        Assert.Equal(new(0, 0, 10, 10), path.Bounds);
        Assert.Equal(2, path.DistanceTo(new(12, 5)), 12);
    }

    [Fact]
    public void A_circle_has_the_area_and_length_of_the_closed_formulas() =>
        Gen.Select(Shapes.Points, Gen.Double[0.1, 5000]).Holds((centre, radius) =>
        {
            var circle = Path2.Circle(centre, radius);
            return Near(circle.Area, Math.PI * radius * radius, 1e-9 * (1 + radius * radius) + 1e-4)
                && Near(circle.Length, 2 * Math.PI * radius, 1e-7)
                && Near(circle.Bounds.Width, 2 * radius, 1e-7) && Near(circle.Bounds.Height, 2 * radius, 1e-7)
                && circle.Bounds.Centre.DistanceTo(centre) < 1e-7;
        });

    [Fact]
    public void A_circular_segment_has_the_area_of_the_closed_formula()
    {
        // Chord 800, sagitta 100: radius = (400^2 + 100^2) / 200 = 850; area = r^2 acos(1 - h/r) - (r - h) sqrt(2rh - h^2).
        var segment = new Path2([new(new(0, 0), 0.25), new(new(800, 0))], true);
        const double r = 850, h = 100;
        var area = r * r * Math.Acos(1 - h / r) - (r - h) * Math.Sqrt(2 * r * h - h * h);
        Assert.Equal(area, segment.Area, 6);
        Assert.Equal(2 * r * Math.Asin(400 / r) + 800, segment.Length, 9);
        Assert.Equal(-h, segment.Bounds.MinY, 9);
        Assert.Equal(0, segment.Bounds.MaxY, 9);
    }

    [Fact]
    public void A_rectangle_with_one_end_rounded_is_a_rectangle_and_half_a_circle()
    {
        // A tread with a half-round nosing, 22 thick.
        var tread = new Path2([new(new(0, 0)), new(new(250, 0), 1), new(new(250, 22)), new(new(0, 22))], true);
        Assert.Equal(250 * 22 + Math.PI * 11 * 11 / 2, tread.Area, 9);
        Assert.Equal(250 + 22 + 250 + 11 * Math.PI, tread.Length, 9);
        Assert.Equal(261, tread.Bounds.MaxX, 9);
    }

    [Fact]
    public void An_arc_of_three_quarters_bounds_what_it_reaches_and_no_more()
    {
        // From the east point anticlockwise to the south point: north and west are reached.
        var arc = new Path2([new(new(10, 0), Angle.Tan(1.5 * Math.PI / 4)), new(new(0, -10))], false);
        Assert.Equal(new(-10, -10, 10, 10), Rounded(arc.Bounds));
        var back = new Path2([new(new(10, 0), -Angle.Tan(Math.PI / 8)), new(new(0, -10))], false);
        Assert.Equal(new(0, -10, 10, 0), Rounded(back.Bounds));
    }

    [Fact]
    public void Bounds_hold_every_point_of_the_path_and_touch_it_on_all_sides() =>
        Shapes.Paths.Holds(path =>
        {
            var box = Box2.Of(path.Flattened(0.1));
            return path.Bounds.Holds(box, 1e-6) && box.Holds(path.Bounds, 0.1001);
        });

    [Fact]
    public void Running_the_other_way_keeps_length_and_box_and_turns_the_area_about() =>
        Shapes.Paths.Holds(path =>
        {
            var back = path.Reversed();
            return Near(back.Length, path.Length, 1e-6) && back.Bounds.Holds(path.Bounds, 1e-6) && path.Bounds.Holds(back.Bounds, 1e-6)
                && (!path.Closed || Near(back.Area, -path.Area, 1e-3)) && SameVertices(back.Reversed(), path);
        });

    [Fact]
    public void An_open_path_run_backwards_leaves_from_its_end()
    {
        var path = new Path2([new(new(0, 0), 0.3), new(new(10, 0)), new(new(10, 5))], false);
        var back = path.Reversed();
        Assert.Equal(new(10, 5), back.Vertices[0].At);
        Assert.Equal(0, back.Vertices[0].Bulge);
        Assert.Equal(-0.3, back.Vertices[1].Bulge);
        Assert.Equal(new(0, 0), back.Vertices[2].At);
    }

    [Fact]
    public void The_mirror_image_keeps_length_and_area_and_mirrors_the_box() =>
        Shapes.Paths.Holds(path =>
        {
            var mirror = path.Mirrored();
            return Near(mirror.Length, path.Length, 1e-6) && (!path.Closed || Near(mirror.Area, path.Area, 1e-3))
                && Near(mirror.Bounds.MinX, -path.Bounds.MaxX, 1e-6) && Near(mirror.Bounds.MaxX, -path.Bounds.MinX, 1e-6)
                && Near(mirror.Bounds.MinY, path.Bounds.MinY, 1e-6) && SameVertices(mirror.Mirrored(), path);
        });

    [Fact]
    public void A_point_is_as_far_from_a_path_as_its_mirror_image_from_the_mirrored_path() =>
        Gen.Select(Shapes.Paths, Shapes.Points).Holds((path, p) => Near(path.DistanceTo(p), path.Mirrored().DistanceTo(p.Mirrored), 1e-6));

    [Fact]
    public void Moving_changes_neither_length_nor_area() =>
        Gen.Select(Shapes.Outlines, Shapes.Points).Holds((path, to) =>
        {
            var moved = path.Moved(to - Point2.Origin);
            return Near(moved.Length, path.Length, 1e-6) && Near(moved.Area, path.Area, 1e-2);
        });

    [Fact]
    public void Chords_leave_their_arcs_by_no_more_than_was_asked() =>
        Gen.Select(Shapes.Paths, Gen.Double[0.05, 1]).Holds((path, chord) =>
        {
            var points = path.Flattened(chord);
            for (var i = 0; i < points.Count - (path.Closed ? 0 : 1); i++)
            {
                var middle = points[i].Towards(points[(i + 1) % points.Count], 0.5);
                if (path.DistanceTo(points[i]) > 1e-5 || path.DistanceTo(middle) > chord + 1e-5) return false;
            }
            return true;
        }, iter: 20);

    [Fact]
    public void Flattening_starts_at_the_first_vertex_and_an_open_path_ends_at_its_last()
    {
        var path = new Path2([new(new(0, 0), 0.5), new(new(100, 0), 0.5), new(new(200, 0), 0.7)], false);
        var points = path.Flattened();
        Assert.Equal(new(0, 0), points[0]);
        Assert.Equal(new(200, 0), points[^1]);
        Assert.Equal(1, points.Count(p => p == new Point2(100, 0)));
    }

    [Fact]
    public void The_area_within_chords_comes_near_the_area_within_arcs() =>
        Shapes.Outlines.Holds(path => Near(Path2.Polygon(path.Flattened(0.001)).Area, path.Area, 0.001 * path.Length));

    [Fact]
    public void Distance_is_the_least_over_many_points_of_the_path() =>
        Gen.Select(Shapes.Paths, Shapes.Points).Holds((path, p) =>
        {
            var points = path.Flattened(0.1);
            var least = double.PositiveInfinity;
            for (var i = 0; i < points.Count - (path.Closed ? 0 : 1); i++)
                least = Math.Min(least, Path2.Polyline(points[i], points[(i + 1) % points.Count]).DistanceTo(p));
            return Near(path.DistanceTo(p), least, 0.1001);
        }, iter: 30);

    [Fact]
    public void Distance_to_an_arc_counts_its_ends_where_the_foot_of_the_square_lies_off_it()
    {
        var quarter = new Path2([new(new(10, 0), Angle.Tan(Math.PI / 8)), new(new(0, 10))], false);
        Assert.Equal(0, quarter.DistanceTo(Point2.Origin + 10 * Vector2.At(0.7)), 9);
        Assert.Equal(10, quarter.DistanceTo(Point2.Origin), 9);
        Assert.Equal(Math.Sqrt(200), quarter.DistanceTo(new(0, -10)), 9);
        Assert.Equal(5, quarter.DistanceTo(new(15, 0)), 9);
    }

    [Fact]
    public void A_path_holds_what_lies_on_its_inner_side() =>
        Gen.Select(Shapes.Outlines, Gen.Double[0, 1]).Holds((path, part) =>
        {
            // Just inside and just outside the middle of the first edge.
            var (a, b, bulge) = path.Edge(0);
            var (on, along) = (a.Towards(b, 0.5), (b - a).Unit);
            if (bulge != 0) on = Arc2.FromBulge(a, b, bulge).At(0.5);
            return path.Holds(on + 0.1 * along.Left) && !path.Holds(on - 0.1 * along.Left);
        });

    private static bool SameVertices(Path2 a, Path2 b) =>
        a.Closed == b.Closed && a.Vertices.Length == b.Vertices.Length &&
        Enumerable.Range(0, a.Vertices.Length).All(i => a.Vertices[i].At == b.Vertices[i].At) &&
        Enumerable.Range(0, a.EdgeCount).All(i => a.Vertices[i].Bulge == b.Vertices[i].Bulge);

    private static Box2 Rounded(Box2 b) => new(Math.Round(b.MinX, 9) + 0, Math.Round(b.MinY, 9) + 0, Math.Round(b.MaxX, 9) + 0, Math.Round(b.MaxY, 9) + 0);

    private static bool Near(double a, double b, double within) => Math.Abs(a - b) <= within;
}
