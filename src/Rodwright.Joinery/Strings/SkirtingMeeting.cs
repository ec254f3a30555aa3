using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Joinery.Strings;

/// <summary>How the foot of a wall string is cut so that its top edge meets the skirting's.</summary>
/// <param name="Upper">The upper edge, with an easing into the skirting's level where there is one.</param>
/// <param name="FloorAt">Station at which the cut arrives at the floor.</param>
/// <param name="Easing">That easing; null for none.</param>
internal sealed record SkirtingMeeting(Path2 Upper, double FloorAt, Easing? Easing)
{
    // Level cut that must be left on the floor in front of the lower edge, and straight edge beside an easing, mm.
    private const double Left = 5;

    /// <summary>Cuts a foot.</summary>
    /// <param name="practice">Sizes and habits.</param>
    /// <param name="upper">Upper edge, from where it has come down to the skirting, or in front of the first nosing.</param>
    /// <param name="floor">Height of the floor.</param>
    /// <param name="lowerStart">Station at which the lower edge leaves the floor.</param>
    public static SkirtingMeeting Of(Practice practice, Path2 upper, double floor, double lowerStart)
    {
        var (start, edge) = (upper.Vertices[0].At, upper.Edge(0));
        var pitch = (edge.To - edge.From).Direction - 2 * Angle.Atan(edge.Bulge);
        var height = start.Y - floor;
        if (practice.SkirtingJoint == SkirtingJoint.Mitred && height > Tolerance.Same && start.X + height * Angle.Tan(pitch / 2) is var mitre && mitre < lowerStart - Left) return new(upper, mitre, null);
        // A skirting higher than the string has no top edge to meet.
        var reach = Math.Min(practice.SkirtingEasing, edge.From.DistanceTo(edge.To) - Left);
        if (practice.SkirtingJoint != SkirtingJoint.Eased || edge.Bulge != 0 || reach < 1 || height < practice.SkirtingAt(floor) - Tolerance.Joint) return new(upper, start.X, null);
        var along = (edge.To - edge.From).Unit;
        var eased = new Path2([new(start - new Vector2(reach, 0), Angle.Tan(pitch / 4)), new(start + reach * along), .. upper.Vertices.Skip(1)], false);
        return new(eased, start.X - reach, new("upper", start, reach, reach / Angle.Tan(pitch / 2), Angle.FromRadians(pitch)));
    }
}
