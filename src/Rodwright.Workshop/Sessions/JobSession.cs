using System.Collections.Immutable;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Shelf;
using Rodwright.Workshop.Tables;

namespace Rodwright.Workshop.Sessions;

/// <summary>
/// One person at one job: shows its state, keeps every change as it is made, undoes without limit, and never overwrites what somebody else changed.
/// Not for use by several at once; <see cref="Heard"/> may come from another thread.
/// </summary>
public sealed class JobSession : IDisposable
{
    private readonly IJobShelf shelf;
    private readonly JobNotices notices;
    private readonly Func<string> by;
    private readonly IDisposable ear;
    private readonly SemaphoreSlim turn = new(1);
    private UndoLine line;
    private RegulationShelf tables;

    private JobSession(IJobShelf shelf, JobNotices notices, Func<string> by, JobCard card, UndoLine line, BenchState state)
    {
        (this.shelf, this.notices, this.by, this.line, tables) = (shelf, notices, by, line, state.Tables);
        (Card, State, Kept, Wanted) = (card, state, state, state);
        ear = notices.Listen(card.Id, this, heard =>
        {
            Newer = heard;
            Heard?.Invoke();
        });
    }

    /// <summary>Raised when somebody else has changed the job: see <see cref="Newer"/>.</summary>
    public event Action? Heard;

    /// <summary>The job on the shelf, as far as this session has followed it.</summary>
    public JobCard Card { get; private set; }

    /// <summary>What is shown: the job as kept, or as a drag would make it.</summary>
    public BenchState State { get; private set; }

    /// <summary>The job as last kept or read.</summary>
    public BenchState Kept { get; private set; }

    /// <summary>The job as last asked for, whether kept yet or still on its way: what the next change is made to.</summary>
    public BenchState Wanted { get; private set; }

    /// <summary>The job's newest card where somebody else changed it after <see cref="Card"/>; null when this session is up to date.</summary>
    public JobCard? Newer { get; private set; }

    /// <summary>A change that could not be kept; null for none. Nothing more can be changed before it is settled.</summary>
    public Clash? Clash { get; private set; }

    /// <summary>Why the last change is not kept yet, from the store; empty when all is well.</summary>
    public string Trouble { get; private set; } = "";

    /// <summary>The tables the job may be judged by, as last looked up.</summary>
    public RegulationShelf Tables => tables;

    /// <summary>Whether there is something to undo.</summary>
    public bool CanUndo => line.Before is not null && Clash is null;

    /// <summary>Whether there is something to redo.</summary>
    public bool CanRedo => line.After is not null && Clash is null;

    /// <summary>Opens a job.</summary>
    /// <param name="shelf">Where it is kept.</param>
    /// <param name="notices">Who else has it open.</param>
    /// <param name="job">Which.</param>
    /// <param name="by">The person's name, asked for at every change.</param>
    /// <returns>Null when there is no such job.</returns>
    public static async Task<JobSession?> Open(IJobShelf shelf, JobNotices notices, Guid job, Func<string> by)
    {
        if (await shelf.Card(job) is not { } card) return null;
        var (line, state) = await Read(shelf, card, await shelf.Tables.Shelf());
        return new(shelf, notices, by, card, line, state);
    }

    /// <summary>Looks the shop's own tables up again: one of them may have been changed meanwhile, and the job is then judged by what it says now.</summary>
    public Task FollowTables() => InTurn(async () =>
    {
        var fresh = await shelf.Tables.Shelf();
        if (fresh.HoldsSame(tables)) return;
        tables = fresh;
        var kept = Again(Kept);
        Wanted = ReferenceEquals(Wanted, Kept) ? kept : Again(Wanted);
        (State, Kept) = (Wanted, kept);

        BenchState Again(BenchState state) => state.IsStaleBy(fresh) ? BenchState.Of(state.Job, fresh) : state with { Tables = fresh };
    });

    /// <summary>Shows a job without keeping it, for a drag that is not over yet.</summary>
    public void Preview(Job job) => State = ReferenceEquals(job, Kept.Job) ? Kept : BenchState.Of(job, tables);

    /// <summary>Shows a change at once, and keeps it. Nothing happens when the job is the same as before.</summary>
    /// <param name="job">The job changed.</param>
    /// <param name="words">What was changed, in bench words; empty to have it worked out.</param>
    /// <returns>Completes when it is kept, found to clash, or in <see cref="Trouble"/>.</returns>
    public Task Change(Job job, string words = "")
    {
        if (Clash is not null) return Task.CompletedTask;
        var told = JobEdits.Words(Wanted.Job, job);
        if (told.Length == 0)
        {
            State = Wanted;
            return Task.CompletedTask;
        }
        var state = Wanted = State = BenchState.Of(job, tables);
        return InTurn(() => Keep(RevisionKind.Edit, state, words.Length > 0 ? words : told));
    }

    /// <summary>Goes back one change.</summary>
    public Task Undo() => InTurn(() => Take(line.Before, RevisionKind.Undo, "undone"));

    /// <summary>Does again what was undone.</summary>
    public Task Redo() => InTurn(() => Take(line.After, RevisionKind.Redo, "done again"));

    /// <summary>Takes an earlier revision back as the newest; those between stay on the shelf.</summary>
    public Task Restore(int number) => InTurn(() => Take(number, RevisionKind.Restore, $"back to revision {number}"));

    /// <summary>Tries once more to keep what is shown, after <see cref="Trouble"/>.</summary>
    public Task TryAgain() => InTurn(() => Trouble.Length == 0 ? Task.CompletedTask : Keep(RevisionKind.Edit, Wanted, JobEdits.Words(Kept.Job, Wanted.Job)));

    /// <summary>Goes on from what the others made of the job; a change that clashed is dropped.</summary>
    public async Task TakeTheirs()
    {
        Clash = null;
        if (await shelf.Card(Card.Id) is not { } card) return;
        var (fresh, state) = await Read(shelf, card, tables);
        (Card, line, State, Kept, Wanted, Newer, Trouble) = (card, fresh, state, state, state, null, "");
    }

    /// <summary>Makes this person's change once more, on what the others made of the job.</summary>
    /// <returns>False when the two together are not a job; the clash then stands.</returns>
    public async Task<bool> PutMineOnTop()
    {
        if (Clash is not { } clash || await shelf.Card(Card.Id) is not { } card) return false;
        var (fresh, state) = await Read(shelf, card, tables);
        if (JobMerge.Carry(clash.Base, clash.Mine, state.Job).Value is not { } both) return false;
        (Card, line, State, Kept, Wanted, Newer, Clash) = (card, fresh, state, state, state, null, null);
        await Change(both, clash.Words);
        return true;
    }

    /// <summary>Keeps this person's job as another one on the shelf, and goes on from what the others made of this one.</summary>
    /// <returns>The new job; null when nothing clashed.</returns>
    public async Task<JobCard?> KeepMineApart()
    {
        if (Clash is not { } clash) return null;
        var mine = clash.Mine with { Title = JobTitles.Copy(clash.Mine.Title) };
        var card = await shelf.Add(ShelfDrafts.Made(mine, $"made from “{clash.Mine.Title}”: {clash.Words}", by()));
        await TakeTheirs();
        return card;
    }

    /// <inheritdoc/>
    public void Dispose() => ear.Dispose();

    private static async Task<(UndoLine, BenchState)> Read(IJobShelf shelf, JobCard card, RegulationShelf tables)
    {
        var notes = await shelf.Revisions(card.Id);
        var revision = await shelf.Open(card.Id, card.Revision) ?? throw new InvalidDataException($"job {card.Id} has no revision {card.Revision}");
        return (UndoLine.Of(notes.Where(n => n.Number <= card.Revision)), BenchState.Of(StoredJob.Read(revision.Text), tables));
    }

    private async Task Take(int? number, RevisionKind kind, string words)
    {
        if (Clash is not null || number is not { } wantedNumber || await shelf.Open(Card.Id, wantedNumber) is not { } revision) return;
        var job = StoredJob.Read(revision.Text);
        var differences = JobEdits.Words(Kept.Job, job);
        Wanted = State = BenchState.Of(job, tables);
        await Keep(kind, Wanted, differences.Length > 0 ? $"{words}: {differences}" : words);
    }

    private async Task Keep(RevisionKind kind, BenchState state, string words)
    {
        if (Clash is { } clash)
        {
            // Made before the clash was known: it belongs to what the person wants.
            Clash = clash with { Mine = state.Job, Words = $"{clash.Words}; {words}" };
            return;
        }
        SaveOutcome? outcome;
        try
        {
            // A store may well do its work before it returns; the drawing does not wait for it.
            outcome = await Task.Run(() => shelf.Save(Card.Id, Card.Revision, ShelfDrafts.Of(kind, state.Job, words, by())));
        }
        catch (Exception fault) when (fault is not OperationCanceledException)
        {
            Trouble = fault.Message;
            return;
        }
        if (outcome is null) throw new InvalidOperationException("the job is no longer on the shelf");
        Trouble = "";
        if (outcome.Kept)
        {
            (Card, Kept) = (outcome.Card, state);
            line = line.With(kind, Card.Revision);
            notices.Tell(Card, this);
            return;
        }
        Clash = new(Kept.Job, state.Job, words, outcome.Others);
        Newer = outcome.Card;
        State = Wanted = Kept;
    }

    /// <summary>One after the other: each is based on what the one before it left.</summary>
    private async Task InTurn(Func<Task> act)
    {
        await turn.WaitAsync();
        try
        {
            await act();
        }
        finally
        {
            turn.Release();
        }
    }
}
