using Rodwright.Geometry;

namespace Rodwright.Joinery.Parts;

/// <summary>One cut in a face of a part, square to that face.</summary>
/// <param name="Id">Unique in the part.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Face">Index of the face it is cut in.</param>
/// <param name="Shape">Outline in the face's frame (closed; for a rounded edge the open line along the edge).</param>
/// <param name="Depth">How far it reaches behind the face, mm; for a rounded edge its radius.</param>
/// <param name="Joint">Id of the joint it belongs to; empty for none.</param>
/// <param name="Seat">For housings: the outline the piece itself fills, without wedge space; null when that is the whole shape.</param>
/// <param name="Note">What a joiner should know, in bench words; empty for nothing.</param>
public sealed record Cut(string Id, CutKind Kind, int Face, Path2 Shape, double Depth, string Joint = "", Path2? Seat = null, string Note = "")
{
    /// <summary>How far behind the face it begins, mm: 0 for a cut in the face itself, more for a groove in the middle of an edge or what is cut from the back.</summary>
    public double Beneath { get; init; }

    /// <summary>The outline the piece in the joint fills.</summary>
    public Path2 Filled => Seat ?? Shape;

    /// <summary>The cut of the mirrored part: what lay at u lies at <paramref name="width"/> - u.</summary>
    public Cut Mirrored(double width) => this with { Shape = Flip(Shape, width), Seat = Seat is null ? null : Flip(Seat, width) };

    private static Path2 Flip(Path2 path, double width) => path.MapMirrored(p => new(width - p.X, p.Y));
}
