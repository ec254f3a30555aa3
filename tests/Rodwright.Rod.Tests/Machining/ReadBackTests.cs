using System.Collections.Concurrent;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>The stair put together from its machining files alone, as an independent reader sees them.</summary>
public sealed class ReadBackTests
{
    private const double Closed = 0.05;

    /// <summary>What is asked of a job besides what its file says.</summary>
    private static readonly Dictionary<string, Func<Job, Job>> Choices = new()
    {
        [""] = job => job,
        ["wedged and pegged"] = job => job with { SmallParts = job.SmallParts ?? new() },
        ["tongued corner"] = job => job with { Practice = job.Practice with { CornerJoint = CornerJoint.Tongued } },
        ["dovetailed corner"] = job => job with { Practice = job.Practice with { CornerJoint = CornerJoint.Dovetailed } },
    };

    public static TheoryData<string, string> Everything
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var sample in Samples.Names)
            {
                var corner = RodJobs.Stair(sample).Kit.Joints.Any(j => j.Kind == JointKind.Corner);
                foreach (var choice in Choices.Keys.Where(c => corner || !c.EndsWith("corner", StringComparison.Ordinal))) data.Add(sample, choice);
            }
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Everything))]
    public void The_stair_goes_together_from_its_machining_files(string sample, string choice)
    {
        var rod = Rod(sample, choice);
        var gaps = Gaps(rod, Read(rod));
        Assert.NotEmpty(gaps);
        Assert.True(gaps.All(g => g.Gap <= Closed), string.Join("\n", gaps.Where(g => !(g.Gap <= Closed)).Select(g => $"{g.Joint.Id}: {g.Gap}")));
    }

    [Fact]
    public void Wedges_blocks_pegs_tongues_and_tails_are_among_what_is_put_together()
    {
        var kinds = Choices.Keys.SelectMany(c => Rod("left-kite-low", c).Stair.Kit.Joints).Where(IsRead).Select(j => j.Kind).ToHashSet();
        Assert.Empty(new[] { JointKind.WedgeDriven, JointKind.Rubbed, JointKind.PegInBore, JointKind.Corner }.Except(kinds));
        Assert.Contains(Rod("left-kite-low", "dovetailed corner").Stair.Kit.Parts, p => p.Cuts.Any(c => c.Kind == CutKind.Dovetail));
    }

    [Theory]
    [InlineData("straight-flight", "", "HOUSING", 0.2, 0)]
    [InlineData("straight-flight", "", "HOUSING", 0, 0.2)]
    [InlineData("straight-flight", "", "HOUSING", 0, -0.2)]
    [InlineData("left-kite-low", "", "MORTICE", 0, 0.2)]
    [InlineData("left-kite-low", "", "BORE", 0.2, 0)]
    [InlineData("left-kite-low", "", "CORNER-HOUSING", 0.2, 0)]
    [InlineData("left-kite-low", "tongued corner", "CORNER-HOUSING", 0.2, 0)]
    [InlineData("left-kite-low", "dovetailed corner", "DOVETAIL", 0, 0.2)]
    public void A_cut_moved_by_a_fifth_of_a_millimetre_is_found(string sample, string choice, string operation, double x, double y)
    {
        var rod = Rod(sample, choice);
        var files = Read(rod);
        foreach (var (name, file) in files)
        {
            for (var i = 0; i < file.Paths.Count; i++)
            {
                var layer = file.Paths[i].Layer;
                if (!layer.StartsWith(operation, StringComparison.Ordinal) && !layer[(layer.IndexOf('-', StringComparison.Ordinal) + 1)..].StartsWith(operation, StringComparison.Ordinal)) continue;
                var paths = file.Paths.ToList();
                paths[i] = (layer, paths[i].Path.Moved(new Vector2(x, y)));
                var spoilt = files.ToDictionary();
                spoilt[name] = file with { Paths = paths };
                Assert.True(Gaps(rod, spoilt).Any(g => g.Gap > Closed), $"{name}: {layer} moved by {x}, {y} is not found");
                break;
            }
        }
    }

    /// <summary>A wedge, block or peg as its file has it, a fifth of a millimetre too big, does not go in.</summary>
    [Theory]
    [InlineData("TW")]
    [InlineData("RW")]
    [InlineData("PG")]
    [InlineData("GB")]
    public void A_small_part_a_fifth_of_a_millimetre_off_is_found(string mark)
    {
        var rod = Rod("left-kite-low", "wedged and pegged");
        var files = Read(rod);
        var (name, file) = files.First(f => f.Key.StartsWith(mark, StringComparison.Ordinal));
        var spoilt = files.ToDictionary();
        spoilt[name] = file with { Paths = [.. file.Paths.Select(p => (p.Layer, p.Path.Moved(q => q + 0.2 / 10 * (q - Point2.Origin) + new Vector2(0.2, 0.2))))] };
        Assert.Contains(Gaps(rod, spoilt), g => g.Gap > Closed);
    }

    private static readonly ConcurrentDictionary<(string, string), RodJob> Rods = new();

    private static readonly ConcurrentDictionary<RodJob, IReadOnlyDictionary<string, DxfReader.Drawing>> Files = new();

    private static RodJob Rod(string sample, string choice) => Rods.GetOrAdd((sample, choice), _ =>
    {
        var stair = Joinery.Stair.SetOut(Choices[choice](Samples.Job(sample))).Value!;
        return RodJobs.Of(sample) with { Stair = stair, Proof = stair.Prove() };
    });

    private static IReadOnlyDictionary<string, DxfReader.Drawing> Read(RodJob rod) => Files.GetOrAdd(rod, r => DxfReader.Read(PartFiles.Make(r).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal))));

    /// <summary>The stair's own joints, with what is wedged, rubbed and driven into them; rails and carriages: ReadBackFittedTests. What is only glued or screwed has no cut of another part to close on.</summary>
    private static bool IsRead(Joint joint) => joint.Kind is JointKind.TreadHousing or JointKind.RiserHousing or JointKind.Tenon or JointKind.Corner or JointKind.RiserToTread or JointKind.TreadOnRiser
        or JointKind.WedgeDriven or JointKind.Rubbed or JointKind.PegInBore;

    private static List<(Joint Joint, double Gap)> Gaps(RodJob rod, IReadOnlyDictionary<string, DxfReader.Drawing> files)
    {
        var kit = rod.Stair.Kit;
        var joints = kit.Joints.Where(j => IsRead(j) && !j.Female.StartsWith("block", StringComparison.Ordinal)).ToList();
        var parts = new Dictionary<string, ReadPart>();
        return [.. joints.Select(j => (j, j.Kind is JointKind.WedgeDriven or JointKind.Rubbed or JointKind.PegInBore
            ? ReadSmallJoints.Gap(j, Part(j.Male), Part(j.Female), j.Kind == JointKind.WedgeDriven ? Part(Pressed(kit.Find(j.Male))) : null)
            : ReadJoints.Gap(j, Part(j.Male), Part(j.Female), kit.Plan.Job.Practice)))];

        ReadPart Part(string id) => parts.TryGetValue(id, out var known) ? known : parts[id] = new(kit.Find(id), files[kit.Find(id).Mark + ".dxf"], kit.Plan);
    }

    // wedge-tread-5-string-1 presses tread-5.
    private static string Pressed(Part wedge) => string.Join('-', wedge.Id.Split('-')[1..3]);
}
