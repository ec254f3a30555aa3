using System.Collections.Immutable;
using Rodwright.Pages.Shell;
using Rodwright.Rod.Board;
using Rodwright.Rod.Stages;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Workshop.Edits;
using Rodwright.Workshop.Picks;
using Rodwright.Workshop.Pictures;
using Rodwright.Workshop.Sessions;

namespace Rodwright.Pages.Work;

/// <summary>
/// What one person sees of one job: the session, what is picked, the stage of the rod shown, and what was refused. Every part of the page looks at this and
/// draws itself again when <see cref="Changed"/> says so. Used on the page's own thread only.
/// </summary>
public sealed class WorkModel(JobSession session, PageScript script) : IDisposable
{
    private readonly Dictionary<string, (JobEdit Edit, ImmutableArray<Finding> Findings)> refused = [];
    private (object? Stair, RodStageList? List) stages;
    private (object? Stair, RodBoard? Board) board;

    /// <summary>Raised after anything here has changed.</summary>
    public event Action? Changed;

    /// <summary>The person at the job.</summary>
    public JobSession Session => session;

    /// <summary>The job and all that follows from it, as shown.</summary>
    public BenchState State => session.State;

    /// <summary>The last stair that could exist: it stays on the board while a change has none.</summary>
    public BenchState Drawn { get; private set; } = session.State;

    /// <summary>The rod of <see cref="Drawn"/>; null when no stair could be drawn yet.</summary>
    public RodBoard? Board
    {
        get
        {
            if (Drawn.Stair is not { } stair) return null;
            if (!ReferenceEquals(board.Stair, stair)) board = (stair, RodBoard.Of(stair, before: board.Board));
            return board.Board;
        }
    }

    /// <summary>The rod line by line.</summary>
    public RodStageList? Stages
    {
        get
        {
            if (Drawn.Stair is not { } stair) return null;
            if (!ReferenceEquals(stages.Stair, stair)) stages = (stair, RodStages.Of(stair));
            return stages.List;
        }
    }

    /// <summary>What is picked; null for nothing.</summary>
    public Pick? Pick { get; private set; }

    /// <summary>Number of the rod's line shown last, 0 for the bare board; null while the finished rod is shown.</summary>
    public int? Line { get; private set; }

    /// <summary>Whether a change is on its way to the shelf.</summary>
    public bool IsKeeping { get; private set; }

    /// <summary>What was refused at the last change of a field; empty for none.</summary>
    public ImmutableArray<Finding> RefusedAt(string path) => refused.TryGetValue(path, out var at) ? at.Findings : [];

    /// <summary>Readings of the survey that were refused, each where it was taken.</summary>
    public ImmutableArray<RefusedReading> RefusedReadings => [.. refused.Values.SelectMany(r => RefusedReading.Of(r.Edit, r.Findings))];

    /// <summary>Makes the change of a field that was refused once more, with a remedy it was offered.</summary>
    public Task<bool> DoWith(string path, Remedy remedy) => refused.TryGetValue(path, out var at) ? Do(at.Edit.With(remedy)) : Task.FromResult(false);

    /// <summary>Changes the job. What is wrong with the change is kept beside its fields, and the job stays as it was.</summary>
    /// <returns>True when the change was taken.</returns>
    public async Task<bool> Do(JobEdit edit)
    {
        if (!Try(edit, out var job)) return false;
        await Follow(session.Change(job, edit.Words));
        return true;
    }

    /// <summary>Changes the job to another one made of it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">What was changed, in bench words; empty to have it worked out.</param>
    public Task Take(Job job, string words) => Follow(session.Change(job, words));

    /// <summary>Shows a change without keeping it, while something is dragged.</summary>
    public void Preview(JobEdit edit)
    {
        if (JobEdits.Apply(session.Wanted.Job, edit).Value is not { } job) return;
        session.Preview(job);
        Tell();
    }

    /// <summary>Keeps what a drag has led to.</summary>
    public async Task Drop(JobEdit? edit)
    {
        session.Preview(session.Wanted.Job);
        if (edit is null) Tell();
        else await Do(edit);
    }

    /// <summary>Goes back one change.</summary>
    public Task Undo() => Follow(session.Undo());

    /// <summary>Does again what was undone.</summary>
    public Task Redo() => Follow(session.Redo());

    /// <summary>Takes an earlier revision back.</summary>
    public Task Restore(int number) => Follow(session.Restore(number));

    /// <summary>Something that settles a clash or follows somebody else.</summary>
    public Task Settle(Task act) => Follow(act);

    /// <summary>Picks a thing by its id and lights it up; an empty or unknown id picks nothing.</summary>
    public async Task Choose(string id)
    {
        Pick = id.Length > 0 ? PickOf(id) : null;
        Tell();
        await script.Light(Pick is null ? [] : [Pick.Id], Pick is null ? [] : [.. Pick.Related]);
    }

    /// <summary>Shows the rod as far as a line; null for the finished rod.</summary>
    public void ShowLine(int? number)
    {
        Line = number is { } n ? Math.Clamp(n, 0, Stages?.Lines.Count() ?? 0) : null;
        Tell();
    }

    /// <summary>Has every part of the page draw itself again.</summary>
    public void Tell()
    {
        if (session.State.Stair is not null) Drawn = session.State;
        if (Line is not null) Line = Math.Min(Line.Value, Stages?.Lines.Count() ?? 0);
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose() => session.Dispose();

    private bool Try(JobEdit edit, out Job job)
    {
        var outcome = JobEdits.Apply(session.Wanted.Job, edit);
        foreach (var change in edit.Changes) refused.Remove(change.Path);
        job = outcome.Value!;
        if (outcome.Value is not null) return true;
        foreach (var change in edit.Changes) refused[change.Path] = (edit, [.. outcome.Findings.Where(f => f.Severity == Severity.Error)]);
        Tell();
        return false;
    }

    private async Task Follow(Task keeping)
    {
        IsKeeping = !keeping.IsCompleted;
        Refresh();
        await keeping;
        IsKeeping = false;
        Refresh();
    }

    /// <summary>What is picked may have other measures now, or be gone.</summary>
    private void Refresh()
    {
        if (session.State.Stair is not null) Drawn = session.State;
        if (Pick is { } pick) Pick = PickOf(pick.Id);
        Tell();
    }

    private Pick? PickOf(string id) => Drawn is { Stair: { } stair, Proof: { } proof } ? Picks.Of(stair, proof, Stages!, id) : null;
}
