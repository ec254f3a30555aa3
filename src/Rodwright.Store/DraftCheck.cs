using Rodwright.Workshop.Shelf;

namespace Rodwright.Store;

/// <summary>Refuses what no store may hold, before anything is written: the same for every provider.</summary>
internal static class DraftCheck
{
    /// <exception cref="ArgumentException">The draft cannot be kept.</exception>
    public static void Demand(RevisionDraft draft, bool first)
    {
        if (!Enum.IsDefined(draft.Kind)) throw new ArgumentException($"{draft.Kind} is no kind of revision", nameof(draft));
        if (draft.Kind == RevisionKind.Made != first)
            throw new ArgumentException(first ? "the first revision of a job is the one it was made by" : "only the first revision of a job is the one it was made by", nameof(draft));
        if (string.IsNullOrWhiteSpace(draft.By)) throw new ArgumentException("who makes a revision is not empty", nameof(draft));
        DemandKeepable(draft.Text, "text", nameof(draft));
        DemandKeepable(draft.Title, "title", nameof(draft));
        DemandKeepable(draft.Summary, "summary", nameof(draft));
        DemandKeepable(draft.Words, "words", nameof(draft));
        DemandKeepable(draft.By, "maker's name", nameof(draft));
    }

    /// <exception cref="ArgumentException">The text cannot be kept.</exception>
    public static void DemandKeepable(string text, string what, string argument)
    {
        if (!ShelfText.CanBeKept(text)) throw new ArgumentException($"the {what} holds a NUL or half of a surrogate pair; neither can be kept", argument);
    }
}
