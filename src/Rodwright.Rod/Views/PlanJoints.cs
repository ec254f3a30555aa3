using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;

namespace Rodwright.Rod.Views;

/// <summary>The joints in plan, seen through the pieces that take them: housed ends, mortices, haunches, pegs, tenons, notches.</summary>
internal static class PlanJoints
{
    private static readonly Pen Pen = Pens.Hidden with { Width = 0.18 };

    /// <summary>Every cut of strings and newels as a dashed outline that carries its id.</summary>
    public static IEnumerable<Mark> Draw(Kit kit, Placement place)
    {
        foreach (var part in kit.Parts.Where(p => p.Kind is PartKind.WallString or PartKind.NewelString or PartKind.Newel))
        {
            foreach (var cut in part.Cuts)
                yield return place.Stroke(Shadow(part, cut), Pen, Layer.Hidden, ThingId.Of(part, cut));
        }
    }

    /// <summary>What a cut covers in plan: from its face as deep as it is cut; for a tenon the wood that is left behind its cheek.</summary>
    private static Path2 Shadow(Part part, Cut cut)
    {
        var face = part.Faces[cut.Face];
        var (box, outline) = (cut.Filled.Bounds, face.Outline.Bounds);
        // A seat may reach past the arris its housing runs out at.
        var (from, to) = (Math.Max(box.MinX, outline.MinX), Math.Min(box.MaxX, outline.MaxX));
        var (near, far) = cut.Kind == CutKind.TenonCheek ? (cut.Depth, face.Thickness) : (0, Math.Min(cut.Depth, face.Thickness));
        return Path2.Polygon(At(from, near), At(to, near), At(to, far), At(from, far));

        Point2 At(double u, double depth) => face.Frame.ToWorld(new(u, 0), -depth).Plan;
    }
}
