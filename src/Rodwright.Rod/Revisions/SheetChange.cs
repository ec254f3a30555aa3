namespace Rodwright.Rod.Revisions;

/// <summary>A sheet that has to be printed again, or taken out.</summary>
/// <param name="Set">The set it belongs to: "set" or "true-size".</param>
/// <param name="Name">Its file-safe name.</param>
/// <param name="Title">Its name for people.</param>
/// <param name="Number">Which sheet of its set it is now; where it is gone, which it was.</param>
/// <param name="Kind">Added, removed or changed.</param>
public sealed record SheetChange(string Set, string Name, string Title, int Number, ChangeKind Kind);
