using Rodwright.Joinery;
using Rodwright.Rod;
using Rodwright.Rod.Board;
using Rodwright.Rod.Revisions;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Sessions;

/// <summary>What of a stair's pieces and sheets is another since an earlier revision, the sheets on the paper the job's unit suggests.</summary>
public static class RevisionChanges
{
    /// <summary>The changes since an earlier job; null where either has no stair.</summary>
    /// <param name="then">The earlier job.</param>
    /// <param name="now">The job as it is kept.</param>
    public static StairChanges? Of(Job then, BenchState now)
    {
        if (now.Stair is not { } stair || Stair.SetOut(then, shelf: now.Tables).Value is not { } before) return null;
        var style = new RodStyle(PaperFit.Default(stair.Units), null, "");
        return StairChanges.Of(new(before, before.Prove(), style), new(stair, stair.Prove(), style));
    }
}
