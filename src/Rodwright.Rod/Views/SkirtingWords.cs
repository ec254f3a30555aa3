using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>How a wall string meets the skirtings of the floors at its ends, in words for its drawing and the parts list.</summary>
internal static class SkirtingWords
{
    public static IEnumerable<string> Of(Stair stair, StringBoard board)
    {
        var (practice, units, site) = (stair.Job.Practice, stair.Units, board.Site);
        if (site.Lower.Kind == StringEndKind.Foot)
        {
            var (top, floor) = (board.UpperEdge.Vertices[0], board.LowerEdge.Vertices[0].At);
            var height = units.Print(top.At.Y - site.Lower.Level);
            if (practice.SkirtingJoint == SkirtingJoint.Mitred && floor.X > top.At.X + Tolerance.Joint)
                yield return $"foot mitred {Number.Print(Angle.OfPitch(floor.X - top.At.X, top.At.Y - site.Lower.Level).Degrees, 2)}° off plumb with a skirting {height} high";
            else if (practice.SkirtingJoint == SkirtingJoint.Eased && top.Bulge != 0) yield return $"foot eased level to a skirting {height} high";
            else yield return $"foot plumb at a skirting {height} high";
        }
        if (site.Upper.Kind == StringEndKind.Head) yield return $"head level at a skirting {units.Print(practice.SkirtingAt(site.Upper.Level))} high";
    }
}
