using System.Diagnostics;
using Rodwright.Store.Saver;
using Rodwright.Workshop.Shelf;
using Xunit;

namespace Rodwright.Store.Tests;

/// <summary>A process that does nothing but save is killed again and again: what was acknowledged is there and whole, and nothing is there by half.</summary>
public class KillTests
{
    private const int Kills = 200;
    private const int AtOnce = 3;
    private const int KillsOfOneStore = 10;
    private const int MostSaves = 12;
    private const int LongestSaveMs = 20;
    private const int Patience = 20 * 60 * 1000;

    [Fact(Timeout = Patience)]
    public async Task Two_hundred_killings_lose_no_revision_and_leave_none_half_written()
    {
        var stop = TestContext.Current.CancellationToken;
        var left = Kills;
        var (seen, unacknowledged) = (0, 0);
        await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(async lane =>
        {
            var random = new Random(lane);
            while (Volatile.Read(ref left) > 0)
            {
                await using var store = new SqliteTestStore();
                JobCard? job = null;
                for (var time = 0; time < KillsOfOneStore && Interlocked.Decrement(ref left) >= 0; time++)
                {
                    using var saver = SaverProcess.Start(job is null ? [store.File] : [store.File, "--job", job.Id.ToString()]);
                    // Its first number is that of the revision it found or made; then a few more, and some way into the next.
                    await saver.Saved(random.Next(1, MostSaves));
                    await Task.Delay(random.Next(LongestSaveMs), stop);
                    Assert.True(await saver.Kill(), "it ended by itself: " + saver.Error);
                    Assert.NotEmpty(saver.Acknowledged);
                    job = await DemandWhole(store, saver.Acknowledged[^1]);
                    Interlocked.Add(ref seen, saver.Acknowledged.Count - 1);
                    if (job.Revision > saver.Acknowledged[^1]) Interlocked.Increment(ref unacknowledged);
                }
            }
        }));
        Assert.True(seen > Kills, $"only {seen} revisions were saved between {Kills} killings");
        TestContext.Current.TestOutputHelper?.WriteLine($"{seen} revisions acknowledged between {Kills} killings; {unacknowledged} times one more was kept and not yet acknowledged");
    }

    [Fact(Timeout = Patience)]
    public async Task Killed_while_it_makes_its_store_it_leaves_one_that_opens()
    {
        var stop = TestContext.Current.CancellationToken;
        await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(async lane =>
        {
            var random = new Random(lane);
            for (var time = 0; time < 5; time++)
            {
                await using var store = new SqliteTestStore();
                // The moment the file appears is the moment its making begins.
                using var saver = SaverProcess.Start(store.File);
                var since = Stopwatch.StartNew();
                while (!File.Exists(store.File) && since.Elapsed < TimeSpan.FromMinutes(5)) await Task.Delay(1, stop);
                await Task.Delay(random.Next(120), stop);
                Assert.True(await saver.Kill(), "it ended by itself: " + saver.Error);
                var shelf = await store.Open();
                if (saver.Acknowledged.Count > 0) await DemandWhole(store, saver.Acknowledged[^1]);
                Assert.True((await shelf.Add(Drafts.Made())).Revision == 1);
            }
        }));
    }

    [Fact(Timeout = Patience)]
    public async Task Two_processes_that_save_one_job_never_share_a_number()
    {
        var stop = TestContext.Current.CancellationToken;
        await using var store = new SqliteTestStore();
        var job = (await (await store.Open()).Add(WholeText.Draft(1))).Id.ToString();
        using var first = SaverProcess.Start(store.File, "--job", job);
        using var second = SaverProcess.Start(store.File, "--job", job);
        var since = Stopwatch.StartNew();
        while ((first.Acknowledged.Count < 20 || second.Acknowledged.Count < 20) && since.Elapsed < TimeSpan.FromMinutes(5)) await Task.Delay(5, stop);
        Assert.True(await first.Kill() && await second.Kill(), first.Error + second.Error);

        // Each begins with the number it found, which it did not save.
        int[] ours = [.. first.Acknowledged.Skip(1), .. second.Acknowledged.Skip(1)];
        Assert.True(first.Acknowledged.Count >= 20 && second.Acknowledged.Count >= 20, "one of them never had its turn");
        Assert.Equal(ours.Length, ours.Distinct().Count());
        await DemandWhole(store, ours.Max());
    }

    /// <summary>Opens the store again and looks at all that is in it.</summary>
    /// <returns>Its one job.</returns>
    private static async Task<JobCard> DemandWhole(SqliteTestStore store, int acknowledged)
    {
        using var shelf = await store.Open();
        var card = Assert.Single((await shelf.Find(new())).Cards);
        // One more may have been kept whose acknowledgement the killing cut short.
        Assert.InRange(card.Revision, acknowledged, acknowledged + 1);
        Assert.Equal((WholeText.Title(card.Revision), $"summary {card.Revision}", $"saver {card.Revision}"), (card.Title, card.Summary, card.ChangedBy));
        var notes = await shelf.Revisions(card.Id);
        Assert.Equal(Enumerable.Range(1, card.Revision), notes.Select(n => n.Number));
        Assert.Equal(card.ChangedAt, notes[^1].At);
        foreach (var note in notes)
        {
            var revision = (await shelf.Open(card.Id, note.Number))!;
            Assert.Equal(WholeText.Of(note.Number), revision.Text);
            Assert.Equal((RevisionKind.Made == note.Kind, $"change {note.Number}"), (note.Number == 1, revision.Note.Words));
        }
        Assert.Equal("ok", await store.Ask("PRAGMA integrity_check"));
        return card;
    }
}
