using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;
using Rodwright.Stairs.Shops;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>The shop's stock and prices: kept, changed by one at a time, every version for good.</summary>
public class OwnShopTests
{
    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    private static string Text(string name) => ShopFile.Write(UsualShop.Of("redwood", "plywood") with { Name = name });

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_shop_is_kept_read_back_and_changed_and_who_comes_second_writes_nothing(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shop = (await store.Open(new TestClock())).Shop;
        Assert.Null(await shop.Newest());
        var first = await shop.Save(Text("Weir Lane, Ø"), "Ada", 0);
        Assert.Equal((true, 1, "Ada"), (first.Kept, first.Card.Version, first.Card.ChangedBy));
        Assert.Equal(first.Card, await (await store.Open()).Shop.Newest());
        var taken = await shop.Save(Text("Ben's"), "Ben", 0);
        Assert.Equal((false, first.Card), (taken.Kept, taken.Card));
        Assert.Equal((true, 2), ((await shop.Save(Text("Weir Lane, 2"), "Ada", 1)) is var second ? (second.Kept, second.Card.Version) : default));
        var late = await shop.Save(Text("Ben's"), "Ben", 1);
        Assert.Equal((false, 2), (late.Kept, late.Card.Version));
        Assert.Equal("Weir Lane, 2", ShopFile.Read((await shop.Newest())!.Text).Value!.Name);
        Assert.Equal(2L, Convert.ToInt64(await store.Ask("SELECT count(*) FROM shop_versions")));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Of_many_who_change_it_at_once_one_wins_each_version(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shop = (await store.Open()).Shop;
        var won = 0;
        await Parallel.ForEachAsync(Enumerable.Range(0, 6), async (person, _) =>
        {
            for (var time = 0; time < 10; time++)
            {
                var version = (await shop.Newest(CancellationToken.None))?.Version ?? 0;
                if ((await shop.Save($"{person}.{time}", "Ada", version, CancellationToken.None)).Kept) Interlocked.Increment(ref won);
            }
        });
        Assert.Equal(won, (await shop.Newest())!.Version);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task What_cannot_be_kept_is_refused(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shop = (await store.Open()).Shop;
        await Assert.ThrowsAsync<ArgumentException>(() => shop.Save("a\0b", "Ada", 0));
        await Assert.ThrowsAsync<ArgumentException>(() => shop.Save("text", " ", 0));
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => shop.Save("text", "Ada", 1));
        Assert.Null(await shop.Newest());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_store_made_before_there_was_a_shop_is_carried_forward_with_its_jobs(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        if (kind == StoreKind.Sqlite) Directory.CreateDirectory(Path.GetDirectoryName(((SqliteTestStore)store).File)!);
        string script;
        await using (var old = store.Look())
        {
            var before = old.Database.GetMigrations().TakeWhile(m => !m.EndsWith("_Shops", StringComparison.Ordinal)).Last();
            script = old.GetService<IMigrator>().GenerateScript(null, before, MigrationsSqlGenerationOptions.NoTransactions);
        }
        Assert.DoesNotContain("shop_versions", script, StringComparison.Ordinal);
        await store.Say(script);
        var id = Guid.NewGuid();
        await using (var old = store.Look())
        {
            var at = new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc);
            await old.Database.ExecuteSqlAsync($"INSERT INTO jobs (id, title, summary, revision, changed_by, changed_utc, archived, search) VALUES ({id}, {"Old"}, {"s"}, {1}, {"Ada"}, {at}, {false}, {"old s"})");
            await old.Database.ExecuteSqlAsync($"INSERT INTO revisions (job, number, kind, words, name, made_by, made_utc, ticket, text) VALUES ({id}, {1}, {0}, {"w"}, {""}, {"Ada"}, {at}, {Guid.NewGuid()}, {"text"})");
        }
        var shelf = await store.Open();
        Assert.Equal("text", (await shelf.Open(id, 1))!.Text);
        Assert.True((await shelf.Shop.Save(Text("Weir Lane"), "Ada", 0)).Kept);
    }
}
