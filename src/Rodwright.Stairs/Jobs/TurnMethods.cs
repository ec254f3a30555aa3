using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs;

/// <summary>Ids of the ways tapered steps are set out (setting-out.md 2.2), as they stand in a job file.</summary>
public static class TurnMethods
{
    /// <summary>Equal goings stepped along the walking line with dividers, equal narrow ends; the default.</summary>
    public const string EqualGoings = "equal-goings";

    /// <summary>As equal goings, but the walking line divided along its length.</summary>
    public const string EqualArcs = "equal-arcs";

    /// <summary>All riser lines through one point at equal angles.</summary>
    public const string Radiating = "radiating";

    /// <summary>A landing has no method.</summary>
    public const string None = "";

    /// <summary>The methods of tapered steps.</summary>
    public static ImmutableArray<string> All { get; } = [EqualGoings, EqualArcs, Radiating];
}
