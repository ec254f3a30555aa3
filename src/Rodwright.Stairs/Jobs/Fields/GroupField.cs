using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Fields in braces that together make one record.</summary>
internal sealed class GroupField<T, TInner>(
    string name, string label, string source, Func<T, TInner> get, Func<T, TInner, T> set, ImmutableArray<Field<TInner>> fields, bool required = false)
    : Field<T>(name, label, source, required) where T : class where TInner : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner) =>
        set(owner, Group.Read(reading, json, path, get(owner), fields));

    public override void Write(Utf8JsonWriter json, T owner)
    {
        json.WriteStartObject(Name);
        foreach (var field in fields) field.Write(json, get(owner));
        json.WriteEndObject();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        Group.WriteSchema(json, get(defaults), fields);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        fields.SelectMany(f => f.Describe(Group.Join(path, f.Name), get(defaults))).Select(d => d.Group.Length > 0 ? d : d with { Group = Label });
}
