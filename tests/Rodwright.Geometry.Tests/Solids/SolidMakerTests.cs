using CsCheck;
using Rodwright.Geometry.Solids;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests.Solids;

/// <summary>Solids of extrusions, against volumes worked out by hand or by areas of regions.</summary>
public class SolidMakerTests
{
    private static readonly Frame3 Top = new(default, new(1, 0, 0), new(0, 1, 0));

    /// <summary>Looks along -y at a board 100 deep: its front is at y = 0.</summary>
    private static readonly Frame3 Front = new(default, new(1, 0, 0), new(0, 0, 1));

    [Fact]
    public void A_board_has_six_faces_and_eight_corners()
    {
        var solid = SolidMaker.Of(new Extrusion(Top, Path2.Rectangle(0, 0, 300, 100), 20));
        Assert.Equal((8, 6), (solid.Vertices.Length, solid.Faces.Length));
        Assert.True(solid.IsWatertight);
        Assert.Equal(600000, solid.Volume, 1e-6);
        Assert.Equal(new Vector3(300, 100, 20), solid.Bounds.Size);
        Assert.Equal(-20, solid.Bounds.Min.Z);
        Assert.Equal(12, solid.Triangles().Length / 3);
    }

    [Fact]
    public void A_pocket_a_hole_and_a_rebate_leave_what_they_should()
    {
        var solid = SolidMaker.Of(
            [new Extrusion(Top, Path2.Rectangle(0, 0, 300, 100), 20) { Holes = [Path2.Rectangle(10, 10, 20, 20)] }],
            [
                new(Top, Path2.Rectangle(50, 30, 90, 70), 8), // a pocket
                new(Top, Path2.Rectangle(70, 50, 120, 90), 12), // a deeper one across its corner
                new(Top, Path2.Rectangle(150, 40, 160, 60), 20), // right through
                new(Front, Path2.Rectangle(200, -20, 260, -10), 15), // a rebate in the front edge, from below
            ]);
        Assert.True(solid.IsWatertight);
        Assert.Equal(600000 - 2000 - 40 * 40 * 8 - 50 * 40 * 12 + 20 * 20 * 8 - 4000 - 60 * 15 * 10, solid.Volume, 1e-6);
        // Faces in one plane are one face: top and bottom have their holes.
        Assert.Equal(3, Assert.Single(solid.Faces, f => f.Normal.Z > 0.9 && solid.Vertices[f.Outer[0]].Z == 0).Holes.Length);
        Assert.Equal(2, Assert.Single(solid.Faces, f => f.Normal.Z < -0.9 && solid.Vertices[f.Outer[0]].Z == -20).Holes.Length);
    }

    [Fact]
    public void A_round_bar_across_a_board_cuts_a_trough_of_chords()
    {
        // A half-round trough of radius 10 along y.
        var solid = SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 100, 50), 20)], [new(Front, Path2.Circle(new(50, 0), 10), 50)]);
        Assert.True(solid.IsWatertight);
        var trough = Math.PI * 100 / 2 * 50;
        Assert.InRange(100000 - solid.Volume, trough * 0.998, trough);
        Assert.InRange(100000 - SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 100, 50), 20)], [new(Front, Path2.Circle(new(50, 0), 10), 50)], 0.0001).Volume, trough * 0.99995, trough);
    }

    [Fact]
    public void Two_posts_that_touch_along_an_arris_are_each_closed()
    {
        var solid = SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 20, 20), 100)], [new(Top, Path2.Rectangle(0, 0, 10, 10), 100), new(Top, Path2.Rectangle(10, 10, 20, 20), 100)]);
        Assert.True(solid.IsWatertight);
        Assert.Equal(16, solid.Vertices.Length);
        Assert.Equal(20000, solid.Volume, 1e-9);
    }

    [Fact]
    public void A_bore_that_just_reaches_a_face_leaves_wood_on_both_sides_of_the_line()
    {
        // Bored from one edge 6 below the top, 12 across, through a pocket in the top and past a deeper one that it does not meet.
        var end = new Frame3(new(70, 0, 0), new(0, 1, 0), new(0, 0, 1));
        var bore = new Extrusion(end, Path2.Circle(new(100, -6), 6), 55);
        var turned = new Extrusion(end, new([new(new(100, 0), 1), new(new(100, -12), 1)], true), 55);
        var board = new Extrusion(Top, Path2.Rectangle(0, 0, 70, 200), 70);
        var pocket = new Extrusion(Top, Path2.Rectangle(25, 70, 55, 130), 14);
        var below = new Extrusion(end, Path2.Rectangle(80, -45, 120, -15), 49);
        foreach (var cut in (Extrusion[])[bore, turned])
        {
            var circle = Path2.Polygon(cut.Outline.Flattened()).Area;
            foreach (var (cuts, taken) in (List<(Extrusion[], double)>)[([cut], 55 * circle), ([cut, pocket], 25 * circle + 30 * 60 * 14), ([cut, pocket, below], 25 * circle + 30 * 60 * 14 + 49 * 40 * 30)])
            {
                var solid = SolidMaker.Of([board], cuts);
                Assert.True(solid.IsWatertight);
                Assert.Equal(70 * 200 * 70 - taken, solid.Volume, 1e-6);
                Assert.Equal(solid.Volume, OfTriangles(solid), 1e-6);
                Assert.All(solid.Faces.SelectMany(f => f.Loops), l => Assert.True(l.Length >= 3));
            }
        }
    }

    [Fact]
    public void A_bend_as_slight_as_the_welding_of_corners_leaves_every_face_flat()
    {
        // An edge that runs on from an arc a third of a millimetre long: its middle stands 6e-6 off its chord.
        foreach (var way in (double[])[1, -1])
        {
            var outline = new Path2([new(new(0, 0), way * 3.7e-5), new(new(0.31, 0)), new(new(272, -0.01)), new(new(272, 300)), new(new(0, 300))], true);
            foreach (var path in (Path2[])[outline, outline.Mirrored()])
            {
                var solid = SolidMaker.Of(new Extrusion(Top, path, 27));
                Assert.True(solid.IsWatertight);
                foreach (var face in solid.Faces)
                    foreach (var i in face.Outer) Assert.Equal(0, face.Normal.Dot(solid.Vertices[i] - solid.Vertices[face.Outer[0]]), 2e-7);
                Assert.Equal(1, OfTriangles(solid) / solid.Volume, 1e-12);
            }
        }
    }

    [Fact]
    public void What_is_common_to_two_outlines_square_to_one_another()
    {
        // A gable: a rectangle seen from above, a triangle seen from the front.
        var gable = new Extrusion(Front, Path2.Polygon(new Point2(0, -30), new Point2(80, -30), new Point2(40, 0)), 50);
        var solid = SolidMaker.Of([new(Top, Path2.Rectangle(10, 0, 80, 50), 30), gable], []);
        Assert.True(solid.IsWatertight);
        Assert.Equal((1200 - 10 * 7.5 / 2) * 50, solid.Volume, 1e-6);
        Assert.Equal(6, solid.Faces.Length);
    }

    [Fact]
    public void Nothing_left_is_a_solid_without_faces()
    {
        var solid = SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 10, 10), 5)], [new(Top, Path2.Rectangle(-1, -1, 11, 11), 5)]);
        Assert.Empty(solid.Faces);
        Assert.Equal(0, solid.Volume);
        Assert.False(solid.IsWatertight);
    }

    [Fact]
    public void Extrusions_that_run_askew_are_refused()
    {
        var askew = new Frame3(default, new(1, 0, 0), new(0, 0.6, 0.8));
        Assert.Throws<ArgumentException>(() => SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 10, 10), 5)], [new(askew, Path2.Rectangle(1, 1, 2, 2), 5)]));
        var side = new Frame3(default, new(0, -1, 0), new(0, 0, 1));
        Assert.Throws<ArgumentException>(() => SolidMaker.Of([new(Top, Path2.Rectangle(0, 0, 10, 10), 5)],
            [new(Front, Path2.Rectangle(1, -3, 2, -2), 5), new(side, Path2.Rectangle(-2, -3, -1, -2), 5)]));
        Assert.Throws<ArgumentException>(() => SolidMaker.Of([], []));
    }

    [Fact]
    public void An_open_surface_is_not_watertight()
    {
        var solid = SolidMaker.Of(new Extrusion(Top, Path2.Rectangle(0, 0, 300, 100), 20));
        Assert.False(new Solid(solid.Vertices, solid.Faces[1..]).IsWatertight);
    }

    [Fact]
    public void Pockets_of_any_outline_leave_what_the_regions_say() => Gen.Select(Shapes.Outlines, Shapes.Outlines, Gen.Double[1, 30], Gen.Double[1, 30]).Holds((a, b, one, two) =>
    {
        // Both about the middle of the board, one shifted so that they overlap in every way.
        Path2 first = a.Moved(new Point2(0, 0) - a.Bounds.Centre), second = b.Moved(new Point2(300, 200) - b.Bounds.Centre);
        var board = Path2.Rectangle(-500, -450, 900, 850);
        var solid = SolidMaker.Of([new(Top, board, 40)], [new(Top, first, one), new(Top, second, two)]);
        Assert.True(solid.IsWatertight);
        var (shallow, deep) = (Math.Min(one, two), Math.Max(one, two));
        var volume = shallow * Left(board, first, second) + (deep - shallow) * Left(board, one > two ? first : second) + (40 - deep) * board.Area;
        Assert.Equal(1, solid.Volume / volume, 1e-4);
        Assert.Equal(1, OfTriangles(solid) / solid.Volume, 1e-9);
    }, iter: 500);

    [Fact]
    public void A_solid_placed_elsewhere_keeps_its_volume_and_its_normals()
    {
        var frame = new Frame3(new(1000, -2000, 300), new(0.6, 0.8, 0), new(0, 0, 1));
        var solid = SolidMaker.Of(new Extrusion(Top, Path2.Circle(new(5, 5), 30), 20)).Placed(frame);
        Assert.True(solid.IsWatertight);
        Assert.Equal(1, solid.Volume / (Math.PI * 900 * 20), 1e-3);
        Assert.Contains(solid.Faces, f => f.Normal.Dot(frame.W) > 1 - 1e-12);
        foreach (var face in solid.Faces)
            foreach (var i in face.Outer) Assert.Equal(0, face.Normal.Dot(solid.Vertices[i] - solid.Vertices[face.Outer[0]]), 1e-6);
    }

    private static double Left(Path2 board, params Path2[] cuts) => Region.Union([board, .. cuts]).Sum(p => p.Area) - Region.Union(cuts).Sum(p => p.Area);

    private static double OfTriangles(Solid solid)
    {
        var (t, v, sum) = (solid.Triangles(), solid.Vertices, 0.0);
        for (var i = 0; i < t.Length; i += 3) sum += (v[t[i]] - v[0]).Dot((v[t[i + 1]] - v[0]).Cross(v[t[i + 2]] - v[0])) / 6;
        return sum;
    }
}
