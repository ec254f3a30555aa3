using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Proposals;

/// <summary>One turn of a family of layouts, and how it may be varied.</summary>
/// <param name="Kind">Tapered steps or a landing.</param>
/// <param name="Quarters">1 for a quarter turn, 2 for a half.</param>
public sealed record FamilyTurn(TurnKind Kind, int Quarters)
{
    /// <summary>Whether it turns against the hand of the stair.</summary>
    public bool Against { get; init; }

    /// <summary>How it is set out; empty for a landing.</summary>
    public string Method { get; init; } = "";

    /// <summary>Straight steps either side that share its taper.</summary>
    public int Shared { get; init; }

    /// <summary>Numbers of steps it may have.</summary>
    public required ImmutableArray<int> Steps { get; init; }

    /// <summary>Wells of a half turn to choose from, mm between the centre lines of its strings; empty for the usual one.</summary>
    public ImmutableArray<double> Wells { get; init; } = [];

    /// <summary>Tapered steps round a quarter turn.</summary>
    public static FamilyTurn Winders { get; } = new(TurnKind.Winders, 1) { Method = "equal-goings", Steps = [2, 3, 4, 5, 6] };

    /// <summary>Tapered steps round a half turn with one newel.</summary>
    public static FamilyTurn HalfWinders { get; } = new(TurnKind.Winders, 2) { Method = "equal-goings", Steps = [4, 5, 6, 7, 8] };

    /// <summary>A quarter landing.</summary>
    public static FamilyTurn Landing { get; } = new(TurnKind.Landing, 1) { Steps = [1] };

    /// <summary>A half landing.</summary>
    public static FamilyTurn HalfLanding { get; } = new(TurnKind.Landing, 2) { Steps = [1] };
}
