namespace Rodwright.Hosting.Files;

/// <summary>Names of downloads, made of titles that people typed.</summary>
internal static class FileNames
{
    /// <summary>Plain letters, figures and strokes, so that no title reaches a folder it should not; never empty.</summary>
    public static string Of(string title, string ending)
    {
        var plain = string.Join('-', string.Concat(title.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));
        return (plain.Length == 0 ? "stair" : plain[..Math.Min(plain.Length, 60)]) + ending;
    }
}
