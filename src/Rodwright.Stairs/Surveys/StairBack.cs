using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Surveys;

/// <summary>One straight back of the stair in plan: what stands against a wall.</summary>
/// <param name="From">Lower end, in the world.</param>
/// <param name="To">Upper end.</param>
/// <param name="Outward">Unit direction out of the stair, square to it.</param>
/// <param name="String">Id of the string whose back it is; empty beside a landing.</param>
public sealed record StairBack(Point2 From, Point2 To, Vector2 Outward, string String)
{
    /// <summary>The backs on the walled sides of a stair, in climbing order, outer side first; corners mitred.</summary>
    public static ImmutableArray<StairBack> Of(StairPlan plan) =>
        [.. Along(plan, plan.Outer, plan.OuterThickness, plan.IsMirrored, walledOnly: true), .. Along(plan, plan.Inner, plan.InnerThickness, !plan.IsMirrored, walledOnly: true)];

    /// <summary>The outline a stair fills in plan on its outer side, walled or not: for placing what is measured over it.</summary>
    internal static IEnumerable<StairBack> OuterOf(StairPlan plan) => Along(plan, plan.Outer, plan.OuterThickness, plan.IsMirrored, walledOnly: false);

    private static IEnumerable<StairBack> Along(StairPlan plan, Boundary side, double usual, bool outwardIsLeft, bool walledOnly)
    {
        var faces = side.Edges.Where(e => e.Kind is BoundaryKind.StringFace or BoundaryKind.Wall && e.Length > Tolerance.Same)
            .Select(e => (Edge: e, Board: plan.Strings.FirstOrDefault(s => s.Id == e.Carrier))).Where(f => !walledOnly || f.Board is not { IsWall: false }).ToList();
        for (var i = 0; i < faces.Count; i++)
        {
            var (edge, line) = (faces[i].Edge, Back(faces[i]));
            var from = i > 0 && faces[i - 1].Edge.To.IsSame(edge.From) ? line.Cross(Back(faces[i - 1])) : null;
            var to = i + 1 < faces.Count && faces[i + 1].Edge.From.IsSame(edge.To) ? line.Cross(Back(faces[i + 1])) : null;
            yield return new(from ?? line.Through, to ?? line.At(edge.Length), outwardIsLeft ? edge.Along.Left : edge.Along.Right, edge.Carrier);
        }

        Line2 Back((BoundaryEdge Edge, StringSite? Board) face) =>
            new Line2(face.Edge.From, face.Edge.Along).OffsetLeft((outwardIsLeft ? 1 : -1) * (face.Board?.Thickness ?? usual));
    }
}
