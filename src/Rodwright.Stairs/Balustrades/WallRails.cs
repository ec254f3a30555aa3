using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Stairs.Balustrades;

/// <summary>Handrails along the walls.</summary>
internal static class WallRails
{
    public static IEnumerable<RailRun> Of(StairPlan plan, Balustrade practice, IReadOnlyCollection<RailRun> open) => [];
}
