using CsCheck;
using Rodwright.Geometry.Solids;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests.Solids;

/// <summary>Solids made ready to be drawn: shaded triangles and lined-in edges.</summary>
public class ShadedMeshTests
{
    private static readonly Frame3 Top = new(default, new(1, 0, 0), new(0, 1, 0));

    private static Solid Board => SolidMaker.Of(new Extrusion(Top, Path2.Rectangle(0, 0, 300, 100), 20));

    private static Solid Post => SolidMaker.Of(new Extrusion(Top, Path2.Circle(new(0, 0), 30), 100), 0.03);

    [Fact]
    public void A_board_has_twelve_arrises_and_four_corners_to_each_face_with_the_faces_own_normal()
    {
        var (lines, mesh) = (SolidLines.Of(Board), ShadedMesh.Of(Board));
        Assert.Equal(12, lines.Arrises.Length);
        Assert.Empty(lines.Rounds);
        Assert.Equal(24, mesh.Corners.Length);
        // Four for each of the six ways a board looks, on the face that looks that way.
        var box = Board.Bounds;
        foreach (var ways in mesh.Corners.Zip(mesh.Normals).GroupBy(c => c.Second))
        {
            Assert.Equal(4, ways.Count());
            var reach = Math.Max(ways.Key.Dot(box.Min - new Point3(0, 0, 0)), ways.Key.Dot(box.Max - new Point3(0, 0, 0)));
            Assert.All(ways, c => Assert.Equal(reach, ways.Key.Dot(c.First - new Point3(0, 0, 0)), 1e-9));
        }
    }

    [Fact]
    public void A_round_post_has_arrises_at_its_ends_only_and_normals_that_point_away_from_its_middle()
    {
        var (post, lines, mesh) = (Post, SolidLines.Of(Post), ShadedMesh.Of(Post));
        var sides = lines.Rounds.Length;
        Assert.InRange(sides, 40, 120);
        Assert.Equal(2 * sides, lines.Arrises.Length);
        Assert.All(lines.Arrises, e => Assert.Equal(post.Vertices[e.From].Z, post.Vertices[e.To].Z));
        foreach (var (p, n) in mesh.Corners.Zip(mesh.Normals))
        {
            if (Math.Abs(n.Z) > 0.5) continue;
            Assert.Equal(1, n.Dot(1 / new Vector3(p.X, p.Y, 0).Length * new Vector3(p.X, p.Y, 0)), 1e-4);
        }
        // Between two chords the normals differ by the angle between them, and each edge knows both.
        Assert.All(lines.Rounds, r => Assert.InRange(r.Left.Dot(r.Right), 0.99, 1 - 1e-9));
    }

    [Fact]
    public void A_flat_face_stays_flat_up_to_the_round_at_its_edge()
    {
        var quarter = Angle.Tan(Math.PI / 8);
        var front = new Frame3(default, new(1, 0, 0), new(0, 0, 1));
        var solid = SolidMaker.Of(new Extrusion(front, new([new(new(0, 0)), new(new(200, 0)), new(new(200, 11), quarter), new(new(189, 22)), new(new(0, 22))], true), 900), 0.03);
        var mesh = ShadedMesh.Of(solid);
        // The four corners of the top face, two of them where the round begins.
        var top = Enumerable.Range(0, mesh.Corners.Length).Where(i => solid.Bounds.Max.Z - mesh.Corners[i].Z < 1e-6 && mesh.Normals[i].Z > 0.5).ToList();
        Assert.True(top.Count >= 4);
        Assert.All(top, i => Assert.InRange(mesh.Normals[i].Z, 0.999, 1));
        Assert.Contains(top, i => mesh.Corners[i].X > 150);
    }

    [Fact]
    public void Triangles_close_round_the_same_volume_as_the_solid() => Gen.Select(Gen.Double[1, 50], Gen.Double[5, 15]).Holds((radius, depth) =>
    {
        var solid = SolidMaker.Of([new(Top, Path2.Rectangle(-100, -60, 100, 60), 20)], [new(Top, Path2.Circle(new(10, 5), radius), depth), new(Top, Path2.Rectangle(-80, -50, -60, 80), depth / 2)], 0.03);
        var mesh = ShadedMesh.Of(solid);
        var six = 0.0;
        for (var i = 0; i < mesh.Triangles.Length; i += 3)
        {
            var (a, b, c) = (mesh.Corners[mesh.Triangles[i]], mesh.Corners[mesh.Triangles[i + 1]], mesh.Corners[mesh.Triangles[i + 2]]);
            six += (a - new Point3(0, 0, 0)).Dot((b - new Point3(0, 0, 0)).Cross(c - new Point3(0, 0, 0)));
        }
        Assert.Equal(1, six / 6 / solid.Volume, 1e-9);
    }, iter: 200);

    [Fact]
    public void An_open_surface_is_refused()
    {
        var open = new Solid(Board.Vertices, [.. Board.Faces.Skip(1)]);
        Assert.Throws<ArgumentException>(() => SolidLines.Of(open));
    }
}
