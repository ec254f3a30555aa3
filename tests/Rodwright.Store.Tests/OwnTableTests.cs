using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Testing;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>A shop's own tables: kept, changed by one at a time, and taken away only when no job has ever been judged by them.</summary>
public class OwnTableTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    private static OwnTableDraft Draft(string id = "own-heron", string title = "Heron Mill", string by = "Ada") =>
        OwnTableTexts.Draft(new OwnRegulation { Id = id, Title = title, BasedOn = "scotland-private" }, by);

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_table_is_kept_read_back_and_listed_by_title(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var tables = (await store.Open(new TestClock())).Tables;
        Assert.Empty(await tables.All());
        Assert.Null(await tables.Find("own-heron"));
        var first = await tables.Save(Draft(), 0);
        Assert.Equal((true, 1, "Ada"), (first.Kept, first.Card.Version, first.Card.ChangedBy));
        await tables.Save(Draft("own-alder", "alder house, Ø"), 0);
        var other = (await store.Open()).Tables;
        Assert.Equal(first.Card, await other.Find("own-heron"));
        Assert.Equal(["own-alder", "own-heron"], (await other.All()).Select(t => t.Id));
        Assert.NotNull((await other.Shelf()).Find("own-heron"));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Who_changes_a_table_second_is_told_and_writes_nothing(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var tables = (await store.Open()).Tables;
        await tables.Save(Draft(), 0);
        var taken = await tables.Save(Draft(title: "Another of that id", by: "Ben"), 0);
        Assert.Equal((false, "Heron Mill"), (taken.Kept, taken.Card.Title));
        Assert.True((await tables.Save(Draft(title: "Heron Mill, 2"), 1)).Kept);
        var late = await tables.Save(Draft(title: "Ben's", by: "Ben"), 1);
        Assert.Equal((false, 2, "Heron Mill, 2"), (late.Kept, late.Card.Version, late.Card.Title));
        Assert.Equal("Heron Mill, 2", (await tables.Find("own-heron"))!.Title);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Of_many_who_change_it_at_once_one_wins_each_version(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        await shelf.Tables.Save(Draft(), 0);
        var won = 0;
        await Parallel.ForEachAsync(Enumerable.Range(0, 6), async (person, _) =>
        {
            for (var time = 0; time < 10; time++)
            {
                var newest = (await shelf.Tables.Find("own-heron", CancellationToken.None))!;
                if ((await shelf.Tables.Save(Draft(title: $"{person}.{time}"), newest.Version, CancellationToken.None)).Kept) Interlocked.Increment(ref won);
            }
        });
        Assert.Equal(won + 1, (await shelf.Tables.Find("own-heron"))!.Version);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_table_that_a_revision_of_a_job_is_judged_by_stays(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        await shelf.Tables.Save(Draft(), 0);
        await shelf.Tables.Save(Draft("own-heron-2", "Heron Mill 2"), 0);
        var job = Samples.Job("left-kite-low");
        var card = await shelf.Add(ShelfDrafts.Made(job with { Regulation = "own-heron" }, "made", "Ada"));
        await shelf.Add(ShelfDrafts.Made(job with { Title = "\"regulation\": \"own-heron-2\"" }, "made", "Ada"));
        Assert.Equal([card.Id], (await shelf.Tables.JobsUsing("own-heron")).Select(c => c.Id));
        Assert.False(await shelf.Tables.Remove("own-heron"));
        // Judged by another table now, it may still be taken back.
        Assert.True((await shelf.Save(card.Id, 1, ShelfDrafts.Of(RevisionKind.Edit, job, "by the document", "Ada")))!.Kept);
        Assert.True(await shelf.Archive(card.Id, true));
        Assert.Equal([card.Id], (await shelf.Tables.JobsUsing("own-heron")).Select(c => c.Id));
        Assert.False(await shelf.Tables.Remove("own-heron"));
        Assert.NotNull(await shelf.Tables.Find("own-heron"));
        Assert.Empty(await shelf.Tables.JobsUsing("own-heron-2"));
        Assert.True(await shelf.Tables.Remove("own-heron-2"));
        Assert.False(await shelf.Tables.Remove("own-heron-2"));
        Assert.Null(await shelf.Tables.Find("own-heron-2"));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task What_is_no_own_table_is_refused(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var tables = (await store.Open()).Tables;
        foreach (var draft in new[] { Draft() with { Id = "england-2013-private" }, Draft() with { Id = "own-A" }, Draft() with { By = " " }, Draft() with { Text = "a\0b" }, Draft() with { Title = "a\ud83db" } })
            await Assert.ThrowsAsync<ArgumentException>(() => tables.Save(draft, 0));
        Assert.Null(await tables.Find("own-'; DROP TABLE jobs; --"));
        Assert.False(await tables.Remove("%"));
        Assert.Empty(await tables.All());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_store_made_before_there_were_tables_is_carried_forward_with_its_jobs(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        if (kind == StoreKind.Sqlite) Directory.CreateDirectory(Path.GetDirectoryName(((SqliteTestStore)store).File)!);
        string script;
        await using (var old = store.Look())
        {
            var before = old.Database.GetMigrations().TakeWhile(m => !m.EndsWith("_RegulationTables", StringComparison.Ordinal)).Last();
            script = old.GetService<IMigrator>().GenerateScript(null, before, MigrationsSqlGenerationOptions.NoTransactions);
        }
        await store.Say(script);
        var id = Guid.NewGuid();
        await using (var old = store.Look())
        {
            var at = new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc);
            await old.Database.ExecuteSqlAsync($"INSERT INTO jobs (id, title, summary, revision, changed_by, changed_utc, archived, search) VALUES ({id}, {"Old"}, {"s"}, {1}, {"Ada"}, {at}, {false}, {"old s"})");
            await old.Database.ExecuteSqlAsync($"INSERT INTO revisions (job, number, kind, words, name, made_by, made_utc, ticket, text) VALUES ({id}, {1}, {0}, {"w"}, {""}, {"Ada"}, {at}, {Guid.NewGuid()}, {"text"})");
        }
        var shelf = await store.Open();
        Assert.Equal("Old", (await shelf.Card(id))!.Title);
        Assert.Equal("text", (await shelf.Open(id, 1))!.Text);
        Assert.True((await shelf.Tables.Save(Draft(), 0)).Kept);
    }

    [Fact]
    public void A_job_is_written_as_the_store_looks_for_it() =>
        Assert.Contains(OwnTableTexts.NamedAs("own-heron"), JobFile.Write(Samples.Job("left-kite-low") with { Regulation = "own-heron" }), StringComparison.Ordinal);
}
