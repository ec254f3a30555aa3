using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Rod.Machining;
using Rodwright.Stairs.Surveys;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>
/// Rails, balusters, caps and carriages put together from their machining files, as an independent reader sees them: every outline and cut of every part is what was read, and the proof is asked again. Of the
/// parts themselves only where they stand is taken, and which cut belongs to which joint.
/// </summary>
public sealed class ReadBackFittedTests
{
    private const double Closed = 0.05;

    public static TheoryData<string> Fitted => [.. Samples.Names.Where(s => Joints(RodJobs.Stair(s).Kit).Any())];

    [Fact]
    public void There_are_rails_and_caps_among_the_samples()
    {
        var kinds = Samples.Names.SelectMany(s => Joints(RodJobs.Stair(s).Kit)).Select(j => j.Kind).ToHashSet();
        Assert.Empty(new[] { JointKind.RailTenon, JointKind.RailOnString, JointKind.RailToNewel, JointKind.InGroove, JointKind.CapOnNewel }.Except(kinds));
    }

    [Theory]
    [MemberData(nameof(Fitted))]
    public void What_is_fitted_goes_together_from_its_machining_files(string sample)
    {
        var kit = RodJobs.Stair(sample).Kit;
        var files = DxfReader.Read(PartFiles.Make(RodJobs.Of(sample)).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal)));
        var gaps = Gaps(kit, files, part => part);
        Assert.Equal(Joints(kit).Count(), gaps.Count);
        Assert.True(gaps.TrueForAll(g => g.Gap <= Closed), string.Join("\n", gaps.Where(g => !(g.Gap <= Closed)).Select(g => $"{g.Id}: {g.Gap}")));
    }

    [Fact]
    public void A_carriage_goes_together_with_its_brackets_and_steps_from_its_machining_files()
    {
        var stair = Joinery.Stair.SetOut(Samples.Job("straight-flight") with { Width = 1100, Carriage = new() }).Value!;
        var rod = RodJobs.Of("straight-flight") with { Stair = stair, Proof = stair.Prove() };
        var kinds = Joints(stair.Kit).Select(j => j.Kind).ToHashSet();
        Assert.Empty(new[] { JointKind.BracketToCarriage, JointKind.BracketUnderTread, JointKind.CarriageUnderRiser }.Except(kinds));
        var gaps = Gaps(stair.Kit, DxfReader.Read(PartFiles.Make(rod).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal))), part => part);
        Assert.Equal(Joints(stair.Kit).Count(), gaps.Count);
        Assert.True(gaps.TrueForAll(g => g.Gap <= Closed), string.Join("\n", gaps.Where(g => !(g.Gap <= Closed)).Select(g => $"{g.Id}: {g.Gap}")));
    }

    /// <summary>A well with an inside corner, where linings are butted, and one where the floor stands out, where they are mitred.</summary>
    [Fact]
    public void Nosings_and_linings_round_a_well_go_together_from_their_machining_files()
    {
        var job = Samples.Job("loft-under-slope");
        var stair = Joinery.Stair.SetOut(job with
        {
            LandingEdge = new(),
            Survey = job.Survey with { Well = new() { Corners = [new(1287, 0), new(3743, 0), new(3743, 1400), new(2243, 1400), new(2243, 1900), new(1287, 1900)], Trimmer = Readings.Of(232) } },
        }).Value!;
        var rod = RodJobs.Of("loft-under-slope") with { Stair = stair, Proof = stair.Prove() };
        Assert.Equal(6, Joints(stair.Kit).Count(j => j.Kind == JointKind.EdgeCorner));
        var gaps = Gaps(stair.Kit, DxfReader.Read(PartFiles.Make(rod).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal))), part => part);
        Assert.Equal(Joints(stair.Kit).Count(), gaps.Count);
        Assert.True(gaps.TrueForAll(g => g.Gap <= Closed), string.Join("\n", gaps.Where(g => !(g.Gap <= Closed)).Select(g => $"{g.Id}: {g.Gap}")));
    }

    /// <summary>A mortice and a recess read a fifth of a millimetre off their places are found.</summary>
    [Theory]
    [InlineData("balustrade", CutKind.Mortice)]
    [InlineData("balustrade", CutKind.Recess)]
    public void A_cut_moved_by_a_fifth_of_a_millimetre_is_found(string sample, CutKind kind)
    {
        var kit = RodJobs.Stair(sample).Kit;
        var files = DxfReader.Read(PartFiles.Make(RodJobs.Of(sample)).Where(f => f.Name.EndsWith(".dxf", StringComparison.Ordinal)));
        var joints = Joints(kit).Select(j => j.Id).ToHashSet();
        var spoilt = kit.Parts.SelectMany(p => p.Cuts.Where(c => c.Kind == kind && joints.Contains(c.Joint)).Take(1).Select(c => (Part: p.Id, c.Id))).First();
        var gaps = Gaps(kit, files, part => part.Id != spoilt.Part ? part
            : part with { Cuts = [.. part.Cuts.Select(c => c.Id == spoilt.Id ? c with { Shape = c.Shape.Moved(new Vector2(0.2, 0.2)) } : c)] });
        Assert.Contains(gaps, g => !(g.Gap <= Closed));
    }

    private static IEnumerable<Joint> Joints(Kit kit) => kit.Joints.Where(j => j.Kind is JointKind.RailTenon or JointKind.RailOnString or JointKind.RailToNewel or JointKind.InGroove or JointKind.CapOnNewel
        or JointKind.RailOnNosing or JointKind.NosingOnApron or JointKind.EdgeCorner or JointKind.BracketToRail or JointKind.BracketToCarriage or JointKind.BracketUnderTread or JointKind.CarriageUnderRiser);

    private static List<(string Id, double Gap)> Gaps(Kit kit, IReadOnlyDictionary<string, DxfReader.Drawing> files, Func<Part, Part> spoil)
    {
        var joints = Joints(kit).ToList();
        var read = kit with { Joints = [.. joints], Parts = [.. kit.Parts.Select(p => p.Kind == PartKind.BentRiser ? p : spoil(AsRead(p, files[p.Mark + ".dxf"])))] };
        // A proof that fails of something else than its outlines (how deep, whether at all) says no gap that would do.
        return [.. Prover.Prove(read).Joints.Where(j => joints.Exists(k => k.Id == j.Id))
            .Select(j => (j.Id, j.Holds ? j.Gap : Math.Max(Math.Max(j.Gap, Math.Abs(j.Wanted - j.Reached)), double.Epsilon)))];
    }

    /// <summary>The part with every outline and cut replaced by the one of its layer in the file that lies nearest.</summary>
    private static Part AsRead(Part part, DxfReader.Drawing file)
    {
        var faces = part.Faces.Select((f, i) => f with { Outline = Nearest(i, part.Kind.IsPost() || i == 0 ? "OUTLINE" : "TOP-EDGE", f.Outline) });
        // Housings that meet are one recess in the file: they are read back by ReadBackTests, and left to it here.
        var cuts = part.Cuts.Select(c => c.Kind == CutKind.Housing ? c : c with { Shape = Nearest(c.Face, MachiningLayers.Of(c).Name, c.Shape) });
        return part with { Faces = [.. faces], Cuts = [.. cuts] };

        Path2 Nearest(int face, string layer, Path2 meant)
        {
            if (part.Kind.IsPost()) layer = $"{part.Faces[face].Looks.ToUpperInvariant().Replace(' ', '-')}-{layer}";
            var found = file.Paths.Where(p => p.Layer == layer).Select(p => p.Path.Moved(p => Back(face, p))).ToList();
            Assert.True(found.Count > 0, $"{part.Mark}: nothing on {layer}");
            return found.MinBy(p => p.Bounds.Centre.DistanceTo(meant.Bounds.Centre) + Math.Abs(p.Length - meant.Length))!;
        }

        Point2 Back(int face, Point2 p)
        {
            var blank = part.Blank;
            if (part.Kind.IsPost()) return p - new Vector2(MachiningFrame.OffsetOf(part, face), 0);
            return face == 0 ? blank.Corner + p.X * blank.Grain + p.Y * blank.Grain.Left : new(p.X + blank.Corner.X, p.Y - blank.Width - MachiningFrame.Gap);
        }
    }
}
