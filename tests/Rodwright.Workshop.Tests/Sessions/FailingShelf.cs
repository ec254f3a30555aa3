using System.Collections.Immutable;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;
using Rodwright.Workshop.Tables;

namespace Rodwright.Workshop.Tests.Sessions;

/// <summary>A shelf whose saving can be made to fail.</summary>
internal sealed class FailingShelf(IJobShelf inner) : IJobShelf
{
    public bool Fails { get; set; }

    public string Kind => inner.Kind;

    public IOwnTables Tables => inner.Tables;

    public IOwnShop Shop => inner.Shop;

    public Task<JobCard> Add(RevisionDraft first, CancellationToken stop = default) => inner.Add(first, stop);

    public Task<ShelfPage> Find(ShelfQuery query, CancellationToken stop = default) => inner.Find(query, stop);

    public Task<JobCard?> Card(Guid job, CancellationToken stop = default) => inner.Card(job, stop);

    public Task<SaveOutcome?> Save(Guid job, int basedOn, RevisionDraft draft, CancellationToken stop = default) =>
        Fails ? throw new IOException("the store is out of order") : inner.Save(job, basedOn, draft, stop);

    public Task<ImmutableArray<RevisionNote>> Revisions(Guid job, CancellationToken stop = default) => inner.Revisions(job, stop);

    public Task<Revision?> Open(Guid job, int number, CancellationToken stop = default) => inner.Open(job, number, stop);

    public Task<bool> Name(Guid job, int number, string name, CancellationToken stop = default) => inner.Name(job, number, name, stop);

    public Task<bool> Archive(Guid job, bool archived, CancellationToken stop = default) => inner.Archive(job, archived, stop);
}
