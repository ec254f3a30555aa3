namespace Rodwright.Cutting;

/// <summary>How hard to look. Counted in steps, not in time, so that the same problem has the same answer on every machine.</summary>
/// <param name="Steps">Elementary steps after which the best plan so far is given with its bound; a thousand million take a second or two.</param>
public sealed record CuttingEffort(long Steps)
{
    /// <summary>
    /// Only a plan that leaves nothing uncut and costs less than this is of interest; null for any. The search ends as soon as there is proven to be none: the plan given is then whatever was come by,
    /// and <see cref="CuttingPlan.IsRuledOut"/>.
    /// </summary>
    public long? Below { get; init; }

    /// <summary>Enough for a stair's list several times over.</summary>
    public static CuttingEffort Usual { get; } = new(2_000_000_000);
}

/// <summary>How far a search has come.</summary>
/// <param name="Cost">Of the best plan so far.</param>
/// <param name="Bound">What no plan can go below, as far as is known.</param>
public sealed record CuttingProgress(long Cost, long Bound);
