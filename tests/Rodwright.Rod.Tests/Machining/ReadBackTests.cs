using System.Collections.Concurrent;
using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Rod.Machining;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>The stair put together from its machining files alone, as an independent reader sees them.</summary>
public sealed class ReadBackTests
{
    private const double Closed = 0.05;

    public static TheoryData<string> AllSamples => [.. Samples.Names];

    [Theory]
    [MemberData(nameof(AllSamples))]
    public void The_stair_goes_together_from_its_machining_files(string sample)
    {
        var gaps = Gaps(sample, Read(sample));
        Assert.NotEmpty(gaps);
        Assert.True(gaps.All(g => g.Gap <= Closed), string.Join("\n", gaps.Where(g => !(g.Gap <= Closed)).Select(g => $"{g.Joint.Id}: {g.Gap}")));
    }

    [Theory]
    [InlineData("straight-flight", "HOUSING", 0.2, 0)]
    [InlineData("straight-flight", "HOUSING", 0, 0.2)]
    [InlineData("straight-flight", "HOUSING", 0, -0.2)]
    [InlineData("left-kite-low", "MORTICE", 0, 0.2)]
    [InlineData("left-kite-low", "BORE", 0.2, 0)]
    [InlineData("left-kite-low", "CORNER-HOUSING", 0.2, 0)]
    public void A_cut_moved_by_a_fifth_of_a_millimetre_is_found(string sample, string operation, double x, double y)
    {
        var files = Read(sample);
        foreach (var (name, file) in files)
        {
            for (var i = 0; i < file.Paths.Count; i++)
            {
                var layer = file.Paths[i].Layer;
                if (!layer.StartsWith(operation, StringComparison.Ordinal) && !(layer.Length > 2 && layer[1] == '-' && layer[2..].StartsWith(operation, StringComparison.Ordinal))) continue;
                var paths = file.Paths.ToList();
                paths[i] = (layer, paths[i].Path.Moved(new Vector2(x, y)));
                var spoilt = files.ToDictionary();
                spoilt[name] = file with { Paths = paths };
                Assert.True(Gaps(sample, spoilt).Any(g => g.Gap > Closed), $"{name}: {layer} moved by {x}, {y} is not found");
                break;
            }
        }
    }

    private static readonly ConcurrentDictionary<string, IReadOnlyDictionary<string, DxfReader.Drawing>> Files = new();

    private static IReadOnlyDictionary<string, DxfReader.Drawing> Read(string sample) => Files.GetOrAdd(sample, s =>
        DxfReader.Read(PartFiles.Make(RodJobs.Of(s)).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal))));

    private static List<(Joint Joint, double Gap)> Gaps(string sample, IReadOnlyDictionary<string, DxfReader.Drawing> files)
    {
        var kit = RodJobs.Stair(sample).Kit;
        // The stair's own joints. What is glued, screwed or driven on the bench has no cut of another part to close on; rails and carriages: ReadBackFittedTests.
        var joints = kit.Joints.Where(j => j.Kind is JointKind.TreadHousing or JointKind.RiserHousing or JointKind.Tenon or JointKind.Corner or JointKind.RiserToTread or JointKind.TreadOnRiser).ToList();
        joints.RemoveAll(j => j.Female.StartsWith("block", StringComparison.Ordinal));
        var parts = joints.SelectMany(j => new[] { j.Male, j.Female }).Distinct().ToDictionary(id => id, id => new ReadPart(kit.Find(id), files[kit.Find(id).Mark + ".dxf"], kit.Plan));
        return [.. joints.Select(j => (j, ReadJoints.Gap(j, parts[j.Male], parts[j.Female], kit.Plan.Job.Practice)))];
    }
}
