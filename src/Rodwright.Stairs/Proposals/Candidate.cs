using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Proposals;

/// <summary>One stair of a family: every number that makes it.</summary>
/// <param name="Family">The family.</param>
/// <param name="Steps">Steps of each turn.</param>
/// <param name="Well">Well of a half turn, mm; null for the usual.</param>
/// <param name="Risers">Number of risers.</param>
/// <param name="Goings">Straight goings of each flight.</param>
/// <param name="Going">Going of the straight steps, mm.</param>
/// <param name="Newel">Side of the newels, mm.</param>
/// <param name="Width">Width over the strings, mm.</param>
public sealed record Candidate(
    Family Family, ImmutableArray<int> Steps, double? Well, int Risers, ImmutableArray<int> Goings, double Going, double Newel, double Width)
{
    /// <summary>Offset of each turn's risers where the job has to fix it, mm; null where it is solved.</summary>
    public ImmutableArray<double?> Offsets { get; init; } = [];

    internal QuickMeasures Measures { get; init; }

    /// <summary>The sum of the ranking; the smaller, the better.</summary>
    public double Score { get; init; }

    /// <summary>Its job, to one hand.</summary>
    public Job Job(Brief brief, Hand hand) => brief.With(new(hand, [.. Items(hand)]), Going, Width, Newel);

    private IEnumerable<LayoutItem> Items(Hand hand)
    {
        for (var i = 0; i < Goings.Length; i++)
        {
            if (Goings[i] > 0 || Family.Turns.IsEmpty) yield return new Flight(Goings[i]);
            if (i == Family.Turns.Length) yield break;
            var offset = Offsets.IsEmpty ? null : Offsets[i];
            yield return TurnOf(Family.Turns[i], Steps[i], Well, hand) with { FirstRiser = offset, LastRiser = offset };
        }
    }

    /// <summary>A turn of a family as a job writes it.</summary>
    internal static Turn TurnOf(FamilyTurn turn, int steps, double? well, Hand hand) => new(turn.Kind, steps, null, null, turn.Method)
    {
        Hand = turn.Against ? hand == Jobs.Hand.Left ? Jobs.Hand.Right : Jobs.Hand.Left : null,
        Quarters = turn.Quarters, Well = turn.Quarters == 2 ? well : null, SharedBefore = turn.Shared, SharedAfter = turn.Shared,
    };
}
