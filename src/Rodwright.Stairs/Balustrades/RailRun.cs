using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Balustrades;

/// <summary>One straight handrail as set out: where it runs in plan, and how high its top is.</summary>
/// <param name="Id">Stable id: handrail-1, landing-rail-1, wall-rail-1.</param>
/// <param name="Name">In words.</param>
/// <param name="Mark">HR1, HR2 ...; wall rails WR1.</param>
/// <param name="Kind">On a flight, along a landing or on a wall.</param>
/// <param name="Centre">Its middle in plan, directed up the stair; stations are those of its string where it has one.</param>
/// <param name="From">Station of its lower end: the newel's face, or its plumb cut.</param>
/// <param name="To">Station of its upper end.</param>
/// <param name="Slope">Rise of its top for each millimetre along; 0 for a level one.</param>
/// <param name="Level">Height of its top above the lower floor, produced to station 0, mm.</param>
public sealed record RailRun(string Id, string Name, string Mark, RailKind Kind, Line2 Centre, double From, double To, double Slope, double Level)
{
    /// <summary>Id of the newel it begins in; empty for none.</summary>
    public string Lower { get; init; } = "";

    /// <summary>Id of the newel it ends in; empty for none.</summary>
    public string Upper { get; init; } = "";

    /// <summary>The string it stands over or beside; null along a landing.</summary>
    public StringSite? String { get; init; }

    /// <summary>Where it ends under the string of a flight above; null where it ends in a newel. Then <see cref="To"/> is its longest point, as near as the plan knows the string's edge, and <see cref="Upper"/> is empty.</summary>
    public RailStop? Stop { get; init; }

    /// <summary>Station of the face that its base rail runs towards: the upper newel's.</summary>
    public double Face => Stop?.Face ?? To;

    /// <summary>Height of the floor its balusters stand on, where there is no string, mm.</summary>
    public double Floor { get; init; }

    /// <summary>Along a landing: level, from its middle into the well, unit.</summary>
    public Vector2? Well { get; init; }

    /// <summary>Heights over the nosings it runs over, from the bottom up.</summary>
    public ImmutableArray<RailHeight> Heights { get; init; } = [];

    /// <summary>The greatest height over a nosing less the least, mm: 0 where it is parallel to the line of the nosings.</summary>
    public double Excess { get; init; }

    /// <summary>Its pitch; 0 for a level rail.</summary>
    public Angle Pitch => Angle.OfPitch(Slope, 1);

    /// <summary>Level length between its ends, mm.</summary>
    public double Clear => To - From;

    /// <summary>Height of its top at a station, mm above the lower floor.</summary>
    public double TopAt(double s) => Level + Slope * s;

    /// <summary>Mirrored in the y axis.</summary>
    public RailRun Mirrored() => this with { Centre = new(Centre.Through.Mirrored, new(-Centre.Along.X, Centre.Along.Y)), String = String?.Mirrored(), Well = Well is { } w ? new(-w.X, w.Y) : null, Stop = Stop is null ? null : Stop with { String = Stop.String.Mirrored() } };
}
