using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Workshop.Edits;

/// <summary>Makes a teaching model of a stair, or a stair of a model.</summary>
public static class ScaleEdit
{
    /// <summary>
    /// The job at another model scale: every length of it, the fixed risers of a turn too, in proportion, to a hundredth of a millimetre (in a job in inches exactly). The timber is a
    /// proposal: real stock is chosen afterwards, nothing scales it again. Null at the scale the job has.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="scale">1 for full size; 0.5 for half.</param>
    public static JobEdit? To(Job job, double scale)
    {
        if (job.ModelScale == scale || !(scale > 0)) return null;
        var (factor, tree) = (scale / job.ModelScale, JobEdits.Tree(job));
        var changes = new List<FieldChange> { FieldChange.To("modelScale", scale) };
        foreach (var field in JobFields.Descriptions.Where(d => d.Unit == "mm" && !d.Path.Contains('[', StringComparison.Ordinal)))
        {
            var parts = Numbers(JobEdits.At(tree, field.Path)).Select(length => length * factor).ToList();
            if (parts.Count == 1) changes.Add(FieldChange.To(field.Path, Round(parts[0])));
            else if (parts.Count > 1) changes.Add(FieldChange.ToList(field.Path, parts.Select(Round)));
        }
        foreach (var list in JobFields.Descriptions.Select(d => d.Path).Where(p => p.StartsWith("survey.", StringComparison.Ordinal) && p.Contains("[]", StringComparison.Ordinal)).Select(p => p[..p.IndexOf("[]", StringComparison.Ordinal)]).Distinct())
        {
            if (JobEdits.At(tree, list)?.DeepClone() is not { } node) continue;
            changes.Add(new(list, InProportion(node, list).ToJsonString()));
        }
        if (job.Layout.Sequence.Any(i => i is Turn turn && (turn.FirstRiser ?? turn.LastRiser ?? turn.Well) is not null))
            changes.Add(FieldChange.ToSequence(job.Layout.Sequence.Select(item => item is Turn turn ? Scaled(turn) : item)));
        return new([.. changes], scale == 1 ? "full size" : $"a model at {Number.Print(scale, 3)} of full size");

        Turn Scaled(Turn turn) => turn with { FirstRiser = By(turn.FirstRiser), LastRiser = By(turn.LastRiser), Well = By(turn.Well) };

        double? By(double? length) => length is { } value ? Round(value * factor) : null;

        // Numbers of fields in millimetres; angles and names stay as they are.
        JsonNode InProportion(JsonNode node, string path) => node switch
        {
            JsonArray list => new JsonArray([.. list.Select(n => InProportion(n!.DeepClone(), IsLength(path) ? path : path + "[]"))]),
            JsonObject group => new JsonObject(group.Select(f => KeyValuePair.Create<string, JsonNode?>(f.Key, InProportion(f.Value!.DeepClone(), path + "." + f.Key)))),
            JsonValue value when IsLength(path) && value.TryGetValue<double>(out var number) => JsonValue.Create(Round(number * factor)),
            _ => node,
        };

        static IEnumerable<double> Numbers(JsonNode? node) => node switch
        {
            JsonArray list => list.SelectMany(Numbers),
            JsonValue value => [value.GetValue<double>()],
            _ => [],
        };

        static bool IsLength(string path) => JobFields.Descriptions.Any(d => d.Path == path && d.Unit == "mm");

        double Round(double value) => job.Units.IsInches ? value : Math.Round(value, 2, MidpointRounding.AwayFromZero);
    }
}
