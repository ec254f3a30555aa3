using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Rodwright.Store.Postgres;
using Rodwright.Store.Rows;
using Rodwright.Store.Sqlite;
using Rodwright.Store.Tests.Servers;
using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>Stores are made, and old ones carried forward with all that is in them.</summary>
public class CarryingTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task The_migrations_lead_to_the_tables_the_program_knows(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        await using var context = store.Look();
        Assert.False(context.Database.HasPendingModelChanges(), "a migration is missing: see CONTRIBUTING.md");
        Assert.True(context.Database.GetMigrations().Count() >= 2);
    }

    [Fact]
    public void The_model_worked_out_beforehand_is_the_model()
    {
        var shipped = new StoreContext(SqliteStore.Options("Data Source=none.db"));
        var built = new StoreContext(new DbContextOptionsBuilder<StoreContext>().UseSqlite("Data Source=none.db").Options);
        Assert.Equal(Words(built), Words(shipped));
        Assert.Contains("changed_utc", Words(built), StringComparison.Ordinal);

        static string Words(StoreContext context) => context.Model.ToDebugString(MetadataDebugStringOptions.LongDefault) + "\n" +
            context.Model.GetRelationalModel().ToDebugString(MetadataDebugStringOptions.LongDefault);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task An_old_store_is_carried_forward_with_all_that_is_in_it(StoreKind kind)
    {
        const int many = 1203; // more than are worked on at once
        await using var store = await TestStore.New(kind);
        await MakeFirst(store);
        var ids = Enumerable.Range(0, many).Select(_ => Guid.NewGuid()).ToArray();
        await using (var old = store.Look())
        {
            await using var transaction = await old.Database.BeginTransactionAsync();
            for (var n = 0; n < many; n++)
            {
                var at = new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddSeconds(n);
                await old.Database.ExecuteSqlAsync(
                    $"INSERT INTO jobs (id, title, summary, revision, changed_by, changed_utc, archived) VALUES ({ids[n]}, {$"Städtle {n}"}, {"ÜBER ECK"}, {2}, {"Dörte"}, {at}, {n % 2 == 1})");
                foreach (var number in new[] { 1, 2 })
                    await old.Database.ExecuteSqlAsync(
                        $"INSERT INTO revisions (job, number, kind, words, name, made_by, made_utc, ticket, text) VALUES ({ids[n]}, {number}, {number - 1}, {"w"}, {"as sold"}, {"Dörte"}, {at}, {Guid.NewGuid()}, {$"text {n}.{number}"})");
            }
            await transaction.CommitAsync();
        }

        var shelf = await store.Open();

        Assert.Equal((602, 601), ((await shelf.Find(new("STADTLE uber"))).Total, (await shelf.Find(new("stadtle über", Archived: true))).Total));
        foreach (var n in new[] { 0, 1, 499, 500, 777, many - 1 })
        {
            var at = new DateTimeOffset(2025, 1, 1, 0, 0, 0, TimeSpan.Zero).AddSeconds(n);
            Assert.Equal(new(ids[n], $"Städtle {n}", "ÜBER ECK", 2, "Dörte", at, n % 2 == 1), await shelf.Card(ids[n]));
            Assert.Equal(new(new(2, RevisionKind.Edit, "w", "as sold", "Dörte", at), $"text {n}.2"), await shelf.Open(ids[n], 2));
        }
        Assert.True((await shelf.Save(ids[3], 2, Drafts.Edit()))!.Kept);
        Assert.Equal([1, 2, 3], (await shelf.Revisions(ids[3])).Select(r => r.Number));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_store_opened_by_many_at_once_is_made_once(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        if (kind == StoreKind.Sqlite) Directory.CreateDirectory(Path.GetDirectoryName(((SqliteTestStore)store).File)!);
        var shelves = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => Task.Run(() => store.Open())));
        foreach (var shelf in shelves) await shelf.Add(Drafts.Made());
        Assert.Equal(12, (await shelves[0].Find(new())).Total);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_store_of_a_later_program_is_left_alone(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        await (await store.Open()).Add(Drafts.Made());
        await store.Say("INSERT INTO \"__EFMigrationsHistory\" VALUES ('99990101000000_Later', '99')");
        var fault = await Assert.ThrowsAsync<InvalidOperationException>(() => store.Open());
        Assert.Contains("later Rodwright", fault.Message, StringComparison.Ordinal);
        Assert.Contains("99990101000000_Later", fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_migration_that_fails_leaves_the_store_as_it_was(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        await MakeFirst(store);
        await store.Say("ALTER TABLE jobs ADD COLUMN search text NULL"); // the second migration will trip over it
        await Assert.ThrowsAnyAsync<System.Data.Common.DbException>(() => store.Open());
        Assert.Equal(1L, Convert.ToInt64(await store.Ask("SELECT count(*) FROM \"__EFMigrationsHistory\"")));
        await store.Say("ALTER TABLE jobs DROP COLUMN search");
        await (await store.Open()).Add(Drafts.Made());
    }

    [Fact]
    public async Task A_database_that_would_mistake_letters_is_refused()
    {
        var server = await PostgresServer.Running();
        var connection = await server.NewDatabase("LATIN1");
        var fault = await Assert.ThrowsAsync<InvalidOperationException>(() => PostgresShelf.Open(connection, TimeProvider.System));
        Assert.Contains("LATIN1", fault.Message, StringComparison.Ordinal);
        await server.Drop(connection);
    }

    [Fact]
    public async Task A_database_that_cannot_be_reached_is_a_fault() =>
        await Assert.ThrowsAnyAsync<Npgsql.NpgsqlException>(() => PostgresShelf.Open("Host=/nowhere;Database=none;Username=nobody", TimeProvider.System));

    [Fact]
    public async Task What_the_promise_rests_on_is_said_on_every_connection()
    {
        await using var store = new SqliteTestStore();
        await store.Open();
        Assert.Equal(("wal", 2L, 1L), (await store.Ask("PRAGMA journal_mode"), await store.Ask("PRAGMA synchronous"), await store.Ask("PRAGMA foreign_keys")));
        Assert.Equal(30000L, await store.Ask("PRAGMA busy_timeout"));
    }

    [Fact]
    public async Task A_closed_store_is_one_file()
    {
        await using var store = new SqliteTestStore();
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        shelf.Dispose();
        Assert.Equal([store.File], Directory.GetFiles(Path.GetDirectoryName(store.File)!));
        Assert.Equal(job, await (await store.Open()).Card(job.Id));
    }

    [Fact]
    public async Task A_file_that_is_something_else_is_refused_and_left_alone()
    {
        await using var store = new SqliteTestStore();
        Directory.CreateDirectory(Path.GetDirectoryName(store.File)!);
        var letter = string.Concat(Enumerable.Repeat("Dear Sir, about the stair. ", 100));
        await File.WriteAllTextAsync(store.File, letter);
        await Assert.ThrowsAsync<SqliteException>(() => store.Open());
        Assert.Equal(letter, await File.ReadAllTextAsync(store.File));
    }

    /// <summary>Makes the store as the first version made it.</summary>
    private static async Task MakeFirst(TestStore store)
    {
        if (store is SqliteTestStore { File: var file }) Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        string script;
        await using (var context = store.Look())
        {
            var first = context.Database.GetMigrations().First();
            Assert.EndsWith("_Tables", first, StringComparison.Ordinal);
            script = context.GetService<IMigrator>().GenerateScript(null, first, MigrationsSqlGenerationOptions.NoTransactions);
        }
        Assert.DoesNotContain("search", script, StringComparison.Ordinal);
        await store.Say(script);
    }
}
