namespace Rodwright.Stairs.Jobs;

/// <summary>
/// The balustrade of open sides: handrails between newels, base rails on the strings, balusters, newel caps. Sizes are defaults of practice (trade-practice.md 4c); those it does not give are common
/// practice. The rail's height above the pitch line is <see cref="Practice.RailHeight"/>.
/// </summary>
public sealed record Balustrade
{
    /// <summary>Handrail; default 68 x 45, to match a newel's cap.</summary>
    public Section Rail { get; init; } = new(68, 45);

    /// <summary>Base rail, or capping, on the newel strings and along landings; default 62 x 32.</summary>
    public Section BaseRail { get; init; } = new(62, 32);

    /// <summary>Depth of the grooves for the balusters under the handrail and in the base rail, mm; default 8. They are as wide as a baluster.</summary>
    public double Groove { get; init; } = 8;

    /// <summary>Side of a square baluster, mm; default 41.</summary>
    public double Baluster { get; init; } = 41;

    /// <summary>Greatest clear gap between balusters, mm; null takes what the regulation's sphere does not pass, or 99 where the regulation says nothing.</summary>
    public double? Gap { get; init; }

    /// <summary>Greatest height a straight rail may stand above the wanted one over any nosing before it is reported, mm; default 25.</summary>
    public double Follow { get; init; } = 25;

    /// <summary>Height of a landing's handrail above its floor, mm; null takes <see cref="Practice.RailHeight"/>.</summary>
    public double? LandingHeight { get; init; }

    /// <summary>The rails' tenons.</summary>
    public RailTenon Tenon { get; init; } = new();

    /// <summary>Caps of the newels.</summary>
    public NewelCap Cap { get; init; } = new();

    /// <summary>The balustrade along the open edge of the upper floor.</summary>
    public UpperLanding UpperLanding { get; init; } = new();

    /// <summary>Handrails on walls.</summary>
    public WallRail WallRail { get; init; } = new();
}
