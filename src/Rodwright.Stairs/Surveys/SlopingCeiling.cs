using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>A ceiling given as a plane, from the three measurements a joiner takes: two heights and the places where they were taken, or one height and the pitch.</summary>
public sealed record SlopingCeiling
{
    /// <summary>What it is called; empty for "ceiling 1".</summary>
    public string Name { get; init; } = "";

    /// <summary>Which storey it closes: its heights are measured from that storey's finished floor.</summary>
    public Storey Storey { get; init; }

    /// <summary>The first place and the height there.</summary>
    public CeilingPoint First { get; init; } = new();

    /// <summary>The second place, straight up or down the slope from the first; its height may be left out when the pitch is given.</summary>
    public CeilingPoint Second { get; init; } = new();

    /// <summary>Pitch, degrees, rising from the first place to the second; null when the second height is given.</summary>
    public double? Pitch { get; init; }

    /// <summary>Distance between the two places in plan, mm.</summary>
    public double Apart => First.At.DistanceTo(Second.At);

    /// <summary>Rise of the plane per mm from the first place towards the second.</summary>
    public double Slope => Pitch is { } pitch ? Angle.FromDegrees(pitch).Tangent : (Second.Height.Mean - First.Height.Mean) / Apart;

    /// <summary>Its name, or "ceiling" and its number.</summary>
    public string Words(int index) => Name.Length > 0 ? Name : $"ceiling {Number.Print(index + 1, 0)}";
}

/// <summary>A place in the room and the height of the ceiling over it.</summary>
public sealed record CeilingPoint
{
    /// <summary>Along the first wall, mm.</summary>
    public double Along { get; init; }

    /// <summary>Out from the first wall, mm.</summary>
    public double Out { get; init; }

    /// <summary>Height above the storey's finished floor, mm.</summary>
    public Readings Height { get; init; } = Readings.None;

    /// <summary>The place in the room's frame.</summary>
    internal Point2 At => new(Along, Out);
}

/// <summary>A storey.</summary>
public enum Storey
{
    /// <summary>Where the stair arrives: seen through the well and over the upper floor.</summary>
    Upper,

    /// <summary>Where it starts: over everything in the room.</summary>
    Lower,
}
