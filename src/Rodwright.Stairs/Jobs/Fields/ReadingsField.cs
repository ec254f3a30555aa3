using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>One or several readings of one thing: a number, or a list of numbers.</summary>
internal sealed class ReadingsField<T>(
    string name, string label, NumberRule rule, int most, string source, Func<T, ImmutableArray<double>> get, Func<T, ImmutableArray<double>, T> set,
    bool required = true)
    : Field<T>(name, label, source, required) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        var hint = $"give one reading, or several in brackets, each {rule.Range(reading.Units)}";
        if (json.ValueKind != JsonValueKind.Array)
            return rule.Read(reading, json, path, hint) is { } only ? set(owner, [only]) : owner;
        var count = json.GetArrayLength();
        if (count == 0 || count > most)
        {
            if (count == 0) reading.Refuse(JobCodes.NoReadings, path, "the list of readings is empty", hint);
            else reading.Refuse(JobCodes.TooManyReadings, path, $"{count} readings were given; at most {most} are taken", "keep those that were taken with care");
            return owner;
        }
        var readings = ImmutableArray.CreateBuilder<double>(count);
        for (var i = 0; i < count; i++)
            if (rule.Read(reading, json[i], $"{path}[{i}]", hint) is { } value) readings.Add(value);
        return readings.Count == count ? set(owner, readings.MoveToImmutable()) : owner;
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (!Required && get(owner).IsEmpty) return;
        json.WriteStartArray(Name);
        foreach (var value in get(owner)) json.WriteNumberValue(value);
        json.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteStartArray("oneOf");
        WriteReading(json);
        json.WriteStartObject();
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", most);
        json.WritePropertyName("items");
        WriteReading(json);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        [new(path, Label, rule.Unit, rule.Least, rule.Most, null, [], Required, Source)];

    private void WriteReading(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        rule.WriteSchema(json);
        json.WriteEndObject();
    }
}
