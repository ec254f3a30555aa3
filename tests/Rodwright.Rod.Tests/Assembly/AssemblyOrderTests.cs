using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery;
using Rodwright.Rod.Assembly;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Assembly;

/// <summary>The order of assembly, against the joints.</summary>
public class AssemblyOrderTests
{
    public static TheoryData<string> Names => [.. Samples.Names];

    [Theory, MemberData(nameof(Names))]
    public void Every_part_is_fitted_in_exactly_one_stage(string name)
    {
        var kit = RodJobs.Stair(name).Kit;
        var fitted = AssemblyOrder.Of(kit).SelectMany(s => s.New).ToList();
        Assert.Equal(kit.Parts.Select(p => p.Id).Order(StringComparer.Ordinal), fitted.Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Names))]
    public void No_part_is_fitted_before_what_it_is_housed_in(string name) => AssertOrder(RodJobs.Stair(name).Kit);

    [Fact]
    public void Nor_in_made_up_stairs() => Parallel.For(1, 150, i =>
    {
        var job = Generated.Jobs.Generate(new CsCheck.PCG((uint)i, 20261126), null, out _);
        if (Stair.SetOut(job).Value is { } stair) AssertOrder(stair.Kit);
    });

    private static void AssertOrder(Kit kit)
    {
        var stages = AssemblyOrder.Of(kit);
        var at = stages.SelectMany((s, i) => s.New.Select(id => (id, i))).ToDictionary(t => t.id, t => t.i);
        Assert.Equal(kit.Parts.Length, at.Count);
        // What a string or newel takes up, and a string let into another, comes with it or after it.
        foreach (var joint in kit.Joints.Where(j => j.Kind is JointKind.TreadHousing or JointKind.RiserHousing or JointKind.BlockToNewel))
            Assert.True(at[joint.Male] >= at[joint.Female], $"{joint.Id}: stage {at[joint.Male]} before {at[joint.Female]}");
        // Wherever a stage shows a flight brought in, it was glued up before; what stands was brought in or fitted before.
        var there = new HashSet<string>();
        foreach (var stage in stages.Skip(1))
        {
            Assert.True(there.SetEquals(stage.Before) || stage.Where == AssemblyPlace.Shop);
            Assert.All(stage.Moved, id => Assert.True(at[id] < stages.IndexOf(stage) && stages[at[id]].Where == AssemblyPlace.Shop));
            if (stage.Where == AssemblyPlace.Site) there.UnionWith(stage.Shown);
        }
        Assert.Equal(kit.Parts.Length, there.Count);
    }

    [Theory, InlineData("open-well", "Fix the carriages"), InlineData("wide-two-lines", "Fix the carriages")]
    public void Carriages_are_a_stage_of_their_own_after_the_steps_they_bear(string name, string title)
    {
        var kit = RodJobs.Stair(name).Kit;
        var stages = AssemblyOrder.Of(kit).ToList();
        var stage = Assert.Single(stages, s => s.Title == title);
        Assert.Equal(kit.Parts.Where(p => p.Kind is PartKind.Carriage or PartKind.CarriageBracket).Select(p => p.Id).Order(StringComparer.Ordinal), stage.New.Order(StringComparer.Ordinal));
        Assert.Contains("brackets", stage.Words, StringComparison.Ordinal);
        Assert.All(kit.Parts.Where(p => p.Step > 0 && p.Kind is not PartKind.CarriageBracket), p => Assert.Contains(p.Id, stage.Before));
        Assert.DoesNotContain(stages, s => s.Title.StartsWith("Rails", StringComparison.Ordinal));
    }

    [Fact]
    public void A_stair_round_a_corner_stands_from_the_bottom_newel_and_its_tapered_steps_follow_both_strings()
    {
        var kit = RodJobs.Stair("left-kite-low").Kit;
        var stages = AssemblyOrder.Of(kit).ToList();
        int At(string id) => stages.FindIndex(s => s.New.Contains(id));
        Assert.True(At("newel-bottom") < At("newel-turn") && At("newel-turn") < At("newel-top"));
        var kite = kit.Parts.First(p => p.Kind == PartKind.TaperedTread && kit.Joints.Count(j => j.Male == p.Id && j.Kind == JointKind.TreadHousing) > 2);
        Assert.Equal(AssemblyPlace.Site, stages[At(kite.Id)].Where);
        Assert.Contains("Glue and close", stages[At("newel-top")].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_kind_of_part_not_heard_of_before_follows_what_it_is_joined_to()
    {
        var kit = RodJobs.Stair("left-kite-low").Kit;
        var like = kit.Parts.First(p => p.Kind == PartKind.Tread);
        var block = like with { Id = "glue-block-9", Mark = "B9", Name = "glue block 9", Kind = (PartKind)99, Step = 9 };
        var rail = like with { Id = "rail-1", Mark = "H1", Name = "handrail 1", Kind = (PartKind)98, Step = 0 };
        var more = kit with
        {
            Parts = [rail, .. kit.Parts, block],
            Joints = [.. kit.Joints, new("glue-block-9/tread-9", (JointKind)77, block.Id, "tread-9", 0), new("rail-1/newel-turn", JointKind.Tenon, rail.Id, "newel-turn", 30), new("rail-1/newel-top", JointKind.Tenon, rail.Id, "newel-top", 30)],
        };
        var stages = AssemblyOrder.Of(more).ToList();
        Assert.Equal(stages.FindIndex(s => s.New.Contains("tread-9")), stages.FindIndex(s => s.New.Contains(block.Id)));
        Assert.Contains(rail.Id, stages[^1].New);
    }

    [Theory, MemberData(nameof(Names))]
    public void The_pictures_hold_every_part_that_is_seen_and_every_stage_has_one(string name)
    {
        var rod = RodJobs.Of(name);
        var groups = AssemblySheets.Make(rod).SelectMany(s => s.Marks).OfType<GroupMark>().Select(g => g.Id).ToHashSet();
        Assert.Equal(rod.Stair.Kit.Parts.Select(p => p.Id).Order(StringComparer.Ordinal), groups.Order(StringComparer.Ordinal));
    }
}
