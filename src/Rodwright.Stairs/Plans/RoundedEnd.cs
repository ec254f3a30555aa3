using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>
/// The rounded end of a bottom step in plan: the first riser's face runs on in front of the newel, turns a quarter circle back and ends on the newel's front face. World frame, the first flight climbing +y.
/// </summary>
/// <param name="Newel">Id of the newel behind it.</param>
/// <param name="Inner">Whether it is on the inner side.</param>
/// <param name="Centre">Centre of the quarter circle.</param>
/// <param name="Radius">Of the riser's face, mm.</param>
/// <param name="Out">Unit direction along the riser, out of the stair.</param>
/// <param name="Back">How far the newel's front face stands behind the riser's face, mm.</param>
/// <param name="NewelFace">The newel's front face, from the arris further out to the one at the stair.</param>
public sealed record RoundedEnd(string Newel, bool Inner, Point2 Centre, double Radius, Vector2 Out, double Back, BoundaryEdge NewelFace)
{
    private static readonly Vector2 Up = new(0, 1);

    /// <summary>Where the riser's face springs: from here on it bends.</summary>
    public Point2 Spring => Front(0);

    /// <summary>
    /// The line of the end, from the newel's face round to the spring, a distance in front of the riser's face or, negative, behind it: the return, straight, then the quarter circle.
    /// </summary>
    /// <param name="offset">In front of the riser's face, mm: the nosing, or less the veneer for the block.</param>
    /// <param name="past">How far the return runs on past the newel's face, mm.</param>
    public Path2 Line(double offset, double past = 0)
    {
        var turned = Centre + (Radius + offset) * Out;
        // Out to front: anticlockwise on the left of the stair, clockwise on its right.
        var quarter = Out.Cross(-Up) * Angle.Tan(Math.PI / 8);
        var end = turned + (Back - Radius + past) * Up;
        Vertex2[] bend = [new(turned, quarter), new(Front(offset))];
        return new(end.IsSame(turned) ? bend : [new(end), .. bend], false);
    }

    /// <summary>The spring carried to a distance in front of the riser's face or, negative, behind it.</summary>
    public Point2 Front(double offset) => Centre - (Radius + offset) * Up;

    /// <summary>Length of a line round the end, from the newel's face to the spring, mm: the development of what is bent there.</summary>
    /// <param name="offset">In front of the riser's face; half the veneer behind it for the middle of the veneer.</param>
    public double Development(double offset) => Back - Radius + (Radius + offset) * Math.PI / 2;

    /// <summary>Mirrored in the y axis.</summary>
    public RoundedEnd Mirrored() => this with { Centre = Centre.Mirrored, Out = new(-Out.X, Out.Y), NewelFace = NewelFace.Mirrored() };

    /// <summary>The end at one side of a shape; null where it has none.</summary>
    internal static RoundedEnd? At(PlanShape shape, Hand side)
    {
        if (!shape.IsRounded(side)) return null;
        var practice = shape.Job.Practice;
        var (h, leg) = (shape.HalfNewel, shape.Legs[0]);
        Vector2 outward = side == Hand.Left ? new(-1, 0) : new(1, 0);
        var back = shape.Foot(side) - h;
        var radius = shape.Job.BottomStep.Radius ?? back;
        var centre = leg.At(shape.CentreX(side), leg.Start);
        // The nosing of the return ends its housing where the cover to the newel's arris begins.
        var face = centre + Reach(practice) * outward;
        var far = centre + back * leg.Along + h * outward;
        return new(Ids.Bottom(side), side == Hand.Left, face - radius * outward + radius * leg.Along, radius, outward, back,
            new(far, far - 2 * h * outward, BoundaryKind.NewelFace, Ids.Bottom(side), "S"));
    }

    /// <summary>How far outside the newel's centre line the return's face stands, mm; negative inside it.</summary>
    internal static double Reach(Practice practice) => practice.Newel / 2 - practice.Cover - practice.Nosing;
}
