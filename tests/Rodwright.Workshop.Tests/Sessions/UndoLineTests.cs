using CsCheck;
using Rodwright.Properties;
using Rodwright.Workshop.Sessions;
using Rodwright.Workshop.Shelf;

namespace Rodwright.Workshop.Tests.Sessions;

public sealed class UndoLineTests
{
    private static RevisionNote Note(int number, RevisionKind kind) => new(number, kind, "", "", "somebody", default);

    private static UndoLine Line(params ReadOnlySpan<RevisionKind> kinds)
    {
        var notes = new List<RevisionNote>();
        foreach (var kind in kinds) notes.Add(Note(notes.Count + 1, kind));
        return UndoLine.Of(notes);
    }

    [Fact]
    public void A_job_just_made_has_nothing_to_undo()
    {
        var line = Line(RevisionKind.Made);
        Assert.Equal((1, null, null), (line.Shown, line.Before, line.After));
    }

    [Fact]
    public void An_edit_can_be_undone_and_redone()
    {
        var undone = Line(RevisionKind.Made, RevisionKind.Edit, RevisionKind.Undo);
        Assert.Equal((1, null, 2), (undone.Shown, undone.Before, undone.After));
        var redone = Line(RevisionKind.Made, RevisionKind.Edit, RevisionKind.Undo, RevisionKind.Redo);
        Assert.Equal((2, 1, null), (redone.Shown, redone.Before, redone.After));
    }

    [Fact]
    public void A_new_edit_after_an_undo_ends_the_redo_and_goes_back_to_what_was_shown()
    {
        var line = Line(RevisionKind.Made, RevisionKind.Edit, RevisionKind.Undo, RevisionKind.Edit);
        Assert.Equal((4, 1, null), (line.Shown, line.Before, line.After));
    }

    [Fact]
    public void Taking_a_revision_back_is_itself_undone_like_an_edit()
    {
        var line = Line(RevisionKind.Made, RevisionKind.Edit, RevisionKind.Edit, RevisionKind.Restore);
        Assert.Equal((4, 3, null), (line.Shown, line.Before, line.After));
    }

    [Fact]
    public void Any_row_of_edits_undos_and_redos_agrees_with_a_plain_editor()
    {
        // The plain editor keeps texts on two stacks; the line keeps numbers. What is shown must have the same text.
        Gen.Int[0, 2].List[0, 60].Holds(acts =>
        {
            var (texts, notes) = (new List<string> { "0" }, new List<RevisionNote> { Note(1, RevisionKind.Made) });
            var (back, shown, forward) = (new Stack<string>(), "0", new Stack<string>());
            foreach (var act in acts)
            {
                var line = UndoLine.Of(notes);
                if (act == 0) { back.Push(shown); shown = $"edit {notes.Count}"; forward.Clear(); }
                else if (act == 1) { if (line.Before is null) { Assert.Empty(back); continue; } forward.Push(shown); shown = back.Pop(); Assert.Equal(shown, texts[line.Before.Value - 1]); }
                else { if (line.After is null) { Assert.Empty(forward); continue; } back.Push(shown); shown = forward.Pop(); Assert.Equal(shown, texts[line.After.Value - 1]); }
                texts.Add(shown);
                notes.Add(Note(notes.Count + 1, act switch { 0 => RevisionKind.Edit, 1 => RevisionKind.Undo, _ => RevisionKind.Redo }));
                Assert.Equal(shown, texts[UndoLine.Of(notes).Shown - 1]);
            }
        });
    }
}
