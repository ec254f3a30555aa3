using System.Collections.Immutable;
using Rodwright.Stairs.Jobs.Changes;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Housings, margin and corner against the boards the strings are made of.</summary>
internal static class StringChecks
{
    public static ImmutableArray<JobCheck> All { get; } =
    [
        new(JobCodes.Housing, "practice.housing", ["practice.housing", "practice.wallString.thickness", "practice.newelString.thickness", "sides"], Housing),
        new(JobCodes.Margin, "practice.margin", ["practice.margin", "practice.wallString.width", "practice.newelString.width", "sides"], Margin),
        new(JobCodes.CornerTongue, "practice.cornerTongue", ["practice.cornerTongue", "practice.cornerJoint", "practice.wallString.thickness"], Tongue),
        new(JobCodes.CornerLap, "practice.corner", ["practice.corner", "practice.cornerJoint"], Lap),
        new(JobCodes.Corner, "practice.corner", ["practice.corner", "practice.wallString.thickness", "layout"], Corner),
    ];

    // Shallower tails are none, mm.
    private const double LeastLap = 5;

    /// <summary>The boards the job is made of: its name, whether the job has it, and the board.</summary>
    private static IEnumerable<(string Name, Board Board)> Boards(Job job)
    {
        if (job.HasWallString) yield return ("wall string", job.Practice.WallString);
        if (job.HasNewelString) yield return ("newel string", job.Practice.NewelString);
    }

    private static Pinch? Housing(Job job)
    {
        foreach (var (name, board) in Boards(job))
        {
            if (job.Practice.Housing < board.Thickness) continue;
            return new($"the housings, {job.Units.With(job.Practice.Housing)} deep, come through the {name}, {job.Units.With(board.Thickness)} thick", $"house {job.Units.Range(10, 12, 1)} deep, or take thicker strings",
                Remedied.Size(job.Units, "practice.housing", "housings of", 12, 10, 8, 6, 4, 2));
        }
        return null;
    }

    private static Pinch? Margin(Job job)
    {
        foreach (var (name, board) in Boards(job))
        {
            if (job.Practice.Margin < board.Width) continue;
            return new($"the margin, {job.Units.With(job.Practice.Margin)}, leaves nothing of the {name}, {job.Units.With(board.Width)} wide", $"a margin of about {job.Units.With(50, 1)} in a string of {job.Units.Range(220, 290, 1)} is usual",
                Remedied.Size(job.Units, "practice.margin", "a margin of", 50, 25, 10));
        }
        return null;
    }

    private static Pinch? Tongue(Job job) => job.Practice.CornerJoint != CornerJoint.Tongued || job.Practice.Tongue + 2 < job.Practice.WallString.Thickness ? null : new(
        $"a tongue {job.Units.With(job.Practice.Tongue)} thick leaves no shoulders on a wall string {job.Units.With(job.Practice.WallString.Thickness)} thick", "a third of the string is usual",
        Remedied.Size(job.Units, "practice.cornerTongue", "a tongue of", 12, 10, 8, 6, 4));

    private static Pinch? Lap(Job job) => job.Practice.CornerJoint != CornerJoint.Dovetailed || job.Practice.Corner >= LeastLap ? null : new(
        $"dovetails lapped {job.Units.With(job.Practice.Corner)} into the lower wall string hold nothing", $"lap them {job.Units.Range(10, 16, 1)}",
        Remedied.Size(job.Units, "practice.corner", "a lap of", 12, 16, 10, 8));

    private static Pinch? Corner(Job job) => job.Layout.Turn is null || job.Practice.Corner < job.Practice.WallString.Thickness ? null : new(
        $"the corner housing, {job.Units.With(job.Practice.Corner)} deep, comes through the wall string, {job.Units.With(job.Practice.WallString.Thickness)} thick",
        $"let the upper wall string {job.Units.Range(10, 12, 1)} into the lower one",
        Remedied.Size(job.Units, "practice.corner", "a corner housing of", 12, 10, 8, 6, 4));
}
