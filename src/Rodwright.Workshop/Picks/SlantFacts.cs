using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>How a riser's ends meet what carries them: the slant, the thickness along the face, and what is left of it at full depth.</summary>
internal static class SlantFacts
{
    public static IEnumerable<Fact> Of(PickBench bench, Part part, RiserLine line)
    {
        foreach (var (boundary, end, side) in new[] { (bench.Plan.Inner, line.Inner, "inner"), (bench.Plan.Outer, line.Outer, "outer") })
        {
            if (EdgeAt(boundary, end) is not { } edge) continue;
            var across = Math.Abs(line.Line.Along.Cross(edge.Along));
            var angle = Angle.FromRadians(Angle.Acos(across));
            if (angle.Degrees < 0.005) continue;
            var (thick, practice) = (bench.Practice.Riser, bench.Practice);
            var depth = edge.Kind == BoundaryKind.NewelFace ? practice.NewelHousing : practice.Housing;
            yield return Facts.Degrees($"slant of its {side} end", angle.Degrees, Why.Rule("the angle between the riser's face and a line square to what carries it: its bevel"), "", Slope(line, edge));
            yield return bench.Mm($"thickness along the face, {side} end", thick / angle.Cosine, Why.Rule("a piece that meets a face at a slant is longer along it by 1 over the cosine of the slant"), "practice.riser", Working.Of(thick) / Working.Cos(angle));
            var left = thick / angle.Cosine - depth * angle.Tangent;
            yield return bench.Mm($"left at full depth, {side} end", Math.Max(0, left), Why.Rule($"housings are square to the face, so a slanting end is eased to stay within; {bench.Units.Print(practice.RiserEnd)} is wanted there"), "practice.riserEnd",
                Working.Of(thick) / Working.Cos(angle) - Working.Of(depth) * Working.Tan(angle));
        }
    }

    /// <summary>Ways the length of a slanting riser's board may come about: an end's far corner is its face's or its back's.</summary>
    public static IEnumerable<Working> Length(PickBench bench, Part part, RiserLine line)
    {
        var face = Working.Of(line.Inner.DistanceTo(line.Outer));
        foreach (var a in Beyond(bench, bench.Plan.Inner, line.Inner, line).ToList())
            foreach (var b in Beyond(bench, bench.Plan.Outer, line.Outer, line).ToList()) yield return face + a + b;
    }

    private static IEnumerable<Working> Beyond(PickBench bench, Boundary boundary, Point2 end, RiserLine line)
    {
        if (EdgeAt(boundary, end) is not { } edge) yield break;
        var angle = Angle.FromRadians(Angle.Acos(Math.Abs(line.Line.Along.Cross(edge.Along))));
        var depth = Working.Of(edge.Kind == BoundaryKind.NewelFace ? bench.Practice.NewelHousing : bench.Practice.Housing);
        if (angle.Degrees < 0.005)
        {
            yield return depth;
            yield break;
        }
        var back = Working.Of(bench.Practice.Riser) * Working.Tan(angle);
        yield return depth / Working.Cos(angle);
        yield return depth / Working.Cos(angle) + back;
        yield return depth * Working.Cos(angle);
        yield return depth * Working.Cos(angle) + back;
        yield return back;
        yield return back - depth * Working.Cos(angle);
    }

    /// <summary>The face a riser's end stands on.</summary>
    public static BoundaryEdge? EdgeAt(Boundary boundary, Point2 end)
    {
        foreach (var edge in boundary.Edges)
        {
            if (edge.Kind is BoundaryKind.NewelJog or BoundaryKind.Wall || edge.Length <= Tolerance.Same) continue;
            var along = (end - edge.From).Dot(edge.Along);
            if (Math.Abs(edge.Along.Cross(end - edge.From)) < 1e-6 && along > -1e-6 && along < edge.Length - 1e-6) return edge;
        }
        return null;
    }

    private static Working Slope(RiserLine line, BoundaryEdge edge)
    {
        var d = line.Outer - line.Inner;
        return Working.Atan(Working.Of(Math.Abs(d.Dot(edge.Along))) / Math.Abs(d.Cross(edge.Along)));
    }
}
