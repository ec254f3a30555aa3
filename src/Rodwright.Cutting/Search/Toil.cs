namespace Rodwright.Cutting.Search;

/// <summary>Counts the steps of a search and ends it: at its limit quietly, at a request by an exception.</summary>
internal sealed class Toil(long limit, CancellationToken stop)
{
    public long Done { get; private set; }

    public bool IsSpent => Done >= limit;

    public void Spend(long steps)
    {
        Done += steps;
        stop.ThrowIfCancellationRequested();
    }
}
