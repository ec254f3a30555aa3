using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Pieces;

/// <summary>One end of a riser.</summary>
/// <param name="Bevel">Angle off square at which it meets the face.</param>
/// <param name="Depth">How deep it is let in, mm; 0 where it butts.</param>
/// <param name="Left">Thickness left at full depth, t / cos a - d tan a, mm.</param>
/// <param name="Face">Place of the face it enters along the riser's face, mm from the board's left end.</param>
internal sealed record RiserEnd(Angle Bevel, double Depth, double Left, double Face)
{
    public bool IsBevelled => Bevel.Degrees > 1e-6;

    /// <summary>The ends of a riser: at the board's left and at its right.</summary>
    public static (RiserEnd Left, RiserEnd Right) Of(Stair stair, Part riser)
    {
        var line = stair.Plan.Riser(riser.Step);
        var ends = new[] { At(stair, riser, stair.Plan.Inner, line.Inner, line), At(stair, riser, stair.Plan.Outer, line.Outer, line) }
            .OrderBy(e => e.Face).ToArray();
        return (ends[0], ends[1]);
    }

    private static RiserEnd At(Stair stair, Part riser, Boundary boundary, Point2 p, RiserLine line)
    {
        var practice = stair.Job.Practice;
        // At a corner between two faces the section lies on the later one, behind the riser's face.
        var edge = boundary.Edges.Where(e => e.Kind != BoundaryKind.NewelJog && e.Length > Tolerance.Same)
            .OrderBy(e => Math.Round(Off(e, p), 5)).ThenByDescending(e => boundary.Edges.IndexOf(e)).First();
        var bevel = Angle.FromRadians(Angle.Asin(Math.Abs(line.Line.Along.Dot(edge.Along))));
        var depth = edge.Kind switch { BoundaryKind.StringFace => practice.Housing, BoundaryKind.NewelFace => practice.NewelHousing, _ => 0 };
        var face = riser.FaceSide.Frame.ToLocal(new(p.X, p.Y, 0)).Face.X - riser.Blank.Corner.X;
        return new(bevel, depth, practice.Riser / bevel.Cosine - depth * bevel.Tangent, face);
    }

    private static double Off(BoundaryEdge edge, Point2 p) => Path2.Polyline(edge.From, edge.To).DistanceTo(p);
}
