namespace Rodwright.Rod.Tables;

/// <summary>One point to mark on a part, from two datum edges.</summary>
/// <param name="Mark">Mark of the part.</param>
/// <param name="Part">Its name.</param>
/// <param name="Face">The face it is marked on.</param>
/// <param name="Feature">What is marked: "riser 3", "upper edge", "mortice".</param>
/// <param name="Point">Which point of it.</param>
/// <param name="Along">mm along the board from its left end, or of a newel's face from its left arris.</param>
/// <param name="Across">mm up from the board's lower edge, of a tread or nosing piece from its nosing, or of a newel up from its foot.</param>
/// <param name="Station">For strings: s on the development, mm.</param>
/// <param name="Height">For strings and newels: height above the lower floor, mm.</param>
/// <param name="Depth">Of the recess, mm; null for lines and outlines.</param>
public sealed record Ordinate(
    string Mark, string Part, string Face, string Feature, string Point, double Along, double Across, double? Station, double? Height, double? Depth);
