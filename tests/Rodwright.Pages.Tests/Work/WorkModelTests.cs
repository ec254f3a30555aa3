using System.Collections.Immutable;
using Bunit;
using Rodwright.Pages.Shell;
using Rodwright.Pages.Work;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Shops;
using Rodwright.Workshop.Tables;

namespace Rodwright.Pages.Tests.Work;

public sealed class WorkModelTests
{
    [Fact]
    public async Task A_change_made_while_the_one_before_is_still_being_kept_loses_neither()
    {
        var shelf = new SlowShelf(new MemoryShelf(TimeProvider.System));
        var card = await shelf.Add(ShelfDrafts.Made(Samples.Job("left-kite-low"), "made", "Ada"));
        using var page = new BunitContext();
        using var work = new WorkModel((await JobSession.Open(shelf, new(), card.Id, () => "Ada"))!, new PageScript(page.JSInterop.JSRuntime));
        var first = work.Do(JobEdits.Set(work.State.Job, "going", "230"));
        var second = work.Do(JobEdits.Set(work.State.Job, "width", "900"));
        Assert.False(first.IsCompleted);
        shelf.Go();
        await Task.WhenAll(first, second);
        Assert.Equal((230, 900), (work.State.Job.Going, work.State.Job.Width));
        Assert.Equal(3, work.Session.Card.Revision);
        Assert.Null(work.Session.Clash);
    }

    /// <summary>A shelf that keeps nothing before it is told to go on.</summary>
    private sealed class SlowShelf(IJobShelf inner) : IJobShelf
    {
        private readonly TaskCompletionSource gate = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public string Kind => inner.Kind;

        public IOwnTables Tables => inner.Tables;

        public IOwnShop Shop => inner.Shop;

        public void Go() => gate.SetResult();

        public Task<JobCard> Add(RevisionDraft first, CancellationToken stop = default) => inner.Add(first, stop);

        public Task<ShelfPage> Find(ShelfQuery query, CancellationToken stop = default) => inner.Find(query, stop);

        public Task<JobCard?> Card(Guid job, CancellationToken stop = default) => inner.Card(job, stop);

        public async Task<SaveOutcome?> Save(Guid job, int basedOn, RevisionDraft draft, CancellationToken stop = default)
        {
            await gate.Task;
            return await inner.Save(job, basedOn, draft, stop);
        }

        public Task<ImmutableArray<RevisionNote>> Revisions(Guid job, CancellationToken stop = default) => inner.Revisions(job, stop);

        public Task<Revision?> Open(Guid job, int number, CancellationToken stop = default) => inner.Open(job, number, stop);

        public Task<bool> Name(Guid job, int number, string name, CancellationToken stop = default) => inner.Name(job, number, name, stop);

        public Task<bool> Archive(Guid job, bool archived, CancellationToken stop = default) => inner.Archive(job, archived, stop);
    }
}
