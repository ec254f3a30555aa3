using System.Collections.Immutable;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>The newel against its joints; passed over where the stair has no newel.</summary>
internal static class NewelChecks
{
    // A layout that was refused hides no error here: where a side is open there is a newel anyhow.
    private static readonly ImmutableArray<string> Sides = ["sides"];

    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.NewelTooThin, "practice.newel", [.. Sides, "practice.newel", "practice.newelString.thickness"], TooThin),
        new(JobCodes.NewelHousing, "practice.newelHousing", [.. Sides, "practice.newel", "practice.newelHousing", "practice.housing", "practice.tenon", "practice.newelString.thickness", "practice.wallString.thickness"], Housing),
        new(JobCodes.Mortice, "practice.tenon.part", [.. Sides, "practice.newel", "practice.tenon"], Mortice),
        new(JobCodes.TenonThickness, "practice.tenon.thickness", [.. Sides, "practice.newelString.thickness", "practice.tenon.thickness"], Thickness),
        new(JobCodes.Peg, "practice.tenon.peg", [.. Sides, "practice.newel", "practice.tenon"], Peg),
        new(JobCodes.Draw, "practice.tenon.draw", [.. Sides, "practice.tenon"], Draw),
        new(JobCodes.Haunch, "practice.tenon.haunch", [.. Sides, "practice.newel", "practice.tenon"], Haunch),
        new(JobCodes.Cover, "practice.cover", [.. Sides, "practice.newel", "practice.cover"], Cover),
    ];

    private static Pinch? TooThin(Job job) => !job.HasNewels || job.Practice.Newel > job.Practice.NewelString.Thickness ? null : new(
        $"the newel, {job.Units.With(job.Practice.Newel)}, is no thicker than the string tenoned into it, {job.Units.With(job.Practice.NewelString.Thickness)}", $"newels of {job.Units.Range(69, 120, 1)} are usual", Remedied.NewelsAbove(job.Units, job.Practice.NewelString.Thickness));

    private static Pinch? Housing(Job job)
    {
        if (!job.HasNewels) return null;
        var (newel, depth) = (job.Practice.Newel, job.Practice.NewelHousing);
        var help = $"house {job.Units.With(12, 1)} deep, {job.Units.With(18, 1)} where the riser is screwed, or take a larger newel";
        if (2 * depth >= newel) return new($"housings {job.Units.With(depth)} deep in opposite faces meet in a newel of {job.Units.With(newel)}", help, Shallower(), Remedied.NewelsAbove(job.Units, newel));
        // From the step side the housing comes towards the mortice, whose near cheek stands this far from the newel's centre.
        var board = job.InnerSide == SideKind.Open || job.OuterSide == SideKind.Open ? job.Practice.NewelString : job.Practice.WallString;
        var cheek = (job.Practice.Tenon.Thickness ?? board.Thickness - job.Practice.Housing) - board.Thickness / 2;
        return newel / 2 - depth > cheek ? null : new(
            $"a housing {job.Units.With(depth)} deep in a newel of {job.Units.With(newel)} meets the mortice of its string, {job.Units.With(cheek)} past the centre", $"less than {job.Units.With(newel / 2 - cheek)} deep, or a larger newel",
            Shallower(), Remedied.NewelsAbove(job.Units, newel));

        Way Shallower() => Remedied.Size(job.Units, "practice.newelHousing", "newel housings of", 18, 12, 10, 8, 6, 4);
    }

    private static Pinch? Mortice(Job job)
    {
        var depth = TenonLength(job) + job.Practice.Tenon.MorticeClearance;
        return !job.HasNewels || depth < job.Practice.Newel ? null : new(
            $"the mortice, {job.Units.With(depth)} deep, comes out of the far side of the newel, {job.Units.With(job.Practice.Newel)}", $"a tenon of two thirds of the newel with {job.Units.With(2, 1)} clearance is usual",
            Remedy.Of("tenons two thirds of the newel long", FieldChange.ToDefault("practice.tenon.part")), Remedied.Size(job.Units, "practice.tenon.morticeClearance", "space at the bottom of mortices of", 2, 1));
    }

    private static Pinch? Thickness(Job job) => !job.HasNewels || job.Practice.Tenon.Thickness is not { } thick || thick <= job.Practice.NewelString.Thickness ? null : new(
        $"the tenon, {job.Units.With(thick)}, is thicker than its string, {job.Units.With(job.Practice.NewelString.Thickness)}", "leave tenon.thickness out: it is then the string less the housing",
        Remedy.Of("tenons as thick as the string less the housing", FieldChange.ToDefault("practice.tenon.thickness")));

    private static Pinch? Peg(Job job)
    {
        if (!job.HasNewels) return null;
        var (peg, length) = (job.Practice.Tenon.Peg, TenonLength(job));
        var back = Math.Min(job.Practice.Tenon.PegBack, length / 2);
        // The hole in the tenon must keep wood in front of it and behind it.
        if (back - job.Practice.Tenon.Draw > peg / 2 && length - back > peg / 2) return null;
        return new($"a peg of {job.Units.With(peg)} at {job.Units.With(back)} from the shoulder breaks out of a tenon {job.Units.With(length)} long", "take a thinner peg, a longer tenon, or set the peg further back",
            Remedied.Size(job.Units, "practice.tenon.peg", "pegs of", 12, 10, 8, 6, 4), Remedied.Size(job.Units, "practice.tenon.pegBack", "pegs' centres from the shoulder", 20, 15, 10), Remedy.Of("tenons two thirds of the newel long", FieldChange.ToDefault("practice.tenon.part")));
    }

    private static Pinch? Draw(Job job) => !job.HasNewels || job.Practice.Tenon.Draw < job.Practice.Tenon.Peg / 2 ? null : new(
        $"a draw of {job.Units.With(job.Practice.Tenon.Draw)} is half the peg, {job.Units.With(job.Practice.Tenon.Peg)}, or more: the peg cannot find its hole", $"a draw of about {job.Units.With(2, 1)} is usual",
        Remedied.Size(job.Units, "practice.tenon.draw", "a draw of", 2, 1, 0.5));

    private static Pinch? Haunch(Job job) => !job.HasNewels || job.Practice.Tenon.Haunch <= TenonLength(job) ? null : new(
        $"the haunch, {job.Units.With(job.Practice.Tenon.Haunch)}, is longer than the tenon, {job.Units.With(TenonLength(job))}", $"a haunch of {job.Units.With(16, 1)} is usual",
        Remedied.Size(job.Units, "practice.tenon.haunch", "a haunch of", 16, Math.Floor(TenonLength(job) / 2)));

    private static Pinch? Cover(Job job) => !job.HasNewels || 2 * job.Practice.Cover < job.Practice.Newel ? null : new(
        $"cover of {job.Units.With(job.Practice.Cover)} on both sides leaves no place for a riser on a newel of {job.Units.With(job.Practice.Newel)}", $"{job.Units.With(10, 1)} to the arris is usual",
        Remedied.Size(job.Units, "practice.cover", "cover of", 10, 8, 5, 2));

    private static double TenonLength(Job job) => job.Practice.Tenon.Part * job.Practice.Newel;
}
