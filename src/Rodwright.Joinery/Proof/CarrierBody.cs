using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>The body of a string or newel in plan, in its face's frame: along u, and behind the face as negative y; tenons left out.</summary>
internal static class CarrierBody
{
    /// <summary>What there is of one face of a newel: all of it, or the half that a split leaves.</summary>
    public static Box2 OnFace(Part newel, int face)
    {
        var (bounds, frame) = (newel.Faces[face].Outline.Bounds, newel.Faces[face].Frame);
        if (newel.Cuts.FirstOrDefault(c => c.Kind == CutKind.Split) is not { } split) return bounds;
        var along = newel.Faces[split.Face].Frame.W.Dot(frame.U);
        return along > 0.5 ? bounds with { MaxX = bounds.MaxX - split.Depth } : along < -0.5 ? bounds with { MinX = bounds.MinX + split.Depth } : bounds;
    }

    public static Box2 Of(Part carrier)
    {
        var face = carrier.FaceSide;
        var bounds = face.Outline.Bounds;
        var (from, to) = (bounds.MinX, bounds.MaxX);
        foreach (var cheek in carrier.Cuts.Where(c => c.Kind is CutKind.TenonCheek or CutKind.Cheek).Select(c => c.Shape.Bounds))
        {
            if (Math.Abs(cheek.MinX - from) < Tolerance.Joint) from = cheek.MaxX;
            if (Math.Abs(cheek.MaxX - to) < Tolerance.Joint) to = cheek.MinX;
        }
        var box = new Box2(from, -face.Thickness, to, 0);
        if (carrier.Cuts.FirstOrDefault(c => c.Kind == CutKind.Split) is not { } split) return box;
        var away = carrier.Faces[split.Face].Frame.W;
        var (u, w) = (away.Dot(face.Frame.U), away.Dot(face.Frame.W));
        return new(u < -0.5 ? from + split.Depth : from, w < -0.5 ? -face.Thickness + split.Depth : -face.Thickness, u > 0.5 ? to - split.Depth : to, w > 0.5 ? -split.Depth : 0);
    }
}
