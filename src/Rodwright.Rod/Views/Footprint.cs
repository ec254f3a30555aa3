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
        return Upright(part, box.MinX, box.MaxX);
    }

    /// <summary>An upright piece between two stations of its face side.</summary>
    public static Path2 Upright(Part part, double from, double to)
    {
        var face = part.FaceSide;
        return Path2.Polygon(At(from, -face.Thickness), At(to, -face.Thickness), At(to, 0), At(from, 0));

        Point2 At(double u, double w) => face.Frame.ToWorld(new(u, 0), w).Plan;
    }
}
