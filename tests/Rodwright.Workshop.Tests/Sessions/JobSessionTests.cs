using Rodwright.Stairs.Jobs;
using Rodwright.Testing;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Tests.Sessions;

public sealed class JobSessionTests
{
    private readonly MemoryShelf shelf = new(TimeProvider.System);
    private readonly JobNotices notices = new();

    private static Job Kite { get; } = Samples.Job("left-kite-low");

    private async Task<JobSession> Open(Guid job, string by = "Ada") => (await JobSession.Open(shelf, notices, job, () => by))!;

    private async Task<JobSession> Fresh() => await Open((await shelf.Add(ShelfDrafts.Made(Kite, "made", "Ada"))).Id);

    private static Job With(JobSession session, string path, string value) => JobEdits.Apply(session.State.Job, JobEdits.Set(session.State.Job, path, value)).Value!;

    [Fact]
    public async Task A_change_is_shown_at_once_and_kept()
    {
        using var session = await Fresh();
        await session.Change(With(session, "going", "230"));
        Assert.Equal(230, session.State.Job.Going);
        Assert.Equal(2, session.Card.Revision);
        var kept = await shelf.Open(session.Card.Id, 2);
        Assert.Equal(230, JobFile.Read(kept!.Text).Value!.Going);
        Assert.Contains("225 to 230", kept.Note.Words);
    }

    [Fact]
    public async Task Twenty_changes_are_undone_one_by_one_and_done_again()
    {
        using var session = await Fresh();
        for (var i = 1; i <= 20; i++) await session.Change(With(session, "going", $"{225 + i}"));
        for (var i = 19; i >= 0; i--)
        {
            Assert.True(session.CanUndo);
            await session.Undo();
            Assert.Equal(225 + i, session.State.Job.Going);
        }
        Assert.False(session.CanUndo);
        for (var i = 1; i <= 20; i++) await session.Redo();
        Assert.Equal(245, session.State.Job.Going);
        Assert.False(session.CanRedo);
        Assert.Equal(61, session.Card.Revision);
    }

    [Fact]
    public async Task Undo_outlives_the_session()
    {
        Guid job;
        using (var first = await Fresh())
        {
            job = first.Card.Id;
            await first.Change(With(first, "going", "230"));
            await first.Change(With(first, "width", "900"));
            await first.Undo();
        }
        using var later = await Open(job);
        Assert.Equal((230, 860), (later.State.Job.Going, later.State.Job.Width));
        await later.Redo();
        Assert.Equal(900, later.State.Job.Width);
        await later.Undo();
        await later.Undo();
        Assert.Equal(225, later.State.Job.Going);
    }

    [Fact]
    public async Task The_same_job_again_makes_no_revision()
    {
        using var session = await Fresh();
        await session.Change(With(session, "going", "225"));
        Assert.Equal(1, session.Card.Revision);
    }

    [Fact]
    public async Task A_preview_is_shown_and_never_kept()
    {
        using var session = await Fresh();
        session.Preview(With(session, "going", "240"));
        Assert.Equal(240, session.State.Job.Going);
        Assert.Equal(225, session.Kept.Job.Going);
        Assert.Equal(1, (await shelf.Card(session.Card.Id))!.Revision);
    }

    [Fact]
    public async Task The_second_of_two_people_is_told_who_changed_what_and_nothing_is_overwritten()
    {
        using var ada = await Fresh();
        using var bert = await Open(ada.Card.Id, "Bert");
        await ada.Change(With(ada, "going", "230"));
        Assert.Equal(2, bert.Newer!.Revision);
        await bert.Change(With(bert, "width", "900"));
        Assert.Equal("Ada", Assert.Single(bert.Clash!.Others).By);
        Assert.Contains("225 to 230", bert.Clash.Others[0].Words);
        Assert.Equal(2, (await shelf.Card(ada.Card.Id))!.Revision);
        Assert.False(bert.CanUndo);
    }

    [Fact]
    public async Task Mine_on_top_makes_both_changes()
    {
        using var ada = await Fresh();
        using var bert = await Open(ada.Card.Id, "Bert");
        await ada.Change(With(ada, "going", "230"));
        await bert.Change(With(bert, "width", "900"));
        Assert.True(await bert.PutMineOnTop());
        Assert.Null(bert.Clash);
        Assert.Equal((230, 900), (bert.State.Job.Going, bert.State.Job.Width));
        Assert.Equal(3, bert.Card.Revision);
    }

    [Fact]
    public async Task Of_one_field_changed_by_both_mine_on_top_is_mine_and_theirs_is_theirs()
    {
        using var ada = await Fresh();
        using var bert = await Open(ada.Card.Id, "Bert");
        using var cora = await Open(ada.Card.Id, "Cora");
        await ada.Change(With(ada, "going", "230"));
        await bert.Change(With(bert, "going", "240"));
        await bert.PutMineOnTop();
        Assert.Equal(240, bert.State.Job.Going);
        await cora.Change(With(cora, "going", "250"));
        await cora.TakeTheirs();
        Assert.Equal(240, cora.State.Job.Going);
        Assert.Equal(3, cora.Card.Revision);
    }

    [Fact]
    public async Task Mine_apart_becomes_a_job_of_its_own()
    {
        using var ada = await Fresh();
        using var bert = await Open(ada.Card.Id, "Bert");
        await ada.Change(With(ada, "going", "230"));
        await bert.Change(With(bert, "width", "900"));
        var card = await bert.KeepMineApart();
        Assert.EndsWith(", copy", card!.Title);
        var mine = JobFile.Read((await shelf.Open(card.Id, 1))!.Text).Value!;
        Assert.Equal((225, 900), (mine.Going, mine.Width));
        Assert.Equal((230, 860), (bert.State.Job.Going, bert.State.Job.Width));
    }

    [Fact]
    public async Task Changes_made_faster_than_the_store_keeps_them_are_all_kept_in_order()
    {
        using var session = await Fresh();
        var keeping = new List<Task>();
        for (var i = 1; i <= 30; i++) keeping.Add(session.Change(With(session, "going", $"{200 + i}")));
        await Task.WhenAll(keeping);
        Assert.Null(session.Clash);
        Assert.Equal(31, session.Card.Revision);
        Assert.Equal(230, JobFile.Read((await shelf.Open(session.Card.Id, 31))!.Text).Value!.Going);
    }

    [Fact]
    public async Task A_store_that_fails_is_told_of_and_what_was_done_is_kept_when_it_is_back()
    {
        var failing = new FailingShelf(shelf);
        var card = await shelf.Add(ShelfDrafts.Made(Kite, "made", "Ada"));
        using var session = (await JobSession.Open(failing, notices, card.Id, () => "Ada"))!;
        failing.Fails = true;
        await session.Change(With(session, "going", "230"));
        Assert.Contains("out of order", session.Trouble);
        Assert.Equal(230, session.State.Job.Going);
        failing.Fails = false;
        await session.TryAgain();
        Assert.Equal("", session.Trouble);
        Assert.Equal(230, JobFile.Read((await shelf.Open(card.Id, 2))!.Text).Value!.Going);
    }

    [Fact]
    public async Task A_job_that_is_not_on_the_shelf_does_not_open() => Assert.Null(await JobSession.Open(shelf, notices, Guid.NewGuid(), () => "Ada"));

    [Fact]
    public async Task A_revision_taken_back_becomes_the_newest_and_the_others_stay()
    {
        using var session = await Fresh();
        await session.Change(With(session, "going", "230"));
        await session.Change(With(session, "going", "240"));
        await session.Restore(1);
        Assert.Equal(225, session.State.Job.Going);
        Assert.Equal(4, (await shelf.Revisions(session.Card.Id)).Length);
        await session.Undo();
        Assert.Equal(240, session.State.Job.Going);
    }
}
