using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A list of groups of fields.</summary>
/// <param name="blank">An item before its fields are read.</param>
/// <param name="most">More items than this cannot be meant.</param>
/// <param name="tooMany">The code for a list that is too long.</param>
/// <param name="empty">The code for a list with nothing in it; without one it may be empty.</param>
internal sealed class ListField<T, TItem>(
    string name, string label, string source, TItem blank, ImmutableArray<Field<TItem>> fields, int most,
    Func<T, IReadOnlyList<TItem>> get, Func<T, ImmutableArray<TItem>, T> set, string tooMany = JobCodes.TooManyItems, string empty = "")
    : Field<T>(name, label, source, required: false) where T : class where TItem : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, $"a list of {Label} in brackets", "each in braces, with commas between")) return owner;
        var count = json.GetArrayLength();
        if (count == 0 && empty.Length > 0) reading.Refuse(empty, path, "the list is empty", $"{Source}; or leave it out");
        if (count > most) reading.Refuse(tooMany, path, $"{count} {Label} were read; at most {most} are taken", "take out those that are not meant");
        var items = ImmutableArray.CreateBuilder<TItem>();
        for (var i = 0; i < Math.Min(count, most); i++) items.Add(Group.Read(reading, json[i], $"{path}[{i}]", blank, fields));
        return set(owner, items.ToImmutable());
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).Count == 0) return;
        json.WriteStartArray(Name);
        foreach (var item in get(owner))
        {
            json.WriteStartObject();
            foreach (var field in fields) field.Write(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteString("type", "array");
        if (empty.Length > 0) json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        Group.WriteSchema(json, blank, fields);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        fields.SelectMany(f => f.Describe(Group.Join(path + "[]", f.Name), blank)).Select(d => d.Group.Length > 0 ? d : d with { Group = Label });
}
