using Rodwright.Geometry;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Scenes;

/// <summary>Tells whether a patch of a face is whole wood, free of cuts.</summary>
internal sealed class ClearWood(Part part)
{
    /// <summary>Wood that must remain round the patch, mm.</summary>
    private const double Round = 1.5;

    /// <summary>Whether the rectangle from a corner lies on the face's wood: looked at on a grid no coarser than 8 mm.</summary>
    /// <param name="face">A face of the part.</param>
    /// <param name="corner">Lower left corner, in the face's frame.</param>
    /// <param name="right">Unit direction of its width.</param>
    /// <param name="up">Unit direction of its height.</param>
    /// <param name="width">mm.</param>
    /// <param name="height">mm.</param>
    public bool Holds(PartFace face, Point2 corner, Vector2 right, Vector2 up, double width, double height)
    {
        var index = part.Faces.IndexOf(face);
        var cuts = part.Cuts.Where(c => c.Face == index && c.Beneath == 0 && c.Kind != CutKind.RoundedEdge).ToList();
        var (across, upward) = ((int)Math.Ceiling(width / 8), (int)Math.Ceiling(height / 8));
        for (var i = 0; i <= across; i++)
        {
            for (var k = 0; k <= upward; k++)
            {
                var p = corner + width * i / across * right + height * k / upward * up;
                if (!face.Outline.Holds(p) || cuts.Exists(c => IsNear(c, p))) return false;
            }
        }
        return true;
    }

    private static bool IsNear(Cut cut, Point2 p)
    {
        var box = cut.Shape.Bounds.Grown(Round);
        return p.X > box.MinX && p.X < box.MaxX && p.Y > box.MinY && p.Y < box.MaxY && (cut.Shape.Holds(p) || cut.Shape.DistanceTo(p) < Round);
    }
}
