using System.Collections.Immutable;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Sessions;

/// <summary>
/// What can be undone and redone, read from the list of revisions alone, so that it outlives the server and is the same for everybody. Immutable.
/// </summary>
public sealed class UndoLine
{
    private readonly ImmutableStack<int> back;
    private readonly ImmutableStack<int> forward;

    private UndoLine(ImmutableStack<int> back, int shown, ImmutableStack<int> forward)
    {
        this.back = back;
        this.forward = forward;
        Shown = shown;
    }

    /// <summary>Number of the revision whose job is shown: the newest, or the one an undo went back to.</summary>
    public int Shown { get; }

    /// <summary>Number of the revision that undo goes back to; null at the beginning.</summary>
    public int? Before => back.IsEmpty ? null : back.Peek();

    /// <summary>Number of the revision that redo goes on to; null when nothing was undone.</summary>
    public int? After => forward.IsEmpty ? null : forward.Peek();

    /// <summary>The line of a job.</summary>
    /// <param name="revisions">All of them, oldest first.</param>
    public static UndoLine Of(IEnumerable<RevisionNote> revisions)
    {
        var line = new UndoLine([], 0, []);
        foreach (var revision in revisions) line = line.With(revision.Kind, revision.Number);
        return line;
    }

    /// <summary>The line after one more revision.</summary>
    public UndoLine With(RevisionKind kind, int number) => kind switch
    {
        RevisionKind.Undo when !back.IsEmpty => new(back.Pop(), back.Peek(), forward.Push(Shown)),
        RevisionKind.Redo when !forward.IsEmpty => new(back.Push(Shown), forward.Peek(), forward.Pop()),
        _ => new(Shown == 0 ? back : back.Push(Shown), number, []),
    };
}
