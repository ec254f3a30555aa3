using System.Collections.Concurrent;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Sessions;

/// <summary>Tells everybody who has a job open that somebody else has changed it. Safe for use by many at once.</summary>
public sealed class JobNotices
{
    private readonly ConcurrentDictionary<(Guid Job, object Who), Action<JobCard>> listeners = [];

    /// <summary>Listens for changes by others.</summary>
    /// <param name="job">The job.</param>
    /// <param name="who">The listener: it is not told of its own changes.</param>
    /// <param name="heard">Called with the job's new card, on the thread of whoever changed it.</param>
    /// <returns>Ends the listening when disposed.</returns>
    public IDisposable Listen(Guid job, object who, Action<JobCard> heard)
    {
        listeners[(job, who)] = heard;
        return new Ear(() => listeners.TryRemove((job, who), out _));
    }

    /// <summary>Tells the others.</summary>
    public void Tell(JobCard card, object who)
    {
        foreach (var ((job, listener), heard) in listeners)
            if (job == card.Id && !ReferenceEquals(listener, who)) heard(card);
    }

    private sealed class Ear(Action close) : IDisposable
    {
        public void Dispose() => close();
    }
}
