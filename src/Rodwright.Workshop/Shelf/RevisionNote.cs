namespace Rodwright.Workshop.Shelf;

/// <summary>A revision without its text, for lists.</summary>
/// <param name="Number">1 for the first, one more for each later one.</param>
/// <param name="Kind">How it came about.</param>
/// <param name="Words">What was changed, in bench words.</param>
/// <param name="Name">The name somebody gave it to find it again; empty for most.</param>
/// <param name="By">Who.</param>
/// <param name="At">When, UTC.</param>
public sealed record RevisionNote(int Number, RevisionKind Kind, string Words, string Name, string By, DateTimeOffset At);
