namespace Rodwright.Geometry.Solids;

/// <summary>Faces in small patches that meet edge to edge, as half-edges.</summary>
internal sealed class FacePatches
{
    /// <summary>The plane of a patch: a point, another that lies far along it, and the unit normal outwards.</summary>
    public readonly record struct Plane(Point3 At, Point3 Far, Vector3 Normal);

    /// <summary>Corners.</summary>
    public List<Point3> Points { get; } = [];

    /// <summary>Half-edges, each with the patch on its left as seen from outside.</summary>
    public List<(int From, int To, int Patch)> Halves { get; } = [];

    /// <summary>The plane of each patch.</summary>
    public List<Plane> Planes { get; } = [];
}
