using System.Collections.Immutable;

namespace Rodwright.Rod.Assembly;

/// <summary>One step in putting a stair together.</summary>
/// <param name="Title">What is done, in a few words.</param>
/// <param name="Where">At the bench, or where the stair stands.</param>
/// <param name="New">Ids of the parts that are fitted for good now, in the order they are taken up; each part is in one stage only.</param>
/// <param name="Moved">Ids of parts put together before that are brought to their place now.</param>
/// <param name="Before">Ids of parts that stand already.</param>
/// <param name="Words">How it is done: glue, wedges, pegs, screws, cramps.</param>
public sealed record AssemblyStage(string Title, AssemblyPlace Where, ImmutableArray<string> New, ImmutableArray<string> Moved, ImmutableArray<string> Before, string Words)
{
    /// <summary>Every part on the stage's picture.</summary>
    public IEnumerable<string> Shown => Before.Concat(Moved).Concat(New);
}

/// <summary>Where a stage is done.</summary>
public enum AssemblyPlace
{
    /// <summary>At the bench.</summary>
    Shop,

    /// <summary>In the house, where the stair stands.</summary>
    Site,
}
