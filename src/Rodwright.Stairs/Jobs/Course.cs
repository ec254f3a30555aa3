using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs;

/// <summary>
/// A sequence read as it is built: flights with a turn between each two. Two quarter turns of tapered steps to the same hand with nothing between them are
/// one half turn round a shared newel, unless the job fixes where the riser between them stands.
/// </summary>
/// <param name="Goings">Of each flight from the bottom up; one more than turns.</param>
/// <param name="Turns">Turns from the bottom up.</param>
public sealed record Course(ImmutableArray<int> Goings, ImmutableArray<Turn> Turns)
{
    /// <summary>Of each flight, what its sides were said to be; goings are in <see cref="Goings"/>.</summary>
    public ImmutableArray<Flight> Sides { get; init; } = [.. Goings.Select(g => new Flight(g))];

    /// <summary>Steps of flights and turns together.</summary>
    public int Steps => Goings.Sum() + Turns.Sum(t => t.Steps);

    /// <summary>The course as items of a sequence: flight, turn, flight and so on; flights of no goings are written as such, so that the places of the items stay.</summary>
    public IEnumerable<LayoutItem> Items
    {
        get
        {
            for (var i = 0; i < Goings.Length; i++)
            {
                yield return Sides[i] with { Goings = Goings[i] };
                if (i < Turns.Length) yield return Turns[i];
            }
        }
    }

    /// <summary>Reads the sequence of a layout.</summary>
    public static Course Of(Layout layout)
    {
        var (goings, turns, sides) = (new List<int> { 0 }, new List<Turn>(), new List<Flight> { new(0) });
        foreach (var item in layout.Sequence)
        {
            if (item is Flight flight)
            {
                goings[^1] += flight.Goings;
                sides[^1] = flight;
            }
            else if (item is Turn turn)
            {
                if (turns.Count > 0 && goings[^1] == 0 && IsOneTurn(layout, turns[^1], turn))
                {
                    turns[^1] = turns[^1] with { Quarters = 2, Tapered = turns[^1].Tapered + turn.Tapered, LastRiser = turn.LastRiser, SharedAfter = turn.SharedAfter };
                    continue;
                }
                turns.Add(turn);
                goings.Add(0);
                sides.Add(new(0));
            }
        }
        return new([.. goings], [.. turns]) { Sides = [.. sides] };
    }

    private static bool IsOneTurn(Layout layout, Turn a, Turn b) =>
        a is { Kind: TurnKind.Winders, Quarters: 1, LastRiser: null } && b is { Kind: TurnKind.Winders, Quarters: 1, FirstRiser: null }
        && layout.HandOf(a) == layout.HandOf(b) && a.Method == b.Method;
}
