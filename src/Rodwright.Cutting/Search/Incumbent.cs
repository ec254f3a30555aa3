namespace Rodwright.Cutting.Search;

/// <summary>The best plan so far.</summary>
internal sealed class Incumbent(long below, Action<long> told)
{
    public Remainder? Plan { get; private set; }

    public long Cost { get; private set; } = long.MaxValue;

    /// <summary>What a plan must cost less than to be looked for.</summary>
    public long Limit => Math.Min(Cost, below);

    /// <summary>Takes a finished plan when it is better.</summary>
    public void Offer(Remainder done)
    {
        if (!done.IsDone || done.Cost >= Cost) return;
        (Plan, Cost) = (done, done.Cost);
        told(Cost);
    }
}
