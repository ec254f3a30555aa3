using CsCheck;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Solids;

/// <summary>Solids of parts: closed, of the right volume, and the same for both hands.</summary>
public class PartSolidTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_part_of_a_sample_is_closed_and_has_the_volume_of_its_description(string name)
    {
        var kit = Stair.SetOut(Samples.Job(name)).Value!.Kit;
        Assert.NotEmpty(kit.Parts);
        foreach (var part in kit.Parts) Check(part);
    }

    [Fact]
    public void Every_part_of_any_stair_is_closed_and_has_the_volume_of_its_description() => Generated.Jobs.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        foreach (var part in stair.Kit.Parts)
        {
            try
            {
                Check(part);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"{part.Id}: {e.Message}\n{JobFile.Write(job)}", e);
            }
        }
    }, iter: 150);

    public static TheoryData<string> Close => [.. CloseJobs.All.Keys];

    [Theory]
    [MemberData(nameof(Close))]
    public void Every_part_is_closed_and_has_its_volume_where_things_meet_within_a_hair(string close)
    {
        foreach (var part in Stair.SetOut(CloseJobs.All[close]).Value!.Kit.Parts)
        {
            Check(part);
            Check(part.Mirrored());
        }
    }

    [Fact]
    public void The_other_hand_has_the_mirrored_solids() => Generated.Jobs.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        foreach (var part in stair.Kit.Parts)
        {
            var (one, two) = (PartSolid.Of(part), PartSolid.Of(part.Mirrored()));
            Assert.Equal(1, two.Volume / one.Volume, 1e-9);
            var (a, b) = (one.Placed(part.FaceSide.Frame).Bounds, two.Placed(part.Mirrored().FaceSide.Frame).Bounds);
            Assert.Equal(-a.Min.X, b.Max.X, 1e-6);
            Assert.Equal(-a.Max.X, b.Min.X, 1e-6);
            Assert.Equal(a.Min.Y, b.Min.Y, 1e-6);
            Assert.Equal(a.Max.Z, b.Max.Z, 1e-6);
        }
    }, iter: 40);

    [Theory]
    [MemberData(nameof(Names))]
    public void A_tread_is_round_along_its_nosing_and_square_behind(string name)
    {
        var treads = Stair.SetOut(Samples.Job(name)).Value!.Kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece).ToList();
        Assert.NotEmpty(treads);
        foreach (var tread in treads)
        {
            var (solid, thick) = (PartSolid.Of(tread), tread.FaceSide.Thickness);
            var front = solid.Vertices.Where(v => v.Y < 1e-6).ToList();
            Assert.NotEmpty(front);
            Assert.All(front, v => Assert.Equal(-thick / 2, v.Z, 1e-6));
            Assert.All(solid.Vertices.Where(v => v.Z > -1e-6 || v.Z < 1e-6 - thick), v => Assert.True(v.Y > thick / 2 - 1e-6));
            Assert.Contains(solid.Vertices, v => v.Z > -1e-6 && v.Y > solid.Bounds.Max.Y - 1e-6);
        }
    }

    [Fact]
    public void A_cut_is_where_the_part_says_it_is()
    {
        // Every corner of every mortice's floor is a corner of the newel's solid.
        var newels = Stair.SetOut(Samples.Job("left-kite-low")).Value!.Kit.Parts.Where(p => p.Kind == PartKind.Newel).ToList();
        Assert.NotEmpty(newels);
        foreach (var newel in newels)
        {
            var corners = PartSolid.Of(newel).Placed(newel.FaceSide.Frame).Vertices;
            foreach (var cut in newel.Cuts.Where(c => c.Kind == CutKind.Mortice))
                foreach (var v in cut.Shape.Vertices)
                {
                    var at = newel.Faces[cut.Face].Frame.ToWorld(v.At, -cut.Depth);
                    Assert.True(corners.Min(c => c.DistanceTo(at)) < 1e-4, $"{newel.Id} {cut.Id}");
                }
        }
    }

    private static void Check(Part part)
    {
        var solid = PartSolid.Of(part);
        Assert.True(solid.IsWatertight, $"{part.Id} is not closed");
        var expected = PartVolume.Of(part);
        Assert.True(Math.Abs(solid.Volume / expected - 1) <= 1e-4, $"{part.Id}: {solid.Volume} is not {expected}");
        foreach (var face in solid.Faces)
            foreach (var i in face.Loops.SelectMany(l => l))
                Assert.True(Math.Abs(face.Normal.Dot(solid.Vertices[i] - solid.Vertices[face.Outer[0]])) <= 1e-6, $"{part.Id} has a face that is not flat");
        var triangles = solid.Triangles();
        var volume = 0.0;
        for (var i = 0; i < triangles.Length; i += 3)
        {
            var (a, b, c) = (solid.Vertices[triangles[i]] - default(Geometry.Point3), solid.Vertices[triangles[i + 1]] - default(Geometry.Point3), solid.Vertices[triangles[i + 2]] - default(Geometry.Point3));
            volume += a.Dot(b.Cross(c)) / 6;
        }
        Assert.Equal(1, volume / solid.Volume, 1e-9);
        Assert.Equal(TriangleCount(solid), triangles.Length / 3);
    }

    private static int TriangleCount(Solid solid) => solid.Faces.Sum(f => f.Outer.Length - 2 + f.Holes.Sum(h => h.Length + 2));
}
