using System.Text.Json;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A number; left out of the file when the property is null.</summary>
internal sealed class NumberField<T>(
    string name, string label, NumberRule rule, string source, Func<T, double?> get, Func<T, double, T> set, bool required = false)
    : Field<T>(name, label, source, required) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        var hint = Required || get(owner) is not { } usual ? $"give the {Label}, {rule.Range(reading.Units)}" : $"the default is {rule.With(usual, reading.Units)}";
        return rule.Read(reading, json, path, hint) is { } value ? set(owner, value) : owner;
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        // The JSON writer prints the shortest digits that read back as the same number, whatever the culture.
        if (get(owner) is { } value) json.WriteNumber(Name, value);
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        rule.WriteSchema(json);
        if (!Required && get(defaults) is { } usual) json.WriteNumber("default", usual);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        [new(path, Label, rule.Unit, rule.Least, rule.Most, Required || get(defaults) is not { } usual ? null : Number.Exact(usual), [], Required, Source)];
}
