namespace Rodwright.Rod.Stages;

/// <summary>What is being set out.</summary>
public enum Bench
{
    /// <summary>The stair in plan; lines are in the world's x and y.</summary>
    Plan,

    /// <summary>A wall string, or two round a corner, in development; lines are in (s, z).</summary>
    WallString,

    /// <summary>A newel string in development; lines are in (s, z).</summary>
    NewelString,

    /// <summary>A newel, four faces; lines are in the (u, v) of the face a line names.</summary>
    Newel,

    /// <summary>The tread of a tapered step; lines are in the (u, v) of its face side.</summary>
    TaperedStep,
}
