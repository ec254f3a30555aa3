using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Workshop.Edits;

/// <summary>Changes jobs by field path and says in bench words what was changed.</summary>
public static class JobEdits
{
    /// <summary>The job changed, or every reason why it cannot be so. The reader's notes come with the job.</summary>
    public static Outcome<Job> Apply(Job job, JobEdit edit) => JobChanges.Apply(job, edit.Changes);

    /// <summary>The job of a text changed; the text's own errors when it is no job.</summary>
    public static Outcome<Job> Apply(string text, JobEdit edit) => JobFile.Read(text) is { Value: { } job } ? Apply(job, edit) : JobFile.Read(text);

    /// <summary>
    /// The edit that gives a field what somebody typed: a number, a word, true or false, several readings with commas between. Empty puts it back to its
    /// default. What cannot be read is passed on as it is, for the reader to refuse in its own words.
    /// </summary>
    public static JobEdit Set(Job job, string path, string typed)
    {
        var field = SurveyEdits.Field(path);
        var text = typed.Trim();
        var change = text.Length == 0 ? FieldChange.ToDefault(path) : new FieldChange(path, TypedValue.Json(field, text, job.Units));
        var label = field is null ? path : FieldLabels.Of(field);
        var before = Value(job, path);
        return JobEdit.Of($"{label} {(before.Length > 0 ? before : "default")} to {(text.Length > 0 ? text : "default")}", change);
    }

    /// <summary>What a field is now, as it would be typed: 225, 10 1/4, true, wall, "2598, 2601"; empty for a field that is left out; a sequence in words.</summary>
    public static string Value(Job job, string path)
    {
        if (path == FieldChange.SequencePath) return SequenceWords.Of(job.Layout, job.Units);
        return At(Written(job), path) is { } node ? Plain(node) : "";
    }

    /// <summary>Everything in which two jobs differ, in the order of the file; empty exactly when they are the same job.</summary>
    public static ImmutableArray<JobDifference> Differences(Job before, Job after)
    {
        if (before == after) return [];
        var (old, now) = (Tree(before), Tree(after));
        // Told in the unit of the job as it is now: a change of the unit alone is one difference.
        var (told, telling) = after.Units.IsInches ? (Written(before with { Units = after.Units }), Written(after)) : (old, now);
        var differences = ImmutableArray.CreateBuilder<JobDifference>();
        var isSequenceTold = false;
        var lists = new HashSet<string>();
        foreach (var field in JobFields.Descriptions)
        {
            if (field.Path.StartsWith(FieldChange.SequencePath, StringComparison.Ordinal))
            {
                if (!isSequenceTold && !before.Layout.Sequence.SequenceEqual(after.Layout.Sequence))
                    differences.Add(new(FieldChange.SequencePath, "steps", "", SequenceWords.Of(before.Layout, after.Units), SequenceWords.Of(after.Layout, after.Units)));
                isSequenceTold = true;
                continue;
            }
            if (field.Path.IndexOf("[]", StringComparison.Ordinal) is > 0 and var items)
            {
                // Lists of things are told whole.
                var list = field.Path[..items];
                if (lists.Add(list) && !JsonNode.DeepEquals(At(old, list), At(now, list))) differences.Add(new(list, ListWords.NameOf(list), "", ListWords.Of(At(told, list), At(telling, list)), ListWords.Of(At(telling, list), At(told, list))));
                continue;
            }
            var (was, becomes) = (At(old, field.Path), At(now, field.Path));
            if (JsonNode.DeepEquals(was, becomes)) continue;
            // Digits no joiner reads are told only where nothing else tells the two apart.
            var units = field.IsLength ? after.Units : Units.Millimetres;
            var (from, to) = Told(was, units) != Told(becomes, units) ? (Told(was, units), Told(becomes, units)) : (Exactly(At(told, field.Path)), Exactly(At(telling, field.Path)));
            differences.Add(new(field.Path, FieldLabels.Of(field), field.UnitIn(after.Units), from, to));
        }
        return differences.ToImmutable();
    }

    /// <summary>The differences in one line: "going of the straight steps 225 to 230; side of the square newel 90 to 100". Empty for the same job.</summary>
    public static string Words(Job before, Job after) => string.Join("; ", Differences(before, after).Select(d => d.Words));

    /// <summary>A job as the tree its file is, every length a number of millimetres.</summary>
    internal static JsonObject Tree(Job job) => JsonNode.Parse(JobFile.WriteInMillimetres(job))!.AsObject();

    /// <summary>A job as the tree its file is, lengths written as the file writes them.</summary>
    private static JsonObject Written(Job job) => JsonNode.Parse(JobFile.Write(job))!.AsObject();

    /// <summary>What stands at a path of a job's file, [n] for an item of a list; null where nothing does.</summary>
    internal static JsonNode? At(JsonObject tree, string path)
    {
        JsonNode? node = tree;
        foreach (var name in path.Replace("[", ".[", StringComparison.Ordinal).Split('.'))
        {
            if (name is ['[', .. var place, ']'])
            {
                if (node is not JsonArray list || !int.TryParse(place, System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var index) || index >= list.Count) return null;
                node = list[index];
            }
            else if (node is not JsonObject group || !group.TryGetPropertyValue(name, out node)) return null;
        }
        return node;
    }

    /// <summary>A value as it would be typed, every digit kept.</summary>
    private static string Plain(JsonNode node) => node switch
    {
        JsonArray list => string.Join(", ", list.Select(n => n is null ? "" : Plain(n))),
        JsonValue value when value.TryGetValue<string>(out var text) => text,
        JsonValue => node.ToJsonString(),
        _ => "",
    };

    private static string Exactly(JsonNode? node) => node is null ? "" : Plain(node);

    /// <summary>A value as people read it: numbers to three decimals, lengths in inches to the nearest sixteenth.</summary>
    private static string Told(JsonNode? node, Units units) => node switch
    {
        null => "",
        JsonArray list => string.Join(", ", list.Select(n => Told(n, units))),
        JsonValue value when value.TryGetValue<double>(out var number) => units.IsInches ? units.Print(number) : Number.Print(number, 3),
        _ => Plain(node),
    };
}
