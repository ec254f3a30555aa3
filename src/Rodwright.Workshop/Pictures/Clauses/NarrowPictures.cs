using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The narrow end of a tapered step at the newel, in the three ways it is measured.</summary>
internal static class NarrowPictures
{
    /// <summary>Along the faces of newel and string; the jog between them is not counted.</summary>
    public static Sketch AlongFaces(PlanView view, ClauseCheck check)
    {
        var sketch = Ground(view, check, out var a, out var b, out var outward);
        AlongFaces(sketch, view, a, b);
        sketch.Led(Middle(view, a, b), outward, sketch.Print(check.Measured!.Value));
        return sketch;
    }

    /// <summary>Along the faces, and the nosing in front of the riser.</summary>
    public static Sketch TreadWidth(PlanView view, ClauseCheck check)
    {
        var sketch = Ground(view, check, out var a, out var b, out var outward);
        AlongFaces(sketch, view, a, b);
        var front = a.Inner - view.Stair.Job.Practice.Nosing * a.Up;
        sketch.Piece(front, a.Inner);
        sketch.End(front, a.Up);
        sketch.Led(Middle(view, a, b), outward, sketch.Print(check.Measured!.Value));
        return sketch;
    }

    /// <summary>Straight across from riser to riser.</summary>
    public static Sketch Straight(PlanView view, ClauseCheck check)
    {
        var sketch = Ground(view, check, out var a, out var b, out var outward);
        sketch.Piece(a.Inner, b.Inner);
        sketch.End(a.Inner, b.Inner - a.Inner);
        sketch.End(b.Inner, b.Inner - a.Inner);
        sketch.Led(a.Inner.Towards(b.Inner, 0.5), outward, sketch.Print(check.Measured!.Value));
        return sketch;
    }

    private static Sketch Ground(PlanView view, ClauseCheck check, out RiserLine a, out RiserLine b, out Vector2 outward)
    {
        var plan = view.Stair.Plan;
        var step = Places.Step(plan, check);
        (a, b) = (plan.Riser(step), plan.Riser(step + 1));
        var turn = plan.TurnOf(step)!;
        // What is drawn is the side of the turn's newel, whichever that is.
        if (!plan.IsInner(turn)) (a, b) = (a with { Inner = a.Outer, Outer = a.Inner }, b with { Inner = b.Outer, Outer = b.Inner });
        outward = a.Walking.Towards(b.Walking, 0.5) - a.Inner.Towards(b.Inner, 0.5);
        var newel = turn.Centre;
        var half = view.Stair.Job.Practice.Newel / 2;
        var box = new Box2(newel.X - half, newel.Y - half, newel.X + half, newel.Y + half)
            .With(a.Inner - view.Stair.Job.Practice.Nosing * a.Up).With(a.Inner).With(b.Inner);
        // Room on the side of the step for the figure.
        box = box.With(a.Inner.Towards(b.Inner, 0.5) + 0.7 * Math.Max(box.Width, box.Height) * outward.Unit);
        var sketch = new Sketch(box, 3, 3, 3, 3) { Units = plan.Units };
        PlanGround.Draw(sketch, view, step);
        return sketch;
    }

    private static void AlongFaces(Sketch sketch, PlanView view, RiserLine a, RiserLine b)
    {
        var faces = Faces(view, a, b);
        foreach (var (from, to, _) in faces) sketch.Piece(from, to);
        var (first, last) = faces.Count > 0 ? (faces[0].To - faces[0].From, faces[^1].To - faces[^1].From) : (a.Up, b.Up);
        sketch.End(a.Inner, first);
        sketch.End(b.Inner, last);
    }

    private static List<(Point2 From, Point2 To, BoundaryKind Kind)> Faces(PlanView view, RiserLine a, RiserLine b) =>
        [.. BoundaryWalk.Between(view.Stair.Plan.Riser(a.Number).Inner == a.Inner ? view.Stair.Plan.Inner : view.Stair.Plan.Outer, a.Inner, b.Inner).Where(p => p.Kind != BoundaryKind.NewelJog)];

    /// <summary>The middle of the longest face measured.</summary>
    private static Point2 Middle(PlanView view, RiserLine a, RiserLine b)
    {
        var faces = Faces(view, a, b);
        if (faces.Count == 0) return a.Inner;
        var (from, to, _) = faces.MaxBy(f => f.From.DistanceTo(f.To));
        return from.Towards(to, 0.5);
    }
}
