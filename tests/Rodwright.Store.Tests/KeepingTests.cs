using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>What is put on the shelf is there, as it was.</summary>
public class KeepingTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_job_added_comes_back_as_it_went_in(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var clock = new TestClock { Now = new DateTimeOffset(2026, 7, 1, 14, 5, 6, TimeSpan.FromHours(2)).AddTicks(1234567) };
        var shelf = await store.Open(clock);
        var draft = Drafts.Made();

        var card = await shelf.Add(draft);

        // To the microsecond, and in UTC whatever the clock's offset.
        var at = new DateTimeOffset(2026, 7, 1, 12, 5, 6, TimeSpan.Zero).AddTicks(1234560);
        Assert.Equal(new(card.Id, "Barn stair", "13 risers, left hand", 1, "Anna", at, false), card);
        foreach (var reader in new[] { shelf, await store.Open() })
        {
            var read = await reader.Card(card.Id);
            Assert.Equal(card, read);
            Assert.Equal(TimeSpan.Zero, read!.ChangedAt.Offset);
            var note = new RevisionNote(1, RevisionKind.Made, "made from a sample", "", "Anna", at);
            Assert.Equal(new Revision(note, draft.Text), await reader.Open(card.Id, 1));
            Assert.Equal([note], await reader.Revisions(card.Id));
            Assert.Equal(TimeSpan.Zero, (await reader.Revisions(card.Id))[0].At.Offset);
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_store_says_its_kind(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        Assert.Equal(kind == StoreKind.Sqlite ? "SQLite" : "PostgreSQL", (await store.Open()).Kind);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Every_revision_stays_and_the_card_follows_the_newest(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var clock = new TestClock();
        var shelf = await store.Open(clock);
        var job = (await shelf.Add(Drafts.Made())).Id;
        RevisionKind[] kinds = [RevisionKind.Edit, RevisionKind.Undo, RevisionKind.Redo, RevisionKind.Restore];
        for (var n = 2; n <= 5; n++)
        {
            clock.Now = clock.Now.AddMinutes(1);
            var draft = new RevisionDraft(kinds[n - 2], $"text {n}", $"title {n}", $"summary {n}", $"words {n}", $"by {n}");
            var outcome = await shelf.Save(job, n - 1, draft);
            Assert.True(outcome!.Kept);
            Assert.Equal(new(job, $"title {n}", $"summary {n}", n, $"by {n}", clock.Now, false), outcome.Card);
            Assert.Equal(outcome.Card, await shelf.Card(job));
        }

        var notes = await shelf.Revisions(job);
        Assert.Equal([1, 2, 3, 4, 5], notes.Select(n => n.Number));
        Assert.Equal([RevisionKind.Made, .. kinds], notes.Select(n => n.Kind));
        Assert.Equal(["words 2", "words 3", "words 4", "words 5"], notes.Skip(1).Select(n => n.Words));
        foreach (var note in notes.Skip(1)) Assert.Equal(new(note, $"text {note.Number}"), await shelf.Open(job, note.Number));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task What_is_not_there_is_null_false_or_empty(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = (await shelf.Add(Drafts.Made())).Id;
        var other = Guid.NewGuid();
        Assert.Null(await shelf.Card(other));
        Assert.Null(await shelf.Save(other, 1, Drafts.Edit()));
        Assert.Empty(await shelf.Revisions(other));
        Assert.Null(await shelf.Open(other, 1));
        Assert.False(await shelf.Name(other, 1, "as sold"));
        Assert.False(await shelf.Archive(other, true));
        foreach (var number in new[] { int.MinValue, 0, 2, int.MaxValue })
        {
            Assert.Null(await shelf.Open(job, number));
            Assert.False(await shelf.Name(job, number, "as sold"));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_name_is_given_and_taken_away_and_changes_nothing_else(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        job = (await shelf.Save(job.Id, 1, Drafts.Edit()))!.Card;
        var before = await shelf.Revisions(job.Id);

        Assert.True(await shelf.Name(job.Id, 1, "as sold"));
        Assert.Equal([before[0] with { Name = "as sold" }, before[1]], await shelf.Revisions(job.Id));
        Assert.Equal(job, await shelf.Card(job.Id));
        Assert.True(await shelf.Name(job.Id, 1, ""));
        Assert.Equal(before, await shelf.Revisions(job.Id));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_job_put_away_is_found_only_when_asked_for_and_changes_in_nothing_else(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var (kept, away) = (await shelf.Add(Drafts.Made("Kept")), await shelf.Add(Drafts.Made("Put away")));

        Assert.True(await shelf.Archive(away.Id, true));
        Assert.Equal([kept], (await shelf.Find(new())).Cards);
        Assert.Equal([away with { Archived = true }], (await shelf.Find(new(Archived: true))).Cards);
        // Work goes on, if somebody has it open, and does not take it out.
        var outcome = await shelf.Save(away.Id, 1, Drafts.Edit());
        Assert.True(outcome!.Kept && outcome.Card.Archived);
        Assert.True((await shelf.Card(away.Id))!.Archived);
        Assert.True(await shelf.Archive(away.Id, false));
        Assert.Equal(2, (await shelf.Find(new())).Total);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Text_of_many_megabytes_comes_back_whole(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var text = string.Concat(Enumerable.Range(0, 400_000).Select(n => $"{n} é𝄞\n"));
        var title = new string('W', 100_000) + "end";
        var job = await shelf.Add(Drafts.Made() with { Text = text, Title = title });
        Assert.Equal(text, (await shelf.Open(job.Id, 1))!.Text);
        Assert.Equal(title, (await shelf.Card(job.Id))!.Title);
        Assert.Equal(1, (await shelf.Find(new("wwend"))).Total);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_job_with_revisions_cannot_be_deleted_even_behind_the_shelf(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        await (await store.Open()).Add(Drafts.Made());
        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() => store.Say("DELETE FROM jobs"));
    }
}
