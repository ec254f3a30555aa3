using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Rules;

/// <summary>The flights of a stair as regulations count them: from landing to landing.</summary>
internal static class FlightsOf
{
    /// <summary>Each flight and its number of risers, from the bottom up; a landing belongs to the flight that arrives at it.</summary>
    public static IEnumerable<(string Where, int Risers)> Plan(StairPlan plan)
    {
        var landing = plan.Steps.IndexOf(StepKind.Landing);
        if (landing < 0)
        {
            yield return ("flight", plan.Risers);
            yield break;
        }
        yield return ("lower flight", landing + 1);
        yield return ("upper flight", plan.Risers - landing - 1);
    }
}
