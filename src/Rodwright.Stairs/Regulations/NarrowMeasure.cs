namespace Rodwright.Stairs.Regulations;

/// <summary>Which narrow end a regulation limits.</summary>
public enum NarrowMeasure
{
    /// <summary>Going along the newel's faces and the string's face.</summary>
    AlongFaces,

    /// <summary>Going straight across, corner to corner.</summary>
    Straight,

    /// <summary>Width of the tread: along the faces and the nosing.</summary>
    TreadWidth,
}
