using System.Collections.Immutable;
using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Rod.Stages;

namespace Rodwright.Workshop.Picks;

/// <summary>Everything on the rod that can be picked, explained. The same stair always gives the same picks.</summary>
public static class Picks
{
    private static readonly ImmutableArray<Func<PickBench, string, Pick?>> Kinds =
        [WholePick.Of, RiserPick.Of, StringPick.Of, NewelPick.Of, TreadPick.Of, NosingPick.Of, BottomStepPick.Of, GoingPick.Of, CutPick.Of, LinePick.Of, PlacePick.Of, WidthPick.Of, PiecePick.Of];

    /// <summary>The thing with an id; null when the stair has none such.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="proof">Its proof.</param>
    /// <param name="stages">Its stages.</param>
    /// <param name="id">An id as marks carry it.</param>
    public static Pick? Of(Stair stair, ProofReport proof, RodStageList stages, string id)
    {
        var bench = new PickBench(stair, proof, stages);
        foreach (var kind in Kinds)
            if (kind(bench, id) is { } pick) return pick with { Facts = [.. pick.Facts, .. StageFacts.Beyond(bench, id, pick.Facts)] };
        return null;
    }

    /// <summary>Every id that can be picked, each once: lines and places, then parts with their cuts.</summary>
    public static ImmutableArray<string> Ids(Stair stair, RodStageList stages) => PickIds.Of(stair, stages);
}
