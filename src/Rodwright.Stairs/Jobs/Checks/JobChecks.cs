using System.Collections.Immutable;

namespace Rodwright.Stairs.Jobs.Checks;

/// <summary>Every contradiction a job is refused for.</summary>
internal static class JobChecks
{
    public static ImmutableArray<JobCheck> All { get; } = [.. StairChecks.All, .. StepChecks.All, .. StringChecks.All, .. NewelChecks.All, .. TurnChecks.All, .. BalustradeChecks.All];
}
