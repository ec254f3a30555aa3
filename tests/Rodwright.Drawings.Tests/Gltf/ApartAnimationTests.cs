using Rodwright.Joinery;
using Rodwright.Rod.Packs;
using Rodwright.Rod.Scenes;
using SharpGLTF.Schema2;
using Xunit;
using Jobs = Rodwright.Testing.Samples;

namespace Rodwright.Drawings.Tests.Gltf;

/// <summary>The exploded view in the model's file: read back by another library, judged by the format's own validator.</summary>
public class ApartAnimationTests
{
    public static TheoryData<string> Names => [.. Jobs.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_validator_finds_nothing_in_a_model_that_comes_apart(string name)
    {
        var issues = GltfValidator.Check(StairModel.Glb(Stair.SetOut(Jobs.Job(name)).Value!).Bytes.ToArray()).GetProperty("issues");
        Assert.Equal(0, issues.GetProperty("numErrors").GetInt32());
        Assert.Equal(0, issues.GetProperty("numWarnings").GetInt32());
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    [InlineData("open-well")]
    [InlineData("balustrade")]
    public void Every_piece_is_in_its_true_position_until_the_animation_takes_it_on_its_way(string name)
    {
        var stair = Stair.SetOut(Jobs.Job(name)).Value!;
        var ways = TakenApart.Of(stair.Kit);
        var model = ModelRoot.ParseGLB(StairModel.Glb(stair).Bytes.ToArray());
        var animation = Assert.Single(model.LogicalAnimations);
        Assert.Equal("taken apart", animation.Name);
        var moved = 0;
        foreach (var node in model.DefaultScene.VisualChildren.Single().VisualChildren)
        {
            var part = stair.Kit.Find((string)node.Extras!["part"]!);
            var origin = part.FaceSide.Frame.Origin;
            Near(new(0, 0, 0), node.LocalTransform.Translation);
            foreach (var apart in new[] { 0, 0.1, 0.37, 0.5, 0.72, 1 })
            {
                var way = ways[part.Id].Aggregate(new Geometry.Vector3(0, 0, 0), (sum, leg) => sum + leg.At(apart));
                if (node.GetCurveSamplers(animation).Translation is not { } curve)
                {
                    Assert.True(way.Length < 1e-6);
                    continue;
                }
                Near(way, curve.CreateCurveSampler().GetPoint((float)apart * animation.Duration));
                if (way.Length > 1) moved++;
            }

            void Near(Geometry.Vector3 way, System.Numerics.Vector3 found)
            {
                Assert.Equal(origin.X + way.X, found.X, 0.01);
                Assert.Equal(origin.Y + way.Y, found.Y, 0.01);
                Assert.Equal(origin.Z + way.Z, found.Z, 0.01);
            }
        }
        Assert.True(moved > stair.Kit.Parts.Length, $"only {moved} places away from home");
    }
}
