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
    /// <summary>What stands on its left going up; null for what the layout implies.</summary>
    public SideKind? Left { get; init; }

    /// <summary>What stands on its right going up; null for what the layout implies.</summary>
    public SideKind? Right { get; init; }

    /// <inheritdoc/>
    public override int Steps => Goings;
}

/// <summary>A turn by a quarter or a half.</summary>
/// <param name="Kind">Tapered steps or a landing.</param>
/// <param name="Tapered">How many tapered steps, 2 to 6 to a quarter turn; 1 for a landing.</param>
/// <param name="FirstRiser">e_in fixed by hand, mm outside the newel's centre line; null to solve it.</param>
/// <param name="LastRiser">e_out fixed by hand, mm outside the newel's centre line; null to solve it.</param>
/// <param name="Method">Id of the way the tapered steps are set out; see the turn catalogue; empty for a landing, which has none.</param>
public sealed record Turn(TurnKind Kind, int Tapered, double? FirstRiser, double? LastRiser, string Method) : LayoutItem
{
    /// <summary>Which way it turns going up; null for the hand of the layout.</summary>
    public Hand? Hand { get; init; }

    /// <summary>1 for a quarter turn, 2 for a half turn round one newel, or, for a landing, round one or two.</summary>
    public int Quarters { get; init; } = 1;

    /// <summary>
    /// Of a half turn: how far the centre lines of its two inner strings stand apart, mm. Narrower than the newel, they share it. Null for the usual: none for
    /// tapered steps, and for a landing enough for the two strings to pass one another.
    /// </summary>
    public double? Well { get; init; }

    /// <summary>Straight steps before the turn that share its taper.</summary>
    public int SharedBefore { get; init; }

    /// <summary>Straight steps after the turn that share its taper.</summary>
    public int SharedAfter { get; init; }

    /// <inheritdoc/>
    public override int Steps => Tapered;
}

/// <summary>What fills a turn.</summary>
public enum TurnKind
{
    /// <summary>Tapered steps (winders).</summary>
    Winders,

    /// <summary>A landing.</summary>
    Landing,
}
