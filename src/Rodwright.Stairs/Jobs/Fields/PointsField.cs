using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Corners in the room's frame: [[along, out], …]; left out of the file when there are none.</summary>
internal sealed class PointsField<T>(
    string name, string label, NumberRule rule, int least, int most, string source, Func<T, ListOf<Point2>> get, Func<T, ListOf<Point2>, T> set)
    : Field<T>(name, label, source, required: false) where T : class
{
    private const string Hint = "write [[along, out], [along, out], …] in the order of the corners";

    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, "a list of corners in brackets", Hint)) return owner;
        var count = json.GetArrayLength();
        if (count < least || count > most)
        {
            reading.Refuse(count < least ? JobCodes.TooFewCorners : JobCodes.TooManyItems, path, $"{count} corners were read; {least} to {most} are wanted", Hint);
            return owner;
        }
        var points = new List<Point2>();
        for (var i = 0; i < count; i++)
        {
            var where = $"{path}[{i}]";
            if (!reading.IsKind(json[i], JsonValueKind.Array, where, JobCodes.ListWanted, "a corner, [along, out],", Hint)) continue;
            if (json[i].GetArrayLength() != 2)
            {
                reading.Refuse(JobCodes.PointWanted, where, $"a corner of {json[i].GetArrayLength()} numbers was read; two are wanted, along and out", Hint);
                continue;
            }
            var (along, off) = (rule.Read(reading, json[i][0], where + "[0]", Hint), rule.Read(reading, json[i][1], where + "[1]", Hint));
            if (along is { } x && off is { } y) points.Add(new(x, y));
        }
        return points.Count == count ? set(owner, [.. points]) : owner;
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).Count == 0) return;
        json.WriteStartArray(Name);
        foreach (var p in get(owner))
        {
            json.WriteStartArray();
            json.WriteNumberValue(p.X);
            json.WriteNumberValue(p.Y);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteString("type", "array");
        json.WriteNumber("minItems", least);
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 2);
        json.WriteNumber("maxItems", 2);
        json.WriteStartObject("items");
        rule.WriteSchema(json);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        [new(path + "[]", Label, rule.Unit, rule.Least, rule.Most, null, [], false, Source)];
}
