using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A name that may be left out: the sheets then say what the thing is.</summary>
internal sealed class NameField<T>(Func<T, string> get, Func<T, string, T> set) : Field<T>("name", "name", "as sheets and findings call it; left out, they say what it is", required: false) where T : class
{
    private readonly TextField<T> text = new("name", "name", 40, "", get, set);

    public override T Read(JobReading reading, JsonElement json, string path, T owner) => text.Read(reading, json, path, owner);

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).Length > 0) text.Write(json, owner);
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        text.WriteSchemaOfText(json);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) => [new(path, Label, "", null, null, null, [], false, Source)];
}
