namespace Rodwright.Workshop.Shelf;

/// <summary>A revision about to be kept.</summary>
/// <param name="Kind">How it came about.</param>
/// <param name="Text">The whole job file, as <c>JobFile.Write</c> gives it.</param>
/// <param name="Title">The job's title, as in the text.</param>
/// <param name="Summary">What the shelf says beneath the title: "13 risers, left hand, 3 tapered steps".</param>
/// <param name="Words">What was changed, in bench words: "going 225 to 230".</param>
/// <param name="By">Who changed it, as they call themselves; not empty.</param>
public sealed record RevisionDraft(RevisionKind Kind, string Text, string Title, string Summary, string Words, string By);
