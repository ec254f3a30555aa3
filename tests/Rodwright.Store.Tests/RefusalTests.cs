using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>What may not be kept is refused before anything is written, by every kind of store alike.</summary>
public class RefusalTests
{
    private const string Nul = "a\0b";
    private const string Half = "a\ud83db";

    public static TheoryData<StoreKind> Kinds => TestStore.Kinds;

    /// <summary>First revisions that are none.</summary>
    private static RevisionDraft[] Refused =>
    [
        Drafts.Made() with { Kind = RevisionKind.Edit }, Drafts.Made() with { Kind = (RevisionKind)9 }, Drafts.Made() with { By = "" }, Drafts.Made() with { By = " \t" },
        .. new[] { Nul, Half, "\udc00", "\udc00\ud800", "\0" }.SelectMany(bad => new[]
        {
            Drafts.Made() with { Text = bad }, Drafts.Made() with { Title = bad }, Drafts.Made() with { Summary = bad },
            Drafts.Made() with { Words = bad }, Drafts.Made() with { By = bad },
        }),
    ];

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_first_revision_that_cannot_be_kept_is_refused(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        foreach (var draft in Refused) await Assert.ThrowsAsync<ArgumentException>(() => shelf.Add(draft));
        Assert.Equal(0, (await shelf.Find(new())).Total);
        Assert.Equal(0L, Convert.ToInt64(await store.Ask("SELECT count(*) FROM revisions")));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_later_revision_that_cannot_be_kept_is_refused(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        foreach (var draft in Refused.Skip(1).Select(d => d.Kind == RevisionKind.Made ? d with { Kind = RevisionKind.Edit } : d).Append(Drafts.Made()))
            await Assert.ThrowsAsync<ArgumentException>(() => shelf.Save(job.Id, 1, draft));
        await Assert.ThrowsAsync<ArgumentException>(() => shelf.Name(job.Id, 1, Nul));
        await Assert.ThrowsAsync<ArgumentException>(() => shelf.Name(job.Id, 1, Half));
        Assert.Equal(job, await shelf.Card(job.Id));
        Assert.Equal("", Assert.Single(await shelf.Revisions(job.Id)).Name);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_revision_based_on_one_that_never_was_is_refused(StoreKind kind)
    {
        // Not "somebody was first": there would be nobody to name.
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        foreach (var number in new[] { int.MinValue, -1, 0, 2, 3, int.MaxValue })
            await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => shelf.Save(job.Id, number, Drafts.Edit()));
        Assert.Equal(job, await shelf.Card(job.Id));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task A_question_out_of_its_bounds_is_refused(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        ShelfQuery[] refused =
            [new(Skip: -1), new(Take: 0), new(Take: -1), new(Take: ShelfQuery.MostTaken + 1), new(new string('a', ShelfQuery.MostCharacters + 1))];
        foreach (var query in refused) await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => shelf.Find(query));
        await shelf.Find(new(new string('a', ShelfQuery.MostCharacters), Take: ShelfQuery.MostTaken));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task Who_gives_up_before_the_write_has_written_nothing(StoreKind kind)
    {
        await using var store = await TestStore.New(kind);
        var shelf = await store.Open();
        var job = await shelf.Add(Drafts.Made());
        var stop = new CancellationToken(canceled: true);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shelf.Add(Drafts.Made(), stop));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shelf.Save(job.Id, 1, Drafts.Edit(), stop));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shelf.Name(job.Id, 1, "as sold", stop));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => shelf.Archive(job.Id, true, stop));
        Assert.Equal([job], (await shelf.Find(new())).Cards);
        Assert.Equal("", Assert.Single(await shelf.Revisions(job.Id)).Name);
    }

    [Fact]
    public void Text_that_can_be_kept_is_told_from_text_that_cannot()
    {
        Assert.All(["", "plain", "\ud83d\ude00", "a\ud83d\ude00b", "\ufffd\uffff\u0001\r\n"], text => Assert.True(ShelfText.CanBeKept(text)));
        Assert.All([Nul, Half, "\ud83d", "\ude00", "\ude00\ud83d", "\ud83d\ud83d\ude00", "a\0"], text => Assert.False(ShelfText.CanBeKept(text)));
    }
}
