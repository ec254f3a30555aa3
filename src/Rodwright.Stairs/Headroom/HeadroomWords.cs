using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Headroom;

/// <summary>Places of headroom in bench words.</summary>
public static class HeadroomWords
{
    /// <summary>"step 4, under the trimmer"; "the foot, under ...".</summary>
    public static string Where(StairPlan plan, Clearance found) => $"{Step(plan, found.Step)}, under {found.Under.Name}";

    /// <summary>"step 4", "the floor at the foot", "the landing, step 6", "the upper floor".</summary>
    public static string Step(StairPlan plan, int step) => step == 0 ? "the floor at the foot" : step >= plan.Risers ? "the upper floor"
        : plan.Steps[step - 1] == StepKind.Landing ? $"the landing, step {Number.Print(step, 0)}" : $"step {Number.Print(step, 0)}";

    /// <summary>Which way an edge of the well is moved, as it lies to the first flight or to the first wall.</summary>
    public static string Towards(StairPlan plan, WellLonger edge)
    {
        var outward = RoomFrame.Of(plan).ToRoom((edge.To - edge.From).Unit.Right);
        // Along the first wall a stair climbs away from its beginning; out from it lies the room.
        return Math.Abs(outward.X) >= Math.Abs(outward.Y)
            ? outward.X < 0 ? "towards the foot" : "along the wall, away from the foot"
            : outward.Y < 0 ? "towards the wall" : "out from the wall";
    }
}
