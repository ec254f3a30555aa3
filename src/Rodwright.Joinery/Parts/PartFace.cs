using Rodwright.Geometry;

namespace Rodwright.Joinery.Parts;

/// <summary>
/// One worked face of a part. The solid is what lies behind all its faces' outlines, each carried square in by its thickness, less the cuts.
/// </summary>
/// <param name="Looks">What the face is called: face side, top edge; for a newel the way it looks, S, E, N or W.</param>
/// <param name="Frame">u right, v up as one looks at the face, w out of it.</param>
/// <param name="Outline">Finished outline in the face's frame, anticlockwise.</param>
/// <param name="Thickness">How far the piece reaches behind the face, mm.</param>
public sealed record PartFace(string Looks, Frame3 Frame, Path2 Outline, double Thickness)
{
    /// <summary>The face of the mirrored part. Newel faces have u from 0 to their width and keep that; all others are mirrored about u = 0.</summary>
    public PartFace Mirrored(double width) => new(
        Looks switch { "E" => "W", "W" => "E", _ => Looks },
        new Frame3(Frame.ToWorld(new(width, 0)).Mirrored, -Frame.U.Mirrored, Frame.V.Mirrored),
        Outline.MapMirrored(p => new(width - p.X, p.Y)),
        Thickness);
}
