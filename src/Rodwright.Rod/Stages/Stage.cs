using System.Collections.Immutable;

namespace Rodwright.Rod.Stages;

/// <summary>A step of setting out: some faint lines, then the lines lined in.</summary>
/// <param name="Id">Stable and unique on the rod.</param>
/// <param name="Bench">What is set out, and so which frame its lines are in.</param>
/// <param name="Subject">"plan", or the id of the part; of the lower one where two strings are set out together.</param>
/// <param name="Title">In bench words.</param>
/// <param name="Lines">In the order they are drawn.</param>
public sealed record Stage(string Id, Bench Bench, string Subject, string Title, ImmutableArray<StageLine> Lines);
