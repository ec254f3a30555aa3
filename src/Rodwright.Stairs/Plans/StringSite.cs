using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>
/// Where a string board stands: its visible face is the vertical plane through <see cref="Face"/>, developed with s along it and z up.
/// Wall strings count s from their first riser's face (a wall string round a corner counts on through the corner); newel strings from the lower newel's centre.
/// </summary>
/// <param name="Id">Stable id, for example wall-string-1.</param>
/// <param name="Name">In words.</param>
/// <param name="Mark">W1, W2 ... for wall strings, F1, F2 ... (front) for newel strings.</param>
/// <param name="IsWall">Against a wall, or between newels.</param>
/// <param name="Inner">On the side the stair turns to.</param>
/// <param name="Face">The face's line in plan, directed up the stair; s is its station.</param>
/// <param name="Thickness">Thickness of the board, mm.</param>
/// <param name="Width">Width of the stock, mm.</param>
/// <param name="Lower">Lower end.</param>
/// <param name="Upper">Upper end.</param>
public sealed record StringSite(
    string Id, string Name, string Mark, bool IsWall, bool Inner, Line2 Face, double Thickness, double Width, StringEnd Lower, StringEnd Upper)
{
    /// <summary>The first riser that may end on it or on the newel it begins with.</summary>
    public required int FirstRiser { get; init; }

    /// <summary>The last riser that may end on it or on the newel it ends with.</summary>
    public required int LastRiser { get; init; }

    /// <summary>Stations of its visible face in plan, from end to end, newels and the part beside a landing left out.</summary>
    public required (double From, double To) Reach { get; init; }

    /// <summary>Mirrored in the y axis.</summary>
    public StringSite Mirrored() => this with { Face = new(Face.Through.Mirrored, new(-Face.Along.X, Face.Along.Y)) };
}
