using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Steps;

/// <summary>
/// The first riser of a rounded bottom step as the flat board it is before it is bent, seen on its face from the foot of the stair: x from its left end, y up from the floor. The middle of the veneer neither
/// stretches nor is crushed, so lengths round the bend are measured there. Ends that enter a string are longer on the board than between the faces, by the depth of their housing.
/// </summary>
/// <param name="Length">Of the board, mm.</param>
/// <param name="Height">Of the board, mm.</param>
/// <param name="Thickness">Where it is not thinned, mm.</param>
/// <param name="Lines">What is squared across its face and back, from left to right.</param>
/// <param name="Edge">Its top edge seen from above, its face down: x as on the face, y from the face to the back.</param>
public sealed record FlatRiser(double Length, double Height, double Thickness, ImmutableArray<FlatRiserLine> Lines, Path2 Edge)
{
    /// <summary>The flat board of a bent riser.</summary>
    /// <param name="plan">The plan, with a rounded end at least.</param>
    /// <param name="riser">Its first riser, <see cref="PartKind.BentRiser"/>.</param>
    public static FlatRiser Of(StairPlan plan, Part riser)
    {
        var (step, length, thick) = (plan.Job.BottomStep, riser.Blank.Length, riser.Blank.Thickness);
        var lines = new List<FlatRiserLine>();
        var (left, right) = (0.0, 0.0); // how far it is thinned from each end
        foreach (var end in plan.RoundedEnds)
        {
            var isLeft = end.Out.X < 0;
            var bent = end.Development(-step.Veneer / 2);
            var thinned = bent + step.Thinned;
            var turned = end.Back - end.Radius;
            // A return without a straight piece begins to bend at its very end.
            if (turned > Tolerance.Joint) Add(turned, "the bend ends");
            Add(bent, "the bend begins");
            Add(thinned - step.Wedges, "slot of the wedges");
            Add(thinned, "thinned from here to the end");
            if (isLeft) left = thinned;
            else right = thinned;

            void Add(double fromEnd, string what) => lines.Add(new(isLeft ? fromEnd : length - fromEnd, what));
        }
        List<Point2> edge = [new(0, 0), new(length, 0)];
        edge.AddRange(right > 0 ? [new(length, step.Veneer), new(length - right, step.Veneer), new(length - right, thick)] : [new(length, thick)]);
        edge.AddRange(left > 0 ? [new(left, thick), new(left, step.Veneer), new(0, step.Veneer)] : [new(0, thick)]);
        return new(length, riser.Blank.Width, thick, [.. lines.OrderBy(l => l.X)], Path2.Polygon(edge));
    }
}
