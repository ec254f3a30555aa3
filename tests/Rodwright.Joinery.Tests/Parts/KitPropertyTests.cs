using CsCheck;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Properties;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Parts;

/// <summary>What holds of every kit.</summary>
public class KitPropertyTests
{
    [Fact]
    public void The_other_hand_gives_the_mirrored_kit_piece_by_piece() => Generated.All.Holds(job =>
    {
        var other = OtherHand.Of(job);
        if (Stair.SetOut(job).Value is not { } a || Stair.SetOut(other).Value is not { } b) return;
        Assert.Equal(a.Kit.Parts.Length, b.Kit.Parts.Length);
        foreach (var (one, two) in a.Kit.Parts.Zip(b.Kit.Parts))
        {
            Assert.Equal(one.Id, two.Id);
            Assert.Equal(one.Blank.Length, two.Blank.Length, 1e-9);
            Assert.Equal(one.Blank.JointedUp.Length, two.Blank.JointedUp.Length);
            // A straight flight walled both sides has no hand: both are the one stair.
            var mine = Corners(one).Select(p => job.IsRightHanded == other.IsRightHanded ? p : p.Mirrored).ToList();
            var theirs = Corners(two).ToList();
            Assert.Equal(mine.Count, theirs.Count);
            // Every corner of every face and cut, mirrored, is a corner of the other hand's piece.
            Assert.All(mine, p => Assert.True(theirs.Min(q => q.DistanceTo(p)) < 1e-6));
        }
    }, iter: 5000);

    private static IEnumerable<Point3> Corners(Part part)
    {
        foreach (var face in part.Faces)
            foreach (var v in face.Outline.Vertices) yield return face.Frame.ToWorld(v.At);
        foreach (var cut in part.Cuts)
            foreach (var v in cut.Shape.Vertices) yield return part.Faces[cut.Face].Frame.ToWorld(v.At, -cut.Depth);
    }

    [Fact]
    public void Frames_stay_right_handed_and_faces_look_the_way_they_say() => Generated.All.Holds(job =>
    {
        if (Stair.SetOut(job).Value is not { } stair) return;
        foreach (var part in stair.Kit.Parts)
        {
            foreach (var face in part.Faces)
            {
                Assert.Equal(1, face.Frame.U.Cross(face.Frame.V).Dot(face.Frame.W), 1e-9);
                Assert.True(face.Outline.Area > 0, part.Id);
                if (part.Kind != PartKind.Newel) continue;
                var (x, y) = face.Looks switch { "S" => (0, -1), "E" => (1, 0), "N" => (0, 1), _ => (-1, 0) };
                Assert.Equal(x, face.Frame.W.X, 1e-9);
                Assert.Equal(y, face.Frame.W.Y, 1e-9);
            }
        }
    }, iter: 1000);
}
