using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Rules;

/// <summary>What the rules of straight steps have in common.</summary>
public static class StraightSteps
{
    /// <summary>
    /// The going of a straight step, mm: square from riser face to riser face, on the walking line. Between a turn to one hand and a turn to the other the walking line changes sides and
    /// crosses the flight at a slant, which makes no step longer.
    /// </summary>
    /// <param name="plan">The stair.</param>
    /// <param name="number">The step's number.</param>
    public static double Going(StairPlan plan, int number)
    {
        var (from, to) = (plan.Riser(number), plan.Riser(number + 1));
        return Math.Abs((to.Walking - from.Walking).Dot(from.Up));
    }
}
