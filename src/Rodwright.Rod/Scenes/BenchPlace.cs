using Rodwright.Geometry;

namespace Rodwright.Rod.Scenes;

/// <summary>Where something is pencilled on a part, in the frame of the part's first face, mm.</summary>
/// <param name="At">Where it begins: a mark's foot on the arris, or the lower left corner of letters.</param>
/// <param name="Right">Unit vector to the right, as one reads it.</param>
/// <param name="Up">Unit vector upwards on the surface; with <paramref name="Right"/> it lies in the surface, which looks along right × up.</param>
/// <param name="Height">mm of timber.</param>
/// <param name="Round">Radius of the round that the surface bends over away from the reader, beginning at the foot and going upwards; 0 for a flat surface.</param>
public sealed record BenchPlace(Point3 At, Vector3 Right, Vector3 Up, double Height, double Round = 0);
