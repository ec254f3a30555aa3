using System.Collections.Immutable;
using Rodwright.Output;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Commands;

/// <summary>What a stair is to be chosen for, as it was read.</summary>
/// <param name="Brief">Survey, regulation, practice and wishes.</param>
/// <param name="Tables">The tables it may be judged by.</param>
/// <param name="Findings">What was found in reading it; none of it an error.</param>
internal sealed record BriefArgument(Brief Brief, RegulationShelf Tables, ImmutableArray<Finding> Findings)
{
    /// <summary>Reads a brief; prints every error and returns null when there is none.</summary>
    public static BriefArgument? Read(string path, string? regulations, Surroundings around)
    {
        if (RegulationFolder.Read(regulations, Path.GetDirectoryName(Path.GetFullPath(path)), around) is not { } shelf) return null;
        var (text, refused) = JobArgument.Text(path);
        var outcome = text is null ? Outcome<Brief>.Refused([refused!]) : BriefFile.Read(text, shelf);
        if (outcome.Value is { } brief) return new(brief, shelf, outcome.Findings);
        FindingText.Write(around.Error, path, outcome.Findings);
        var errors = outcome.Findings.Count(f => f.Severity == Severity.Error);
        around.Error.WriteLine($"{path}: {errors} error{(errors == 1 ? "" : "s")}, nothing proposed");
        return null;
    }
}
