using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Proposals;

/// <summary>What the tapered steps of a turn measure at one offset of its risers, mm.</summary>
/// <param name="Going">Least going on the walking line, by the regulation's measure.</param>
/// <param name="Longest">Longest going on any measuring line.</param>
/// <param name="Outer">Least going on the outer measuring line; infinite where there is none.</param>
/// <param name="Faces">Narrowest end along the faces.</param>
/// <param name="Straight">Narrowest end straight across.</param>
internal readonly record struct TurnMeasure(double Going, double Longest, double Outer, double Faces, double Straight)
{
    public static TurnMeasure Of(TurnSite site, TurnMethod method, TurnSetting setting, GoingMeasure measure, double? secondRadius)
    {
        var lines = method.Lines(site, setting);
        var path = WalkingPath.Of(site, setting.First, setting.Last);
        var second = secondRadius is { } radius ? new WalkingPath(radius, setting.First, setting.Last, site.Quarters) : null;
        var (going, longest, outer, faces, straight) = (double.PositiveInfinity, 0.0, double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        for (var j = 1; j < lines.Count; j++)
        {
            var (a, b) = (lines[j - 1], lines[j]);
            var own = measure == GoingMeasure.Chord ? a.Walking.DistanceTo(b.Walking) : path.StationOf(b.Walking) - path.StationOf(a.Walking);
            (going, longest) = (Math.Min(going, own), Math.Max(longest, own));
            faces = Math.Min(faces, site.OnNarrowLine(b.Inner) - site.OnNarrowLine(a.Inner));
            straight = Math.Min(straight, a.Inner.DistanceTo(b.Inner));
            if (second is null) continue;
            var far = On(a).DistanceTo(On(b));
            (outer, longest) = (Math.Min(outer, far), Math.Max(longest, far));
        }
        return new(going, longest, outer, faces, straight);

        Geometry.Point2 On(TurnLine line) => second!.Crossing(Geometry.Line2.Between(line.Inner, line.Outer)) ?? line.Outer;
    }
}
