using System.Collections.Concurrent;
using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Rodwright.Store.Tests.Servers;
using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>Several people save at once: one is kept, the others are told who was first, nothing is half written.</summary>
public class SavingTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task The_second_is_told_who_changed_what_and_nothing_is_written(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var (ben, cleo) = (await store.Open(), await store.Open());
        var job = (await ben.Add(Drafts.Made())).Id;
        for (var n = 1; n < 4; n++) Assert.True((await ben.Save(job, n, Drafts.Edit($"change {n}")))!.Kept);

        foreach (var basedOn in new[] { 3, 2, 1 })
        {
            var outcome = (await cleo.Save(job, basedOn, Drafts.Edit("hers", "Her title", "Cleo")))!;
            Assert.False(outcome.Kept);
            Assert.Equal((await ben.Revisions(job)).Skip(basedOn), outcome.Others);
            Assert.Equal(await ben.Card(job), outcome.Card);
        }
        Assert.Equal([1, 2, 3, 4], (await ben.Revisions(job)).Select(r => r.Number));
        Assert.DoesNotContain(await ben.Revisions(job), r => r.By == "Cleo");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Of_many_who_save_at_once_exactly_one_wins_each_number(StoreKind kind)
    {
        const int people = 8, wanted = 60;
        await using var store = await TestStore.New(kind);
        var job = (await (await store.Open()).Add(Drafts.Made())).Id;
        var won = new ConcurrentDictionary<int, string>();
        var lost = 0;

        await Task.WhenAll(Enumerable.Range(0, people).Select(async person =>
        {
            // Half of them share a shelf, the others have one of their own.
            var shelf = await store.Open();
            await Parallel.ForEachAsync(Enumerable.Range(0, 2), async (hand, _) =>
            {
                var me = $"{person}.{hand}";
                var newest = 1;
                for (var time = 0; newest < wanted; time++)
                {
                    var draft = new RevisionDraft(RevisionKind.Edit, $"text {me} {time}", $"title {me} {time}", "", $"{me} {time}", me);
                    var outcome = (await shelf.Save(job, newest, draft, CancellationToken.None))!;
                    if (outcome.Kept)
                    {
                        Assert.Equal(newest + 1, outcome.Card.Revision);
                        Assert.True(won.TryAdd(outcome.Card.Revision, draft.Words), "a number was given twice");
                    }
                    else
                    {
                        Interlocked.Increment(ref lost);
                        Assert.Equal(Enumerable.Range(newest + 1, outcome.Card.Revision - newest), outcome.Others.Select(o => o.Number));
                    }
                    newest = outcome.Card.Revision;
                }
            });
        }));

        var last = await store.Open();
        var card = (await last.Card(job))!;
        var notes = await last.Revisions(job);
        Assert.Equal(Enumerable.Range(1, card.Revision), notes.Select(n => n.Number));
        Assert.Equal(won.Count, card.Revision - 1);
        Assert.True(lost > 0, "nobody ever met anybody");
        foreach (var note in notes.Skip(1))
        {
            Assert.Equal(won[note.Number], note.Words);
            Assert.Equal("text " + note.Words, (await last.Open(job, note.Number))!.Text);
        }
        Assert.Equal("title " + won[card.Revision], card.Title);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_save_that_fails_half_way_leaves_all_as_it_was(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        // A revision nobody should have been able to write: the card does not know it, and its number is taken.
        await store.Say("INSERT INTO revisions SELECT job, 2, kind, words, name, made_by, made_utc, ticket, 'planted' FROM revisions");
        await Assert.ThrowsAsync<DbUpdateException>(() => shelf.Save(job.Id, 1, Drafts.Edit(title: "Not to be seen")));
        Assert.Equal(job, await shelf.Card(job.Id));
        Assert.Equal("planted", (await shelf.Open(job.Id, 2))!.Text);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Many_jobs_are_added_and_changed_side_by_side(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var ids = new ConcurrentBag<Guid>();
        await Parallel.ForEachAsync(Enumerable.Range(0, 60), new ParallelOptions { MaxDegreeOfParallelism = 12 }, async (n, stop) =>
        {
            var job = await shelf.Add(Drafts.Made($"job {n}"), stop);
            ids.Add(job.Id);
            Assert.True((await shelf.Save(job.Id, 1, Drafts.Edit(title: $"job {n} changed"), stop))!.Kept);
            Assert.True(await shelf.Name(job.Id, 1, "first", stop));
            Assert.True(await shelf.Archive(job.Id, n % 3 == 0, stop));
            Assert.InRange((await shelf.Find(new("changed"), stop)).Total, 0, 60);
        });
        Assert.Equal(60, ids.Distinct().Count());
        Assert.Equal((40, 20), ((await shelf.Find(new("changed"))).Total, (await shelf.Find(new("changed", Archived: true))).Total));
    }

    [Fact]
    public async Task A_server_that_went_away_for_a_moment_costs_nobody_a_revision()
    {
        await using var server = await PostgresServer.Start(); // others are at work on the shared one
        await using var store = await PostgresTestStore.New(server);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        for (var n = 1; n <= 3; n++)
        {
            await server.Crash();
            Assert.True((await shelf.Save(job.Id, n, Drafts.Edit($"change {n}")))!.Kept);
        }
        await server.Crash();
        var other = await shelf.Add(Drafts.Made("After the fall"));
        await server.Crash();
        Assert.Equal([other.Id, job.Id], (await shelf.Find(new())).Cards.Select(c => c.Id));
        Assert.Equal([1, 2, 3, 4], (await shelf.Revisions(job.Id)).Select(r => r.Number));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Who_does_not_hear_that_the_revision_was_kept_finds_it_kept(StoreKind kind)
    {
        // The write goes through; the answer is lost; the same write is tried again.
        await using var store = await TestStore.New(kind);
        await (await store.Open()).Add(Drafts.Made());
        using var shelf = await JobShelf.Open(LostAnswer.Over(store.Provider), TimeProvider.System, CancellationToken.None);
        var added = await shelf.Add(Drafts.Made("Added"));
        Assert.Equal(added, await shelf.Card(added.Id));
        var outcome = await shelf.Save(added.Id, 1, Drafts.Edit(title: "Saved"));
        Assert.True(outcome!.Kept);
        Assert.Equal(outcome.Card, await shelf.Card(added.Id));
        Assert.Equal([1, 2], (await shelf.Revisions(added.Id)).Select(r => r.Number).ToImmutableArray());
    }
}
