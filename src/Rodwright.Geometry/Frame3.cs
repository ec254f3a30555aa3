namespace Rodwright.Geometry;

/// <summary>
/// A right-handed frame in the world: u to the right and v up on a face as somebody looks at it, w out of the face towards them.
/// Axes are unit vectors, square to one another.
/// </summary>
public readonly record struct Frame3
{
    /// <summary>A frame from its origin and its first two axes; the third follows.</summary>
    public Frame3(Point3 origin, Vector3 u, Vector3 v)
    {
        Origin = origin;
        U = u;
        V = v;
        W = u.Cross(v);
    }

    /// <summary>Where u = v = w = 0.</summary>
    public Point3 Origin { get; }

    /// <summary>Right, as looked at.</summary>
    public Vector3 U { get; }

    /// <summary>Up, as looked at.</summary>
    public Vector3 V { get; }

    /// <summary>Out of the face, towards the one who looks.</summary>
    public Vector3 W { get; }

    /// <summary>A point of this frame in the world.</summary>
    public Point3 ToWorld(Point2 uv, double w = 0) => Origin + uv.X * U + uv.Y * V + w * W;

    /// <summary>A point of the world in this frame: (u, v) and w.</summary>
    public (Point2 Face, double W) ToLocal(Point3 p)
    {
        var d = p - Origin;
        return (new(d.Dot(U), d.Dot(V)), d.Dot(W));
    }

    /// <summary>
    /// The frame of the mirrored piece (world mirrored in x = 0), right-handed again: what lay at u lies at -u.
    /// </summary>
    public Frame3 Mirrored => new(Origin.Mirrored, -U.Mirrored, V.Mirrored);

    /// <summary>Origin and axes, for debugging. (The record's own would follow the mirrored frame without end.)</summary>
    public override string ToString() => $"{Origin}: {U} {V}";
}
