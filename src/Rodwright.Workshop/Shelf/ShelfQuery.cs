namespace Rodwright.Workshop.Shelf;

/// <summary>What is looked for on the shelf; newest change first.</summary>
/// <param name="Words">Each must occur in title or summary, in any case and order, with or without accents; empty finds all. At most <see cref="MostCharacters"/>.</param>
/// <param name="Archived">True for those put away, false for the others.</param>
/// <param name="Skip">How many to pass over, 0 or more.</param>
/// <param name="Take">How many at most, 1 to 200.</param>
public sealed record ShelfQuery(string Words = "", bool Archived = false, int Skip = 0, int Take = 24)
{
    /// <summary>How long <see cref="Words"/> may be.</summary>
    public const int MostCharacters = 400;

    /// <summary>The most that <see cref="Take"/> may be.</summary>
    public const int MostTaken = 200;
}
