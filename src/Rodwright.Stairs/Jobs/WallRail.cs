namespace Rodwright.Stairs.Jobs;

/// <summary>Handrails on brackets along the walls.</summary>
public sealed record WallRail
{
    /// <summary>Where there are any; default where the regulation asks for a handrail that no open side has.</summary>
    public WallRailWanted Wanted { get; init; } = WallRailWanted.Asked;

    /// <summary>Its section; default 45 x 45 (common practice).</summary>
    public Section Section { get; init; } = new(45, 45);

    /// <summary>Clear between the rail and the wall, mm; default 50 (common practice: room for a hand).</summary>
    public double Clear { get; init; } = 50;

    /// <summary>Greatest distance between brackets along the rail, mm; default 900 (common practice).</summary>
    public double Brackets { get; init; } = 900;

    /// <summary>From each end of the rail to its first bracket, mm; default 150 (common practice).</summary>
    public double FromEnd { get; init; } = 150;

    /// <summary>Thickness of a bracket's block, mm; default 45 (common practice).</summary>
    public double Bracket { get; init; } = 45;
}

/// <summary>Where wall rails are made.</summary>
public enum WallRailWanted
{
    /// <summary>Where the regulation asks for one.</summary>
    Asked,

    /// <summary>On every wall beside a flight.</summary>
    Always,

    /// <summary>Nowhere.</summary>
    Never,
}
