using Rodwright.Workshop.Shelf;

namespace Rodwright.Store.Tests;

/// <summary>Revisions to save.</summary>
internal static class Drafts
{
    public static RevisionDraft Made(string title = "Barn stair", string summary = "13 risers, left hand") =>
        new(RevisionKind.Made, "{ \"title\": \"" + title + "\" }\n", title, summary, "made from a sample", "Anna");

    public static RevisionDraft Edit(string words = "going 225 to 230", string title = "Barn stair", string by = "Ben") =>
        new(RevisionKind.Edit, "{ \"going\": 230 }\n" + words, title, "13 risers, left hand", words, by);
}
