using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs;

/// <summary>What the stair is made of, from the bottom up.</summary>
/// <param name="Hand">Which way it turns going up, where a turn does not say otherwise.</param>
/// <param name="Sequence">Flights and turns in order.</param>
public sealed record Layout(Hand Hand, ImmutableArray<LayoutItem> Sequence)
{
    /// <summary>Risers: all steps in the sequence and one more, up to the upper floor.</summary>
    public int Risers => Sequence.Sum(i => i.Steps) + 1;

    /// <summary>The first turn, if the stair has one.</summary>
    public Turn? Turn => Sequence.OfType<Turn>().FirstOrDefault();

    /// <summary>Goings before the first turn (all of them for a straight flight).</summary>
    public int GoingsBefore => Sequence.TakeWhile(i => i is not Jobs.Turn).Sum(i => i.Steps);

    /// <summary>Which way a turn of this layout turns.</summary>
    public Hand HandOf(Turn turn) => turn.Hand ?? Hand;

    /// <summary>Equal when hand and items are: an array alone would be compared by identity.</summary>
    public bool Equals(Layout? other) => other is not null && Hand == other.Hand && Sequence.SequenceEqual(other.Sequence);

    /// <inheritdoc/>
    public override int GetHashCode() => Sequence.Aggregate(Hand.GetHashCode(), HashCode.Combine);
}
