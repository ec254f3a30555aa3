using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Several groups of the same fields, in brackets; left out of the file when there are none.</summary>
/// <param name="blank">An item before its fields are read.</param>
internal sealed class ListField<T, TItem>(
    string name, string label, int most, string source, Func<T, ListOf<TItem>> get, Func<T, ListOf<TItem>, T> set, TItem blank, ImmutableArray<Field<TItem>> fields)
    : Field<T>(name, label, source, required: false) where T : class where TItem : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        const string hint = "each in braces, with commas between";
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, $"a list of {Label} in brackets", hint)) return owner;
        var count = json.GetArrayLength();
        if (count > most) reading.Refuse(JobCodes.TooManyItems, path, $"{count} {Label} were read; at most {most} are taken", "keep those that concern the stair");
        var items = new List<TItem>();
        for (var i = 0; i < Math.Min(count, most); i++) items.Add(Group.Read(reading, json[i], $"{path}[{i}]", blank, fields));
        return set(owner, [.. items]);
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
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        Group.WriteSchema(json, blank, fields);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        fields.SelectMany(f => f.Describe(Group.Join(path + "[]", f.Name), blank)).Select(d => d.Group.Length > 0 ? d : d with { Group = Label });
}
