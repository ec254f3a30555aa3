using Rodwright.Geometry;

namespace Rodwright.Workshop.Edits;

/// <summary>Something on the plan that can be taken hold of and moved along one line.</summary>
/// <param name="Id">The thing's id: the turn newel, or a riser line.</param>
/// <param name="Name">What moves, in bench words.</param>
/// <param name="At">Where to take hold of it, world plan, mm.</param>
/// <param name="Along">Unit direction of a positive drag, world plan.</param>
/// <param name="Step">The least drag that changes something, mm: one press of an arrow key.</param>
/// <param name="Changes">What a drag changes: "steps before the turn".</param>
public sealed record DragHandle(string Id, string Name, Point2 At, Vector2 Along, double Step, string Changes)
{
    /// <summary>How far a pointer that went from one point of the plan to another has dragged it, mm; sideways movement counts for nothing.</summary>
    public double Distance(Point2 from, Point2 to) => (to - from).Dot(Along);
}
