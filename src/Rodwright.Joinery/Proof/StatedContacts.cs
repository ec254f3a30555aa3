using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Proof;

/// <summary>
/// What of a rounded bottom step ought to touch, in plan, read from the plan and not from the pieces (trade-practice.md 4c): the veneer on its block from the newel to the slot and behind its full thickness over the
/// lap, the block on the newel's front face, the wedges on both sides of the slot.
/// </summary>
internal static class StatedContacts
{
    private static readonly Vector2 Up = new(0, 1);

    /// <summary>Lines on which both pieces of a joint of a rounded end have their edge.</summary>
    public static IReadOnlyList<Path2> Of(StairPlan plan, Joint joint)
    {
        // What lies on the outer side says so in its id.
        var inner = !joint.Id.Contains("-outer", StringComparison.Ordinal);
        var end = plan.RoundedEnds.First(e => e.Inner == inner);
        var (step, thick) = (plan.Job.BottomStep, plan.Job.Practice.Riser);
        var shoulder = end.Spring - step.Thinned * end.Out;
        var slot = shoulder + step.Wedges * end.Out;
        var lap = shoulder - step.Lap * end.Out;
        Point2 Veneer(Point2 p) => p + step.Veneer * Up;
        Point2 Full(Point2 p) => p + thick * Up;
        var bend = end.Line(-step.Veneer);
        return joint.Kind switch
        {
            JointKind.BlockToRiser => [new([.. bend.Vertices, new(Veneer(slot))], false), Line(Full(lap), Full(shoulder))],
            JointKind.BlockToNewel => OnNewel(end, bend.Vertices[0].At, lap + end.Back * Up),
            _ when joint.Female == "riser-1" => [Line(Veneer(slot), Veneer(shoulder)), Line(Veneer(shoulder), Full(shoulder))],
            _ => [Line(Veneer(slot), Full(slot)), Line(Full(slot), Full(shoulder))],
        };
    }

    /// <summary>Of the block's back, what the newel's front face covers.</summary>
    private static IReadOnlyList<Path2> OnNewel(RoundedEnd end, Point2 far, Point2 near)
    {
        var face = new Line2(end.NewelFace.From, end.NewelFace.Along);
        var (a, b) = (face.Station(far), face.Station(near));
        var (from, to) = (Math.Max(0, Math.Min(a, b)), Math.Min(end.NewelFace.Length, Math.Max(a, b)));
        return [Line(face.At(from), face.At(to))];
    }

    private static Path2 Line(Point2 from, Point2 to) => new([new(from), new(to)], false);
}
