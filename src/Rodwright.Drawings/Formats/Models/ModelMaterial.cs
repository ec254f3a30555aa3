namespace Rodwright.Drawings.Formats.Models;

/// <summary>What a piece looks to be made of: a plain, dull colour. Materials of one name and colour become one.</summary>
/// <param name="Name">As on the list of parts.</param>
/// <param name="Red">Linear, 0 to 1.</param>
/// <param name="Green">Linear, 0 to 1.</param>
/// <param name="Blue">Linear, 0 to 1.</param>
public sealed record ModelMaterial(string Name, double Red, double Green, double Blue);
