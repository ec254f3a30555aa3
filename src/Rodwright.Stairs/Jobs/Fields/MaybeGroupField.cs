using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Fields in braces that together make one record, or nothing when they are left out.</summary>
/// <param name="blank">The record before its fields are read, for its owner.</param>
internal sealed class MaybeGroupField<T, TInner>(
    string name, string label, string source, Func<T, TInner?> get, Func<T, TInner, T> set, Func<T, TInner> blank, ImmutableArray<Field<TInner>> fields)
    : Field<T>(name, label, source, required: false) where T : class where TInner : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner) => set(owner, Group.Read(reading, json, path, blank(owner), fields));

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner) is not { } inner) return;
        json.WriteStartObject(Name);
        foreach (var field in fields) field.Write(json, inner);
        json.WriteEndObject();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        Group.WriteSchema(json, blank(defaults), fields);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        fields.SelectMany(f => f.Describe(Group.Join(path, f.Name), blank(defaults))).Select(d => d.Group.Length > 0 ? d : d with { Group = Label });
}
