using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Scenes;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Scenes;

/// <summary>The stair taken apart: in an order in which it could be done.</summary>
public class TakenApartTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_piece_runs_into_another_on_the_way_deeper_than_its_housing(string name)
    {
        var stair = RodJobs.Stair(name);
        var ways = TakenApart.Of(stair.Kit);
        var solids = KitSolids.Of(stair.Kit, 0.3).Select(s => (s.Part, Shape: s.InWorld, Depth: new Within(s.InWorld))).ToList();
        foreach (var apart in new[] { 0, 0.1, 0.3, 0.45, 0.6, 0.8, 1 })
        {
            foreach (var one in solids)
            {
                var moved = ways[one.Part.Id].Aggregate(new Vector3(0, 0, 0), (sum, leg) => sum + leg.At(apart));
                foreach (var other in solids.Where(o => !ReferenceEquals(o.Part, one.Part)))
                {
                    var against = ways[other.Part.Id].Aggregate(moved, (sum, leg) => sum + -leg.At(apart));
                    if (!Near(one.Shape.Bounds, against, other.Shape.Bounds)) continue;
                    foreach (var corner in one.Shape.Vertices)
                        Assert.True(other.Depth.DepthOf(corner + against) < stair.Job.Practice.NewelHousing + 1, $"at {apart} {one.Part.Id} runs into {other.Part.Id}");
                }
            }
        }
    }

    private static bool Near(Geometry.Solids.Box3 a, Vector3 by, Geometry.Solids.Box3 b) =>
        a.Min.X + by.X < b.Max.X && b.Min.X < a.Max.X + by.X && a.Min.Y + by.Y < b.Max.Y && b.Min.Y < a.Max.Y + by.Y && a.Min.Z + by.Z < b.Max.Z && b.Min.Z < a.Max.Z + by.Z;

    [Theory]
    [MemberData(nameof(Names))]
    public void All_apart_every_joint_is_open(string name)
    {
        var stair = RodJobs.Stair(name);
        var ways = TakenApart.Of(stair.Kit);
        Assert.Equal(stair.Kit.Parts.Select(p => p.Id).Order(), ways.Keys.Order());
        foreach (var joint in stair.Kit.Joints)
        {
            var between = End(joint.Male) + -End(joint.Female);
            Assert.True(between.Length > joint.Depth + 50, $"{joint.Id} stays together");
            if (joint.Kind != JointKind.Tenon) continue;
            // Drawn level along the string, out of the newel and not through its cheek.
            Assert.Equal(1, Math.Abs(between.Dot(stair.Kit.Find(joint.Male).FaceSide.Frame.U)) / between.Length, 1e-9);
        }

        Vector3 End(string id) => ways[id].Aggregate(new Vector3(0, 0, 0), (sum, leg) => sum + leg.At(1));
    }

    [Fact]
    public void A_right_hand_stair_comes_apart_as_the_mirror_of_the_left_hand_one()
    {
        var kit = RodJobs.Stair("left-kite-low").Kit;
        var (one, other) = (TakenApart.Of(kit), TakenApart.Of(kit.Mirrored()));
        foreach (var part in kit.Parts)
        {
            Assert.Equal(one[part.Id].Length, other[part.Id].Length);
            foreach (var (a, b) in one[part.Id].Zip(other[part.Id])) Assert.Equal(0, (a.By.Mirrored + -b.By).Length, 1e-9);
        }
    }

    [Fact]
    public void A_leg_begins_and_ends_when_it_says()
    {
        var leg = new Leg(new(100, 0, 0), 0.25, 0.75);
        Assert.Equal((0, 50, 100, 100), (leg.At(0.25).X, leg.At(0.5).X, leg.At(0.75).X, leg.At(1).X));
    }

    [Fact]
    public void Treads_are_lifted_and_risers_come_away_from_the_tread_below()
    {
        var kit = RodJobs.Stair("straight-flight").Kit;
        var ways = TakenApart.Of(kit);
        foreach (var part in kit.Parts.Where(p => p.Kind is PartKind.Tread or PartKind.Riser))
        {
            var leg = Assert.Single(ways[part.Id]);
            Assert.True(part.Kind == PartKind.Tread ? leg.By.Z > 0 && leg.By.X == 0 && leg.By.Y == 0 : leg.By.Y > 0 && leg.By.Z == 0, part.Id);
        }
    }
}
