using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>The body of a string or newel in plan, in its face's frame: along u, and behind the face as negative y; tenons left out.</summary>
internal static class CarrierBody
{
    public static Box2 Of(Part carrier)
    {
        var face = carrier.FaceSide;
        var bounds = face.Outline.Bounds;
        var (from, to) = (bounds.MinX, bounds.MaxX);
        foreach (var cheek in carrier.Cuts.Where(c => c.Kind == CutKind.TenonCheek).Select(c => c.Shape.Bounds))
        {
            if (Math.Abs(cheek.MinX - from) < Tolerance.Joint) from = cheek.MaxX;
            if (Math.Abs(cheek.MaxX - to) < Tolerance.Joint) to = cheek.MinX;
        }
        return new(from, -face.Thickness, to, 0);
    }
}
