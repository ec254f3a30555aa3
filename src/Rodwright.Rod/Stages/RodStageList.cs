using System.Collections.Immutable;

namespace Rodwright.Rod.Stages;

/// <summary>The whole rod in the order it is drawn: plan, strings, newels, tapered steps.</summary>
/// <param name="Stages">In order.</param>
public sealed record RodStageList(ImmutableArray<Stage> Stages)
{
    /// <summary>Every line, in order.</summary>
    public IEnumerable<StageLine> Lines => Stages.SelectMany(s => s.Lines);

    /// <summary>What the same piece already has on it before a stage begins.</summary>
    public IEnumerable<StageLine> Before(Stage stage) =>
        Stages.TakeWhile(s => !ReferenceEquals(s, stage)).Where(s => s.Subject == stage.Subject).SelectMany(s => s.Lines);
}
