using System.Collections.Frozen;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Picks;

/// <summary>Where a number comes from, in trade words.</summary>
internal static class Why
{
    public const string Height = "survey.floorToFloor";
    public const string Going = "going";
    public const string Width = "width";
    public const string Steps = FieldChange.SequencePath;

    private static readonly FrozenDictionary<string, FieldDescription> Fields = JobFields.Descriptions.ToFrozenDictionary(d => d.Path);

    public static string Rule(string words) => $"setting-out rule: {words}";

    /// <summary>What the field of a job is called there: "practice: depth of the housings in strings".</summary>
    public static string Field(string path) => (path.StartsWith("practice.", StringComparison.Ordinal) ? "practice: " : path.StartsWith("survey.", StringComparison.Ordinal) ? "the survey: " : "the job: ") + Label(path);

    public static string Label(string path) => Fields.TryGetValue(path, out var field) ? FieldLabels.Of(field) : "flights and turns";
}
