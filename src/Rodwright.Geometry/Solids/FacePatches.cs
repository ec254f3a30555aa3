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

    /// <summary>For each half-edge, the one that follows it round its patch.</summary>
    public List<int> Next { get; } = [];

    /// <summary>The plane of each patch.</summary>
    public List<Plane> Planes { get; } = [];

    /// <summary>Adds the half-edges of one closed run round a patch through these corners.</summary>
    public void AddRing(int patch, List<int> corners)
    {
        var start = Halves.Count;
        for (var i = 0; i < corners.Count; i++)
        {
            var last = i == corners.Count - 1;
            Halves.Add((corners[i], corners[last ? 0 : i + 1], patch));
            Next.Add(last ? start : Halves.Count);
        }
    }
}
