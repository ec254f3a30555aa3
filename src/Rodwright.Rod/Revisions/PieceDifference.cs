namespace Rodwright.Rod.Revisions;

/// <summary>One thing about a piece that is another now.</summary>
/// <param name="What">In bench words: "length of the board", "housing of tread 4".</param>
/// <param name="Before">As it was, printed; empty where there is only a measure of the change.</param>
/// <param name="Now">As it is, printed; likewise.</param>
/// <param name="By">How much larger, deeper, or how far moved, mm; null for what is no length.</param>
/// <param name="Words">The whole told in words: "moved 12 along the board".</param>
/// <param name="IsCut">Whether it is about one of the piece's cuts.</param>
public sealed record PieceDifference(string What, string Before, string Now, double? By, string Words, bool IsCut = false);
