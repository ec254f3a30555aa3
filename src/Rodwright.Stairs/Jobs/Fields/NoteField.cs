using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A line of text that may be left out, and then is empty.</summary>
internal sealed class NoteField<T>(string name, string label, int longest, string source, Func<T, string> get, Func<T, string, T> set)
    : Field<T>(name, label, source, required: false) where T : class
{
    private readonly TextField<T> line = new(name, label, longest, source, get, set, required: true);

    public override T Read(JobReading reading, JsonElement json, string path, T owner) => line.Read(reading, json, path, owner);

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).Length > 0) line.Write(json, owner);
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults) => line.WriteSchema(json, defaults);

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) => [new(path, Label, "", null, null, null, [], false, Source)];
}
