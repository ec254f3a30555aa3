using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>True, false, or left out.</summary>
internal sealed class PerhapsField<T>(string name, string label, string source, Func<T, bool?> get, Func<T, bool, T> set)
    : Field<T>(name, label, source, required: false) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        if (json.ValueKind is JsonValueKind.True or JsonValueKind.False) return set(owner, json.ValueKind == JsonValueKind.True);
        reading.IsKind(json, JsonValueKind.True, path, JobCodes.FlagWanted, "true or false", "write true or false, without quotation marks");
        return owner;
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner) is { } value) json.WriteBoolean(Name, value);
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteString("type", "boolean");
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) => [new(path, Label, "", null, null, null, ["true", "false"], false, Source)];
}
