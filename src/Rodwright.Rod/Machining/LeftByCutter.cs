using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Machining;

/// <summary>What a round cutter leaves in one place of a part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Face">Index of the face.</param>
/// <param name="Layer">Layer of the cut, without the face.</param>
/// <param name="Cut">The cut; null where it is the outline.</param>
/// <param name="Kind">What is to be done about it.</param>
/// <param name="At">Its corner, else its middle, in the part's drawing.</param>
/// <param name="Opening">The corner's angle; null where there is not just one.</param>
/// <param name="Away">How far the cutter stays out of it, mm; infinite where it does not go into the cut at all.</param>
/// <param name="Shape">What is left, in the part's drawing.</param>
public sealed record LeftByCutter(Part Part, int Face, string Layer, Cut? Cut, LeftKind Kind, Point2 At, Angle? Opening, double Away, Path2 Shape)
{
    /// <summary>mm².</summary>
    public double Area => Math.Abs(Shape.Area);

    /// <summary>Where the cutter's own arc begins, mm along either side from the corner: r / tan(a/2), or where the side ends before that; null where there is not just one corner.</summary>
    public double? ArcBegins(double cutter) => Opening is { } a ? cutter / 2 / Angle.Tan(a.Radians / 2) : null;

    /// <summary>What it is for the bench.</summary>
    public string ToDo => Kind switch
    {
        LeftKind.Square => "square by hand",
        LeftKind.MayStay => "may stay round",
        LeftKind.Narrow => "cutter does not go in",
        LeftKind.TightArc => "arc tighter than the cutter",
        LeftKind.NotFollowed => "edges all but touch: look before cutting",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
