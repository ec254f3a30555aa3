using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;

namespace Rodwright.Joinery.Tests.Surveys;

/// <summary>The nosings' edges as the solids of treads and nosing pieces have them, with the pitch line drawn over two of them: nothing of the plan's own surfaces is asked.</summary>
internal static class SolidNosings
{
    /// <summary>The front edge of every step and of the upper floor, by number of the step; each line directed so that the stair climbs to its left, with its height.</summary>
    public static IReadOnlyDictionary<int, (Line2 Front, double Height, Point2 Middle)> Of(Stair stair)
    {
        var fronts = new Dictionary<int, (Line2, double, Point2)>();
        foreach (var solid in KitSolids.Of(stair.Kit))
        {
            if (solid.Part.Kind is not (PartKind.Tread or PartKind.TaperedTread or PartKind.NosingPiece)) continue;
            var step = int.Parse(solid.Part.Mark[1..], System.Globalization.CultureInfo.InvariantCulture);
            var up = stair.Plan.Riser(step).Up;
            var corners = solid.InWorld.Vertices;
            var foremost = corners.MinBy(v => (v.Plan - Point2.Origin).Dot(up));
            var front = corners.Where(v => (v.Plan - foremost.Plan).Dot(up) < 1e-6).Select(v => v.Plan).OrderBy(p => (p - Point2.Origin).Dot(up.Right)).ToList();
            fronts[step] = (new(foremost.Plan, up.Right), corners.Max(v => v.Z), front[0].Towards(front[^1], 0.5));
        }
        return fronts;
    }

    /// <summary>
    /// Height of the pitch over a place between two nosings: in proportion to the distances of parallel ones, and to the angles about the place where
    /// others meet (setting-out.md 8).
    /// </summary>
    public static double PitchAt((Line2 Front, double Height, Point2 Middle) low, (Line2 Front, double Height, Point2 Middle) high, Point2 at)
    {
        if (low.Front.Cross(high.Front) is not { } apex || Math.Abs(low.Front.Along.Cross(high.Front.Along)) < 1e-9)
        {
            var (behind, before) = (low.Front.LeftOf(at), -high.Front.LeftOf(at));
            return low.Height + (high.Height - low.Height) * behind / (behind + before);
        }
        var (from, to, here) = ((low.Middle - apex).Unit, (high.Middle - apex).Unit, (at - apex).Unit);
        return low.Height + (high.Height - low.Height) * Between(from, here) / Between(from, to);
    }

    /// <summary>Signed angle between two unit directions, by the half-angle of their sum and difference: another way than the plan's.</summary>
    private static double Between(Vector2 a, Vector2 b) => 2 * Angle.Atan2((b - a).Length, (a + b).Length) * Math.Sign(a.Cross(b));
}
