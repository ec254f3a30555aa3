using System.CommandLine;
using Rodwright.Joinery;
using Rodwright.Output;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Commands;

/// <summary>The job every command but schema takes, and how it is read.</summary>
internal static class JobArgument
{
    // Far above any job; keeps a mistaken path to a film from being read into memory.
    public const int LargestFile = 4_000_000;

    public static Argument<string> Make() => new("JOB") { Description = "Job file, NAME.stair.json" };

    /// <summary>Reads and sets out; prints every error and returns null when there is no stair.</summary>
    public static Stair? SetOut(string path, string? regulations, Surroundings around)
    {
        if (RegulationFolder.Read(regulations, Path.GetDirectoryName(Path.GetFullPath(path)), around) is not { } shelf) return null;
        var outcome = Read(path, shelf);
        if (outcome.Value is { } stair) return stair;
        FindingText.Write(around.Error, path, outcome.Findings);
        var errors = outcome.Findings.Count(f => f.Severity == Severity.Error);
        around.Error.WriteLine($"{path}: {errors} error{(errors == 1 ? "" : "s")}, nothing written");
        return null;
    }

    /// <summary>The text of a file, or why it cannot be read.</summary>
    public static (string? Text, Finding? Refused) Text(string path)
    {
        try
        {
            if (new FileInfo(path) is { Exists: true, Length: > LargestFile } large)
                return (null, new("RW6002", Severity.Error, path, $"the file is {large.Length} bytes; nothing over {LargestFile} is read", "is it a job file?"));
            return (File.ReadAllText(path), null);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return (null, new("RW6001", Severity.Error, path, "the file cannot be read: " + e.Message, "give the path of a job file, NAME.stair.json"));
        }
    }

    private static Outcome<Stair> Read(string path, RegulationShelf shelf)
    {
        var (text, refused) = Text(path);
        if (text is null) return Outcome<Stair>.Refused([refused!]);
        var read = JobFile.Read(text, shelf);
        return read.Value is { } job ? Stair.SetOut(job, read.Findings, shelf) : Outcome<Stair>.Refused(read.Findings);
    }
}
