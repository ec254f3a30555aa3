using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Whether a rounded bottom step has the room it needs: an open side, steps behind it, and a quarter circle in front of its newel.</summary>
internal static class RoundedRoom
{
    public static void Check(PlanShape shape, ImmutableArray<Finding>.Builder findings)
    {
        var (job, step) = (shape.Job, shape.Job.BottomStep);
        if (step.Shape != BottomShape.BullNose) return;
        var sides = new[] { Hand.Left, Hand.Right }.Count(shape.IsRounded);
        if (sides == 0)
        {
            findings.Add(new("RW2008", Severity.Error, "bottomStep.shape", shape.Legs[0].Goings == 0
                    ? "the stair begins with a turn; a bull-nose stands in front of a newel at the foot of a flight"
                    : "no side of the first flight is open; a bull-nose stands in front of a newel",
                "a square bottom step, or an open side with a flight before the first turn"));
            return;
        }
        if (shape.IsHalf(isTop: false))
        {
            findings.Add(new("RW2008", Severity.Error, "ends.foot", "a half newel at the foot stands against a wall at the first riser; a bull-nose stands in front of a newel", "a whole newel at the foot, or a square bottom step"));
            return;
        }
        var (h, back) = (shape.HalfNewel, job.Going - shape.HalfNewel);
        var radius = step.Radius ?? back;
        // Past the spring the thinned riser, then the lap behind the full thickness, within the stair.
        var needed = radius - RoundedEnd.Reach(job.Practice) + step.Thinned + step.Lap + h;
        var room = shape.Across / sides;
        if (radius > back + Tolerance.Same)
        {
            findings.Add(new("RW2009", Severity.Error, "bottomStep.radius",
                $"a quarter circle of {job.Units.Print(radius)} does not end in front of the newel, whose face stands {job.Units.Print(back)} behind the first riser",
                $"a radius of {job.Units.Print(job.Units.Down(back))} or less, or left out"));
        }
        else if (radius <= Math.Max(step.Veneer, job.Practice.Riser))
        {
            findings.Add(new("RW2009", Severity.Error, "going", $"a quarter circle of {job.Units.Print(radius)} in front of the newel is less than the riser is thick", "a longer going or a smaller newel"));
        }
        else if (needed > room)
        {
            findings.Add(new("RW2009", Severity.Error, "bottomStep.radius",
                $"a quarter circle of {job.Units.Print(radius)} with its block takes {job.Units.Print(needed)} of the step; the stair has {job.Units.Print(room)}{(sides == 2 ? " for each end" : "")}",
                $"a radius of {job.Units.Print(job.Units.Down(radius - needed + room))} or less, or a shorter lap"));
        }
        if (step.Veneer >= job.Practice.Riser)
        {
            findings.Add(new("RW2009", Severity.Error, "bottomStep.veneer", $"a riser {job.Units.Print(job.Practice.Riser)} thick cannot be thinned to {job.Units.Print(step.Veneer)}", $"{job.Units.Print(1.5)} to {job.Units.Print(3)} is usual"));
        }
    }
}
