namespace Rodwright.Workshop.Shelf;

/// <summary>A revision with its text.</summary>
/// <param name="Note">All but the text.</param>
/// <param name="Text">The whole job file.</param>
public sealed record Revision(RevisionNote Note, string Text);
