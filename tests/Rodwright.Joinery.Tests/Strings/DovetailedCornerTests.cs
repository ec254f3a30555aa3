using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Solids;
using Rodwright.Joinery.Tests.Solids;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Joinery.Tests.Strings;

/// <summary>Wall strings dovetailed together at the corner of the room.</summary>
public class DovetailedCornerTests
{
    private static Stair With(string name, int? tails = null) =>
        Samples.Job(name) is var job ? Stair.SetOut(job with { Practice = job.Practice with { CornerJoint = CornerJoint.Dovetailed, CornerTails = tails } }).Value! : throw new InvalidOperationException();

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    [InlineData("balanced-turn")]
    [InlineData("double-kite")]
    [InlineData("feet-and-inches")]
    public void They_go_together(string name)
    {
        var stair = With(name);
        var proof = Prover.Prove(stair.Kit);
        var corners = stair.Kit.Joints.Where(j => j.Kind == JointKind.Corner).ToList();
        Assert.NotEmpty(corners);
        Assert.All(corners, c => Assert.Equal("dovetailed at the corner", proof.Joints.Single(j => j.Id == c.Id).Kind));
        Assert.True(proof.Holds, string.Join("; ", proof.Joints.Where(j => !j.Holds).Select(j => $"{j.Id} {j.Gap} {j.Reached}").Concat(proof.Clashes.Select(c => c.ToString()))));
        foreach (var board in stair.Kit.Strings)
        {
            var solid = PartSolid.Of(board.Part);
            Assert.True(solid.IsWatertight, board.Part.Id);
            Assert.Equal(1, solid.Volume / PartVolume.Of(board.Part), 1e-4);
        }
    }

    /// <summary>
    /// Four tails: each a quarter of the height apart, two thirds of that wide at the end; 12 deep at 1 in 6 they are 2 narrower on each side at the face. A tail's area is then 12 x (2/3 of a quarter less 2), and the sockets'
    /// the same; the upper string has that much more than one cut off at the corner, and as much goes into the lower.
    /// </summary>
    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    public void Tails_are_set_out_over_the_height_of_the_corner(string name)
    {
        var kit = With(name, tails: 4).Kit;
        var (lower, upper) = (kit.Strings.Single(b => b.Part.Faces.Length == 2), kit.Strings.Single(b => kit.Joints.Any(j => j.Kind == JointKind.Corner && j.Male == b.Part.Id)));
        var height = upper.UpperEdge.Vertices[0].At.Y - upper.LowerEdge.Vertices[0].At.Y;
        var sockets = lower.Part.Cuts.Where(c => c.Kind == CutKind.Dovetail).ToList();
        Assert.Equal(4, sockets.Count);
        Assert.All(sockets, s => Assert.Equal(12 * (height / 6 - 2), s.Shape.Area, 1e-6));
        Assert.All(sockets, s => Assert.Equal(32, s.Depth));
        var corner = upper.Site.Lower.At;
        var tips = upper.Outline.Vertices.Select(v => v.At).Where(p => Math.Abs(p.X - (corner - 12)) < 1e-9).ToList();
        Assert.Equal(8, tips.Count);
        Assert.Equal(height / 6, tips.Max(p => p.Y) - tips.Select(p => p.Y).Order().ElementAt(6), 1e-9);
        // Half a pin at the bottom: a sixth of a quarter.
        Assert.Equal(upper.LowerEdge.Vertices[0].At.Y + height / 24, tips.Min(p => p.Y), 1e-9);
    }

    [Fact]
    public void A_socket_that_is_not_where_its_tail_comes_is_found()
    {
        var kit = With("left-kite-low").Kit;
        var lower = kit.Parts.Single(p => p.Cuts.Any(c => c.Kind == CutKind.Dovetail));
        var moved = lower with { Cuts = [.. lower.Cuts.Select(c => c.Id == "socket-2" ? c with { Shape = c.Shape.Moved(new Vector2(0, 0.02)) } : c)] };
        Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(lower, moved) }).Joints.Single(j => j.Kind == "dovetailed at the corner").Holds);
        var without = lower with { Cuts = [.. lower.Cuts.Where(c => c.Id != "socket-2")] };
        Assert.False(Prover.Prove(kit with { Parts = kit.Parts.Replace(lower, without) }).Joints.Single(j => j.Kind == "dovetailed at the corner").Holds);
    }
}
