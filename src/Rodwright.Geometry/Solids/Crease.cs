namespace Rodwright.Geometry.Solids;

/// <summary>
/// Tells an arris from the joint between two chords of a round: faces that meet at less than 25° are one round surface. Rounds of 2 mm and more drawn within 0.03 mm
/// turn by less; a wedge of 1 in 14 turns by 4°, but its neighbours are square to it, not in line with it.
/// </summary>
internal static class Crease
{
    // cos 25°
    private const double LeastCosine = 0.90630778703665;

    /// <summary>Whether two faces that share an edge or a corner belong to one round surface.</summary>
    public static bool IsSmooth(SolidFace a, SolidFace b) => a.Normal.Dot(b.Normal) > LeastCosine;
}
