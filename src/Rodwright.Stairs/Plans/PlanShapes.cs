using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Lays a course of flights and turns out, one after the other.</summary>
internal static class PlanShapes
{
    /// <summary>The shape, and the turns in which nothing fits.</summary>
    public static PlanShape Of(Job job, Regulation regulation, Course course, double inset, List<TurnShape> tight)
    {
        var (left, right) = (PlanShape.Thickness(job, job.InnerSide), PlanShape.Thickness(job, job.OuterSide));
        var shape = new PlanShape
        {
            Job = job, Regulation = regulation, HalfNewel = job.Practice.Newel / 2, LeftThickness = left, RightThickness = right, ClearWidth = job.Width - left - right,
            Inset = inset, Legs = [], Turns = [], Sides = course.Sides,
        };
        var legs = ImmutableArray.CreateBuilder<Leg>();
        var turns = ImmutableArray.CreateBuilder<TurnShape>();
        var leg = new Leg(0, course.Goings[0], 1, new(0, 1), Point2.Origin, 0, course.Goings[0] * job.Going);
        legs.Add(leg);
        foreach (var turn in course.Turns)
        {
            var shaped = Turn(shape, regulation, leg, turn, turns.Count, tight);
            turns.Add(shaped);
            leg = Next(shape, leg, shaped, course.Goings[turns.Count]);
            legs.Add(leg);
        }
        return shape with { Legs = legs.ToImmutable(), Turns = turns.ToImmutable() };
    }

    /// <summary>The site of a turn in a stair of given clear width; its lengths do not depend on where it stands.</summary>
    public static TurnSite Site(Job job, Turn turn, double clear, double inset)
    {
        var isLeft = job.Layout.HandOf(turn) == job.Layout.Hand;
        var thick = PlanShape.Thickness(job, isLeft ? job.InnerSide : job.OuterSide);
        var shift = Shift(job, turn, thick);
        var face = thick / 2 + shift;
        return new(job.Practice.Newel / 2, face, face + clear, face + inset)
        {
            Quarters = turn.Quarters,
            Between = turn.Quarters == 2 && shift == 0 ? Well(turn, thick) : 0,
        };
    }

    private static TurnShape Turn(PlanShape shape, Regulation regulation, Leg leg, Turn turn, int index, List<TurnShape> tight)
    {
        var job = shape.Job;
        var hand = job.Layout.HandOf(turn) == job.Layout.Hand ? Hand.Left : Hand.Right;
        var site = Site(job, turn, shape.ClearWidth, shape.Inset);
        var method = turn.Kind == TurnKind.Winders ? TurnCatalogue.Find(turn.Method)! : turn.Quarters == 1 ? QuarterLanding.Instance : QuarterLanding.Half;
        var found = turn.Kind == TurnKind.Landing
            ? new(turn.FirstRiser ?? 0, turn.LastRiser ?? 0, TurnSolver.Decided(turn, "riser faces on the newel's centre", job.Units), true, 0, 0)
            : TurnSolver.Solve(site, method, turn, Planner.Wanted(job, regulation), regulation.Going, job.Practice, job.Going);
        var shift = Shift(job, turn, shape.ThicknessOf(hand));
        var centre = leg.At(hand == Hand.Left ? -shift : shape.Across + shift, leg.End + found.FirstRiser);
        var shaped = new TurnShape(turn, index, new(centre, leg.Along, hand), site, method, found, leg.LastRiser) { Shift = shift };
        if (!found.Fits) tight.Add(shaped);
        return shaped;
    }

    private static Leg Next(PlanShape shape, Leg leg, TurnShape turn, int goings)
    {
        var toLeft = turn.Hand == Hand.Left;
        var along = turn.Quarters == 2 ? -leg.Along : toLeft ? leg.Along.Left : leg.Along.Right;
        // Where the centre line of the string on the turn's own side passes the newel.
        var beside = turn.LastCentre - turn.Shift * turn.Frame.Across;
        var origin = turn.Quarters == 1 ? turn.Frame.Centre : beside;
        if (!toLeft) origin += shape.Across * along.Left;
        var start = turn.Found.LastRiser;
        return new(leg.Index + 1, goings, turn.LastLine, along, origin, start, start + goings * shape.Job.Going);
    }

    /// <summary>Half of a well that one newel fills; 0 where the newel stands on the strings' centre lines.</summary>
    private static double Shift(Job job, Turn turn, double thick) =>
        turn.Quarters == 2 && Well(turn, thick) < job.Practice.Newel ? Well(turn, thick) / 2 : 0;

    /// <summary>The strings of tapered steps stand one above the other; those at a landing pass one another with 4 mm between (common practice).</summary>
    private static double Well(Turn turn, double thick) => turn.Well ?? (turn.Kind == TurnKind.Landing ? thick + 4 : 0);
}
