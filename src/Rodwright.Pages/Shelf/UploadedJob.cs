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
    public static async Task<Outcome<Job>> Read(IBrowserFile file, RegulationShelf tables)
    {
        if (file.Size > Most) return Refuse("RW6006", $"the file is {file.Size} bytes; nothing over {Most} is read", "a job file is some kilobytes: is it one?");
        using var bytes = new MemoryStream();
        try
        {
            await using var stream = file.OpenReadStream(Most);
            await stream.CopyToAsync(bytes);
        }
        catch (IOException)
        {
            return Refuse("RW6007", "the file did not arrive whole", "try again");
        }
        return Of(bytes.ToArray(), tables);
    }

    /// <summary>The job of some bytes.</summary>
    internal static Outcome<Job> Of(byte[] bytes, RegulationShelf tables)
    {
        try
        {
            var text = Strict.GetString(bytes);
            return JobFile.Read(text.StartsWith('\uFEFF') ? text[1..] : text, tables);
        }
        catch (DecoderFallbackException)
        {
            return Refuse("RW6008", "the file is not text in UTF-8", "job files are JSON text: is it one?");
        }
    }

    private static Outcome<Job> Refuse(string code, string message, string hint) => Outcome<Job>.Refused([new(code, Severity.Error, "file", message, hint)]);
}
