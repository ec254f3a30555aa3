namespace Rodwright.Stairs.Jobs;

/// <summary>One thing in the sequence of a layout: a flight or a turn.</summary>
public abstract record LayoutItem
{
    private protected LayoutItem() { }

    /// <summary>How many steps it adds: parallel goings of a flight, tapered steps of a turn, one for a landing.</summary>
    public abstract int Steps { get; }
}

/// <summary>A flight of parallel goings.</summary>
/// <param name="Goings">0 to 60.</param>
public sealed record Flight(int Goings) : LayoutItem
{
    /// <inheritdoc/>
    public override int Steps => Goings;
}

/// <summary>A quarter turn, to the hand of the layout.</summary>
/// <param name="Kind">Tapered steps or a landing.</param>
/// <param name="Tapered">How many tapered steps, 2 to 6; 1 for a landing.</param>
/// <param name="FirstRiser">e_in fixed by hand, mm outside the newel's centre line; null to solve it.</param>
/// <param name="LastRiser">e_out fixed by hand, mm outside the newel's centre line; null to solve it.</param>
/// <param name="Method">Id of the way the tapered steps are set out; see the turn catalogue; empty for a landing, which has none.</param>
public sealed record Turn(TurnKind Kind, int Tapered, double? FirstRiser, double? LastRiser, string Method) : LayoutItem
{
    /// <inheritdoc/>
    public override int Steps => Tapered;
}

/// <summary>What fills a quarter turn.</summary>
public enum TurnKind
{
    /// <summary>Tapered steps (winders).</summary>
    Winders,

    /// <summary>A square landing.</summary>
    Landing,
}
