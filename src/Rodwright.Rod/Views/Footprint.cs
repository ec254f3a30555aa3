using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Views;

/// <summary>What a part covers in plan, in the world's x and y.</summary>
public static class Footprint
{
    /// <summary>The outline in plan: a level piece by the outline of its face, an upright one by the length and thickness of its face side.</summary>
    public static Path2 Of(Part part)
    {
        var face = part.FaceSide;
        if (Math.Abs(face.Frame.W.Z) > 0.5)
        {
            Point2 Plan(Point2 p) => face.Frame.ToWorld(p).Plan;
            return face.Frame.W.Z > 0 ? face.Outline.Moved(Plan) : face.Outline.MapMirrored(Plan);
        }
        var box = face.Outline.Bounds;
        return part.Cuts.FirstOrDefault(c => c.Kind == CutKind.Split) is { } split ? Half(part, split) : Upright(part, box.MinX, box.MaxX);
    }

    /// <summary>What is left of a newel that was split: a stretch of its face as thick as the half, behind the face that looks the other way.</summary>
    private static Path2 Half(Part part, Cut split)
    {
        var away = part.Faces[split.Face].Frame.W;
        var front = part.Faces.First(f => f.Frame.W.Dot(away) < -0.5);
        var (box, thick) = (front.Outline.Bounds, front.Thickness - split.Depth);
        return Path2.Polygon(At(box.MinX, -thick), At(box.MaxX, -thick), At(box.MaxX, 0), At(box.MinX, 0));

        Point2 At(double u, double w) => front.Frame.ToWorld(new(u, 0), w).Plan;
    }

    /// <summary>An upright piece between two stations of its face side.</summary>
    public static Path2 Upright(Part part, double from, double to)
    {
        var face = part.FaceSide;
        return Path2.Polygon(At(from, -face.Thickness), At(to, -face.Thickness), At(to, 0), At(from, 0));

        Point2 At(double u, double w) => face.Frame.ToWorld(new(u, 0), w).Plan;
    }
}
