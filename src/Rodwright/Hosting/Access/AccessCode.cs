using System.Security.Cryptography;
using System.Text;

namespace Rodwright.Hosting.Access;

/// <summary>The code that lets a person of the workshop's network in. Kept in the data folder, so that it stays the same from day to day until the file is deleted.</summary>
internal sealed class AccessCode
{
    // No letters or figures that are taken for one another on a wall across the shop.
    private const string Letters = "ACDEFGHJKMNPQRTUVWXY34679";
    private const int Length = 10; // 25^10: 46 bits; at ten tries a minute no guess comes near

    private readonly byte[] known;

    private AccessCode(string text)
    {
        Text = text;
        known = Encoding.UTF8.GetBytes(Bare(text));
    }

    /// <summary>As it is shown: two groups of five.</summary>
    public string Text { get; }

    /// <summary>The code of a data folder; made the first time.</summary>
    public static AccessCode In(string folder)
    {
        var file = Path.Combine(folder, "access-code.txt");
        if (File.Exists(file) && File.ReadAllText(file).Trim() is { } kept && Bare(kept).Length == Length) return new(kept);
        var fresh = RandomNumberGenerator.GetString(Letters, Length);
        var text = fresh[..5] + "-" + fresh[5..];
        var beside = file + ".new";
        File.WriteAllText(beside, text + "\n");
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(beside, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.Move(beside, file, overwrite: true);
        return new(text);
    }

    /// <summary>Whether this is the code, in any case, with or without the stroke; takes as long for a wrong one as for the right one.</summary>
    public bool Is(string? tried) => tried is { Length: <= 64 } && CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(Bare(tried)), known);

    private static string Bare(string text) => string.Concat(text.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
