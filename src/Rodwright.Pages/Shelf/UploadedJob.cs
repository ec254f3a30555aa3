using System.Text;
using Microsoft.AspNetCore.Components.Forms;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Pages.Shelf;

/// <summary>A job out of a file somebody uploads: read in memory, judged by the job file's reader, stored by nobody. The file's name is never used.</summary>
internal static class UploadedJob
{
    /// <summary>Largest file read, bytes; a job file is some kilobytes.</summary>
    public const int Most = 500_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The job, or everything that is wrong with the file.</summary>
    public static Task<Outcome<Job>> Read(IBrowserFile file, RegulationShelf tables) => Read(file, text => JobFile.Read(text, tables));

    /// <summary>A job whose layout is still to be chosen, or everything that is wrong with the file.</summary>
    public static Task<Outcome<Brief>> ReadBrief(IBrowserFile file, RegulationShelf tables) => Read(file, text => BriefFile.Read(text, tables));

    /// <summary>The job of some bytes.</summary>
    internal static Outcome<Job> Of(byte[] bytes, RegulationShelf tables) => Of(bytes, text => JobFile.Read(text, tables));

    private static async Task<Outcome<T>> Read<T>(IBrowserFile file, Func<string, Outcome<T>> read) where T : class
    {
        if (file.Size > Most) return Refuse<T>("RW6006", $"the file is {file.Size} bytes; nothing over {Most} is read", "a job file is some kilobytes: is it one?");
        using var bytes = new MemoryStream();
        try
        {
            await using var stream = file.OpenReadStream(Most);
            await stream.CopyToAsync(bytes);
        }
        catch (IOException)
        {
            return Refuse<T>("RW6007", "the file did not arrive whole", "try again");
        }
        return Of(bytes.ToArray(), read);
    }

    private static Outcome<T> Of<T>(byte[] bytes, Func<string, Outcome<T>> read) where T : class
    {
        try
        {
            var text = Strict.GetString(bytes);
            return read(text.StartsWith('\uFEFF') ? text[1..] : text);
        }
        catch (DecoderFallbackException)
        {
            return Refuse<T>("RW6008", "the file is not text in UTF-8", "job files are JSON text: is it one?");
        }
    }

    private static Outcome<T> Refuse<T>(string code, string message, string hint) where T : class => Outcome<T>.Refused([new(code, Severity.Error, "file", message, hint)]);
}
