using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Rodwright.Stairs.Findings;

namespace Rodwright.Pages.Shell;

/// <summary>A small text file somebody picks: read in memory, stored by nobody. Its name is never used.</summary>
internal static class PickedFile
{
    /// <summary>Largest file read, bytes; what a shop writes by hand is some kilobytes.</summary>
    public const int Most = 500_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What a reader makes of the file, or why it could not be read as text.</summary>
    /// <param name="file">The file.</param>
    /// <param name="kind">What it should be: "shop file".</param>
    /// <param name="read">The reader.</param>
    public static async Task<Outcome<T>> Read<T>(IBrowserFile file, string kind, Func<string, Outcome<T>> read) where T : class
    {
        if (file.Size > Most) return Refuse<T>("RW6006", $"the file is {file.Size} bytes; nothing over {Most} is read", $"a {kind} is some kilobytes: is it one?");
        using var bytes = new MemoryStream();
        try
        {
            await using var stream = file.OpenReadStream(Most);
            await stream.CopyToAsync(bytes);
            var text = Strict.GetString(bytes.ToArray());
            return read(text.StartsWith('\uFEFF') ? text[1..] : text);
        }
        catch (IOException)
        {
            return Refuse<T>("RW6007", "the file did not arrive whole", "try again");
        }
        catch (DecoderFallbackException)
        {
            return Refuse<T>("RW6008", "the file is not text in UTF-8", $"a {kind} is JSON text: is it one?");
        }
    }

    private static Outcome<T> Refuse<T>(string code, string message, string hint) where T : class => Outcome<T>.Refused([new(code, Severity.Error, "file", message, hint)]);
}
