namespace Rodwright.Workshop.Shelf;

/// <summary>What a text must be for every kind of store to give it back as it was.</summary>
public static class ShelfText
{
    /// <summary>
    /// True when a store gives the text back as it was: anything that is Unicode and holds no NUL (U+0000). PostgreSQL keeps no NUL, and half a
    /// surrogate pair comes back from a store as another character. Titles that were read from a job file can always be kept.
    /// </summary>
    public static bool CanBeKept(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (text[at] == '\0') return false;
            if (!char.IsSurrogate(text[at])) continue;
            if (at + 1 == text.Length || !char.IsSurrogatePair(text[at], text[at + 1])) return false;
            at++;
        }
        return true;
    }
}
