using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>Where a newel stands and what it does.</summary>
/// <param name="Id">newel-1 is the lowest on the inner side.</param>
/// <param name="Name">In words: "bottom newel", "turn newel", "top newel".</param>
/// <param name="Mark">N1, N2 ...</param>
/// <param name="Role">Bottom, turn, corner or top.</param>
/// <param name="Centre">Centre in plan.</param>
/// <param name="Inner">Whether it stands on the inner side.</param>
public sealed record NewelSite(string Id, string Name, string Mark, NewelRole Role, Point2 Centre, bool Inner)
{
    /// <summary>The way the half lies that is split off a half newel, against a wall; null for a whole newel.</summary>
    public Vector2? Split { get; init; }

    /// <summary>Mirrored in the y axis.</summary>
    public NewelSite Mirrored() => this with { Centre = Centre.Mirrored, Split = Split is { } s ? new(-s.X, s.Y) : null };
}

/// <summary>What a newel does in the stair.</summary>
public enum NewelRole
{
    /// <summary>At the foot of the stair.</summary>
    Bottom,

    /// <summary>At the inner corner of a turn.</summary>
    Turn,

    /// <summary>At the outer corner of a turn that is open there.</summary>
    Corner,

    /// <summary>At the upper floor.</summary>
    Top,
}
