using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs;

/// <summary>Rough strings under straight flights that are too wide for their two strings alone, with brackets up to the treads (trade-practice.md 4c).</summary>
public sealed record Carriage
{
    /// <summary>Clear width over which a flight gets one, and two over twice as much, mm; default 900.</summary>
    public double Over { get; init; } = 900;

    /// <summary>Its section; default 50 x 100 (common practice: sized like a joist of the span).</summary>
    public Board Section { get; init; } = new(50, 100);

    /// <summary>Thickness of the brackets on its side, mm; default 25 (common practice).</summary>
    public double Bracket { get; init; } = 25;

    /// <summary>What is taken where a job says nothing but that it wants them.</summary>
    public static Carriage Usual(Units units) => units.IsInches ? InchBalustrade.Carriage : new();

    /// <summary>How many carriages a flight of a clear width gets.</summary>
    /// <param name="clear">Between the strings' faces, mm.</param>
    public int For(double clear) => Math.Max(0, (int)Math.Ceiling(clear / Over - Tolerance.Same) - 1);
}
