using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Xunit;

namespace Rodwright.Rod.Tests.Things;

public sealed class RelationsTests
{
    public static TheoryData<string> All => [.. Testing.Samples.Names];

    [Theory, MemberData(nameof(All))]
    public void Both_sides_of_every_joint_belong_together(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        var relations = Relations.Of(RodJobs.Stair(sample));
        foreach (var joint in kit.Joints.Where(j => j.Kind is JointKind.Tenon))
        {
            var cuts = new[] { kit.Find(joint.Male), kit.Find(joint.Female) }.SelectMany(p => p.Cuts.Where(c => c.Joint == joint.Id).Select(c => ThingId.Of(p, c))).ToList();
            Assert.True(cuts.Count >= 8); // two mortices, a haunch, two pegs; a cheek, two pegs
            foreach (var cut in cuts)
            {
                Assert.Equal(cuts.Order(StringComparer.Ordinal), relations.With(cut).Order(StringComparer.Ordinal));
                Assert.Equal(cut, relations.With(cut)[0]);
            }
        }
        foreach (var joint in kit.Joints.Where(j => j.Kind is JointKind.TreadHousing or JointKind.RiserHousing))
        {
            var female = kit.Find(joint.Female);
            foreach (var cut in female.Cuts.Where(c => c.Joint == joint.Id))
            {
                Assert.Contains(joint.Male, relations.With(ThingId.Of(female, cut)));
                Assert.Contains(ThingId.Of(female, cut), relations.With(joint.Male));
                Assert.DoesNotContain(joint.Female, relations.With(ThingId.Of(female, cut)));
            }
        }
    }

    [Fact]
    public void A_piece_has_its_cuts_a_riser_its_nosing_a_tread_its_going()
    {
        var relations = Relations.Of(RodJobs.Stair("left-kite-low"));
        Assert.All(RodJobs.Stair("left-kite-low").Kit.Find("newel-turn").Cuts, c => Assert.Contains($"newel-turn/{c.Id}", relations.With("newel-turn")));
        Assert.Contains("nosing-4", relations.With("riser-4"));
        Assert.Contains("riser-4", relations.With("nosing-4"));
        Assert.Contains("tread-4", relations.With("nosing-4"));
        Assert.Contains("going-4", relations.With("tread-4"));
        Assert.Contains("walking-line", relations.With("going-4"));
        Assert.Contains("nosing-13", relations.With("upper-floor"));
        Assert.Contains("wall-string-1", relations.With("wall-outer"));
        Assert.Contains(relations.With("corner"), id => id == "wall-string-1/corner");
    }

    [Fact]
    public void What_is_not_known_belongs_to_itself() => Assert.Equal(["no-such-thing"], Relations.Of(RodJobs.Stair("straight-flight")).With("no-such-thing"));

    [Theory, MemberData(nameof(All))]
    public void Nothing_is_told_twice_and_only_what_can_be_picked(string sample)
    {
        var relations = Relations.Of(RodJobs.Stair(sample));
        var ids = relations.Ids.ToHashSet();
        foreach (var id in ids)
        {
            Assert.Equal(relations.With(id).Length, relations.With(id).Distinct().Count());
            Assert.All(relations.With(id), other => Assert.Contains(other, ids));
        }
    }
}
