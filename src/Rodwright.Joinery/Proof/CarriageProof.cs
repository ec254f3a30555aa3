using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Proof;

/// <summary>Proves carriages: risers on their upper edge, brackets against their side and tight under the treads.</summary>
internal static class CarriageProof
{
    // Less wood than this in common is no joint, square mm.
    private const double LeastLap = 100;

    /// <summary>The bracket's back in the plane of the carriage's face, lapping it.</summary>
    public static JointProof Beside(Joint joint, Part bracket, Part carriage)
    {
        var frame = carriage.FaceSide.Frame;
        var gap = Math.Abs(frame.ToLocal(bracket.FaceSide.Frame.ToWorld(Point2.Origin, -bracket.FaceSide.Thickness)).W);
        var ring = bracket.FaceSide.Outline.Flattened().Select(p => frame.ToLocal(bracket.FaceSide.Frame.ToWorld(p)).Face).ToList();
        var laps = ConvexClip.Area(ConvexClip.Inside(carriage.FaceSide.Outline.Flattened(), ring)) > LeastLap;
        return new(joint.Id, "nailed", bracket.Id, carriage.Id, laps ? gap : double.PositiveInfinity, 0, 0, "", laps && gap <= Tolerance.Joint);
    }

    /// <summary>The bracket's top at the tread's underside, under the tread.</summary>
    public static JointProof UnderTread(Joint joint, Part bracket, Prism tread)
    {
        var body = UprightBody.Of(bracket);
        var inside = ConvexClip.Inside(tread.Plan, body.Plan);
        var gap = inside.Count >= 3 && ConvexClip.Area(inside) > LeastLap ? Math.Abs(body.High - tread.Bottom) : double.PositiveInfinity;
        return new(joint.Id, "tight under", bracket.Id, tread.Part.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }

    /// <summary>The riser's lower back edge on the carriage's upper one.</summary>
    public static JointProof UnderRiser(Joint joint, Part carriage, Prism riser)
    {
        var face = carriage.FaceSide;
        // Of a riser square to the flight both edges lie level across it: the one further up the stair.
        var along = riser.Plan.Select(p => face.Frame.ToLocal(new(p.X, p.Y, 0)).Face.X).ToList();
        var up = face.Outline.Vertices.MaxBy(v => v.At.Y).At.X > face.Outline.Vertices.MinBy(v => v.At.Y).At.X;
        var gap = face.Outline.DistanceTo(new(up ? along.Max() : along.Min(), riser.Bottom - face.Frame.Origin.Z));
        return new(joint.Id, "on the carriage", carriage.Id, riser.Part.Id, gap, 0, 0, "", gap <= Tolerance.Joint);
    }
}
