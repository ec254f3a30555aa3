using System.Globalization;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Workshop.Edits;

/// <summary>Adds what was measured to a survey, and takes it out again: items of lists by their place, walls[0] for the first.</summary>
public static class SurveyEdits
{
    private const string Corners = "survey.well.corners";

    /// <summary>What is known of a field, found by its place in a list or without: survey.walls[2].length. Its path is the one asked for; null for no field.</summary>
    public static FieldDescription? Field(string path) =>
        JobFields.Descriptions.FirstOrDefault(d => d.Path == AnyPlace(path)) is { } field ? field with { Path = path } : null;

    /// <summary>Every field of a thing of the survey, of lists within it not: those have places of their own.</summary>
    public static IEnumerable<FieldDescription> FieldsOf(string path)
    {
        var under = AnyPlace(path) + ".";
        return JobFields.Descriptions.Where(d => d.Path.StartsWith(under, StringComparison.Ordinal) && !d.Path[under.Length..].Contains('[', StringComparison.Ordinal))
            .Select(d => d with { Path = $"{path}.{d.Path[under.Length..]}" });
    }

    /// <summary>How many items a list of the survey has; 0 when it was not measured.</summary>
    public static int Count(Job job, string list) => JobEdits.At(JobEdits.Tree(job), list) is JsonArray items ? items.Count : 0;

    /// <summary>Whether something stands at a path.</summary>
    public static bool Has(Job job, string path) => JobEdits.At(JobEdits.Tree(job), path) is not null;

    /// <summary>Adds an item at the end of a list, or puts a group where there was none. Nothing is supplied that was not typed: what is missing the reader refuses.</summary>
    /// <param name="job">The job.</param>
    /// <param name="path">The list, survey.walls, or the group, survey.well.</param>
    /// <param name="isList">Whether it is a list.</param>
    /// <param name="name">What is added: "wall".</param>
    /// <param name="typed">What was typed, by field within it: ("first.along", "1200"). Empty ones are left out.</param>
    public static JobEdit Add(Job job, string path, bool isList, string name, IEnumerable<(string Field, string Text)> typed)
    {
        var thing = new JsonObject();
        foreach (var (field, text) in typed.Where(t => t.Text.Trim().Length > 0))
        {
            var steps = field.Split('.');
            var at = thing;
            foreach (var step in steps[..^1])
            {
                if (at[step] is not JsonObject inner) at[step] = inner = [];
                at = inner;
            }
            at[steps[^1]] = JsonNode.Parse(TypedValue.Json(Field($"{path}{(isList ? "[0]" : "")}.{field}"), text.Trim(), job.Units));
        }
        JsonNode value = thing;
        if (isList) value = JobEdits.At(JobEdits.Tree(job), path)?.DeepClone() is JsonArray items ? With(items, thing) : new JsonArray(thing);
        return JobEdit.Of($"{name} added", new FieldChange(path, value.ToJsonString()));
    }

    /// <summary>Takes an item of a list, or a group, out of the survey. The last item takes its list along.</summary>
    public static JobEdit Remove(Job job, string path, string name)
    {
        var list = path.EndsWith(']') ? path[..path.LastIndexOf('[')] : path;
        return JobEdit.Of($"{name} removed", FieldChange.ToDefault(list != path && Count(job, list) == 1 ? list : path));
    }

    /// <summary>The well given by its corners from now on, in place of length, width and where they begin.</summary>
    /// <param name="units">The unit of the job: to a tenth of a millimetre, or a sixteenth of an inch.</param>
    /// <param name="corners">Along the first wall and out from it, mm, in order.</param>
    public static JobEdit WellByCorners(Units units, IEnumerable<Point2> corners) => JobEdit.Of("well by its corners",
        new FieldChange(Corners, new JsonArray([.. corners.Select(c => (JsonNode)new JsonArray(Read(units, c.X), Read(units, c.Y)))]).ToJsonString()),
        FieldChange.ToDefault("survey.well.length"), FieldChange.ToDefault("survey.well.width"), FieldChange.ToDefault("survey.well.along"), FieldChange.ToDefault("survey.well.out"));

    /// <summary>One measure of a corner of the well as it was typed; what is no number the reader refuses.</summary>
    /// <param name="job">The job.</param>
    /// <param name="index">The corner's place in the list.</param>
    /// <param name="isAlong">Along the first wall, or out from it.</param>
    /// <param name="typed">What was typed.</param>
    public static JobEdit SetCorner(Job job, int index, bool isAlong, string typed) => OfCorners(job, $"corner {index + 1} of the well",
        list => list[index]!.AsArray()[isAlong ? 0 : 1] = JsonNode.Parse(TypedValue.Json(Field(Corners + "[0]"), typed.Trim(), job.Units)));

    /// <summary>One corner more, half way between the last and the first, to be moved to where it is.</summary>
    public static JobEdit AddCorner(Job job) => OfCorners(job, "corner of the well added", list =>
    {
        var corners = job.Survey.Well!.Corners;
        var at = corners[^1].Towards(corners[0], 0.5);
        list.Add(new JsonArray(Read(job.Units, at.X), Read(job.Units, at.Y)));
    });

    /// <summary>One corner less.</summary>
    public static JobEdit RemoveCorner(Job job, int index) => OfCorners(job, $"corner {index + 1} of the well removed", list => list.RemoveAt(index));

    private static double Read(Units units, double length) => units.IsInches ? units.Stock(length) : Math.Round(length, 1);

    private static JobEdit OfCorners(Job job, string words, Action<JsonArray> change)
    {
        var list = JobEdits.At(JobEdits.Tree(job), Corners)!.DeepClone().AsArray();
        change(list);
        return JobEdit.Of(words, new FieldChange(Corners, list.ToJsonString()));
    }

    /// <summary>An item's path.</summary>
    public static string Item(string list, int index) => string.Create(CultureInfo.InvariantCulture, $"{list}[{index}]");

    private static JsonArray With(JsonArray items, JsonNode item)
    {
        items.Add(item);
        return items;
    }

    /// <summary>A path with every place in a list left open, as fields are described.</summary>
    private static string AnyPlace(string path)
    {
        for (var open = path.IndexOf('[', StringComparison.Ordinal); open >= 0; open = path.IndexOf('[', open + 1))
            path = path[..(open + 1)] + path[path.IndexOf(']', open)..];
        return path;
    }
}
