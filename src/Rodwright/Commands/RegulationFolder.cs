using System.CommandLine;
using Rodwright.Output;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Commands;

/// <summary>
/// The shop's own tables of the command line: every NAME.regulation.json of the folder that --regulations names, or else of the folder "regulations" beside the job. One
/// rule, the same for every command; a bad table among them refuses the command, so that none is passed over in silence.
/// </summary>
internal static class RegulationFolder
{
    /// <summary>The folder beside the job.</summary>
    public const string Name = OwnTableFile.Folder;

    public static Option<string?> Option() => new("--regulations") { Description = $"Folder of the shop's own tables, *{OwnRegulationFile.Ending}; without it the folder \"{Name}\" beside the job, if there is one" };

    /// <summary>The published tables with those of the folder; null when one of them is bad: every fault of every table is printed.</summary>
    /// <param name="given">What --regulations says.</param>
    /// <param name="beside">The folder whose "regulations" is taken without it.</param>
    /// <param name="around">Where faults are printed.</param>
    public static RegulationShelf? Read(string? given, string? beside, Surroundings around)
    {
        var folder = given ?? Path.Combine(beside ?? ".", Name);
        if (!Directory.Exists(folder))
        {
            if (given is null) return RegulationShelf.Published;
            FindingText.Write(around.Error, folder, [new("RW6004", Severity.Error, folder, "there is no such folder", "give the folder that holds the shop's tables")]);
            return null;
        }
        var tables = new List<OwnRegulation>();
        var errors = 0;
        foreach (var file in Directory.GetFiles(folder, "*" + OwnRegulationFile.Ending).Order(StringComparer.Ordinal))
        {
            var read = ReadFile(file);
            var findings = read.Findings.ToList();
            if (read.Value is { } table && tables.Exists(t => t.Id == table.Id))
                findings.Add(new(OwnCodes.SameId, Severity.Error, "id", $"{table.Id} was read from another file of the folder too", "give one of the two another id, or take it out"));
            else if (read.Value is { } kept) tables.Add(kept);
            FindingText.Write(around.Error, file, findings);
            errors += findings.Count(f => f.Severity == Severity.Error);
        }
        // A table that is looked for and not found may be lying there under a name that is passed over.
        foreach (var other in Directory.GetFiles(folder, "*.json").Where(IsUnread).Order(StringComparer.Ordinal))
            FindingText.Write(around.Error, other, [new("RW6009", Severity.Note, Path.GetFileName(other), "it looks like a table and was not read: its name does not end as a table's does", $"name it NAME{OwnRegulationFile.Ending}")]);
        if (errors == 0) return RegulationShelf.Published.With(tables.Select(t => t.Table()));
        around.Error.WriteLine($"{folder}: {errors} error{(errors == 1 ? "" : "s")} in the shop's tables, nothing done");
        return null;
    }

    private static bool IsUnread(string path)
    {
        if (path.EndsWith(OwnRegulationFile.Ending, StringComparison.Ordinal)) return false;
        try
        {
            return new FileInfo(path).Length <= JobArgument.LargestFile && File.ReadAllText(path).Contains("\"rodwrightRegulation\"", StringComparison.Ordinal);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false; // Nobody said that it is a table.
        }
    }

    private static Outcome<OwnRegulation> ReadFile(string path)
    {
        try
        {
            if (new FileInfo(path).Length > JobArgument.LargestFile)
                return Outcome<OwnRegulation>.Refused([new("RW6002", Severity.Error, path, $"nothing over {JobArgument.LargestFile} bytes is read", "is it a regulation file?")]);
            return OwnRegulationFile.Read(File.ReadAllText(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return Outcome<OwnRegulation>.Refused([new("RW6001", Severity.Error, path, "the file cannot be read: " + e.Message, "see that it may be read")]);
        }
    }
}
