using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Stairs.Findings;

namespace Rodwright.Stairs.Jobs.Changes;

/// <summary>Changes fields of a job by way of its file: what comes of it is what the job file's reader makes of it, with all its findings at once.</summary>
public static class JobChanges
{
    /// <summary>No value of a job nests deeper.</summary>
    private const int Deepest = 12;

    /// <summary>The job with its changes, or everything that stands against it. Nothing is clamped. The job itself is not touched.</summary>
    public static Outcome<Job> Apply(Job job, IEnumerable<FieldChange> changes) => Apply(job, changes, JobFile.ReadChanged);

    /// <summary>The same, its findings without remedies that can be pressed: for trials of remedies.</summary>
    internal static Outcome<Job> Draft(Job job, IEnumerable<FieldChange> changes) => Apply(job, changes, JobFile.Draft);

    private static Outcome<Job> Apply(Job job, IEnumerable<FieldChange> changes, Func<string, Outcome<Job>> read)
    {
        // In millimetres, whatever the unit of the job: a change of its unit alone changes no length.
        var tree = JsonNode.Parse(JobFile.WriteInMillimetres(job))!;
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var change in changes)
        {
            if (!TryParse(change.Json, out var value))
                findings.Add(new(JobCodes.NotJson, Severity.Error, change.Path, "the new value cannot be read as JSON", "text stands in double quotation marks, lists in brackets"));
            else if (!Put(tree, change.Path, value, remove: change.Json is null))
                findings.Add(new(JobCodes.Unknown, Severity.Error, change.Path, $"there is no field {change.Path} in a job", "fields are named as in the guide to the job file"));
        }
        return findings.Count > 0 ? Outcome<Job>.Refused(findings) : read(tree.ToJsonString());
    }

    private static bool TryParse(string? json, out JsonNode? value)
    {
        value = null;
        if (json is null) return true;
        try
        {
            value = JsonNode.Parse(json, null, new() { AllowDuplicateProperties = false, MaxDepth = Deepest });
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    /// <summary>Sets or takes out what stands at a path; false when the path leads through something that has no fields.</summary>
    private static bool Put(JsonNode tree, string path, JsonNode? value, bool remove)
    {
        var steps = Steps(path);
        if (steps.IsEmpty) return false;
        JsonNode? at = tree;
        foreach (var step in steps[..^1])
        {
            var next = At(at, step);
            // A group that may be left out is there as soon as something is put into it.
            if (next is null && at is JsonObject owner && step.Name is { } group && IsKnown(path))
            {
                if (remove) return true;
                owner.Add(group, next = new JsonObject());
            }
            at = next;
            if (at is null) return false;
        }
        switch (at)
        {
            case JsonObject group when steps[^1] is { Name: { } name }:
                group.Remove(name);
                if (!remove) group.Add(name, value);
                return true;
            case JsonArray list when steps[^1] is { Name: null, Index: var index } && index < list.Count:
                if (remove) list.RemoveAt(index);
                else list[index] = value;
                return true;
            default:
                return false;
        }
    }

    private static bool IsKnown(string path) => Fields.JobFields.Descriptions.Any(d => d.Path == path || d.Path == path + "[]");

    private static JsonNode? At(JsonNode? node, Step step) => (node, step.Name) switch
    {
        (JsonObject group, { } name) => group[name],
        (JsonArray list, null) => step.Index < list.Count ? list[step.Index] : null,
        _ => null,
    };

    private static ImmutableArray<Step> Steps(string path)
    {
        var steps = ImmutableArray.CreateBuilder<Step>();
        foreach (var dotted in path.Split('.'))
        {
            var open = dotted.IndexOf('[', StringComparison.Ordinal);
            var name = open < 0 ? dotted : dotted[..open];
            if (name.Length == 0) return [];
            steps.Add(new(name, 0));
            if (open < 0) continue;
            if (!dotted.EndsWith(']') || dotted[(open + 1)..^1] is not { Length: > 0 and < 4 } digits || !digits.All(char.IsAsciiDigit)) return [];
            steps.Add(new(null, digits.Aggregate(0, (sum, digit) => 10 * sum + (digit - '0'))));
        }
        return steps.ToImmutable();
    }

    /// <summary>One step into the tree: a field's name, or an item's place when the name is null.</summary>
    private readonly record struct Step(string? Name, int Index);
}
