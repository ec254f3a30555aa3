using System.Collections.Immutable;

namespace Rodwright.Stairs.Proposals;

/// <summary>A family of layouts: turns in their order, with flights before, between and after them.</summary>
/// <param name="Id">Stable id, as in a job file's wishes.</param>
/// <param name="Title">What it is called, in bench words.</param>
/// <param name="Turns">From the bottom up; none for a straight flight.</param>
public sealed record Family(string Id, string Title, ImmutableArray<FamilyTurn> Turns)
{
    /// <summary>Where the only turn stands.</summary>
    public TurnHeight Height { get; init; } = TurnHeight.Anywhere;

    /// <summary>Least goings between two turns.</summary>
    public int LeastBetween { get; init; } = 1;

    /// <summary>Whether so many goings before the turn out of so many belong to this family.</summary>
    public bool Holds(int before, int straight) => Height switch
    {
        TurnHeight.Low => 3 * before < straight,
        TurnHeight.Middle => 3 * before >= straight && 3 * before <= 2 * straight,
        TurnHeight.High => 3 * before > 2 * straight,
        _ => true,
    };
}

/// <summary>Where in a stair its turn stands: by thirds of its straight steps.</summary>
public enum TurnHeight
{
    /// <summary>Wherever it fits.</summary>
    Anywhere,

    /// <summary>In the lower third.</summary>
    Low,

    /// <summary>In the middle third.</summary>
    Middle,

    /// <summary>In the upper third.</summary>
    High,
}
