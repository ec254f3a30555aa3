using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A list of groups of fields.</summary>
/// <param name="blank">An item before its fields are read.</param>
/// <param name="most">More items than this cannot be meant.</param>
/// <param name="code">The code for a list that is empty, or too long.</param>
/// <param name="emptyIsWrong">Whether a list with nothing in it is refused.</param>
internal sealed class ListField<T, TItem>(
    string name, string label, string source, TItem blank, ImmutableArray<Field<TItem>> fields, int most, (string Empty, string TooMany) code, bool emptyIsWrong,
    Func<T, ImmutableArray<TItem>> get, Func<T, ImmutableArray<TItem>, T> set)
    : Field<T>(name, label, source, required: false) where T : class where TItem : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, "a list in brackets", Source)) return owner;
        var count = json.GetArrayLength();
        if (count == 0 && emptyIsWrong) reading.Refuse(code.Empty, path, "the list is empty", $"{Source}; or leave it out");
        if (count > most) reading.Refuse(code.TooMany, path, $"{count} items were read; at most {most} are taken", "take out those that are not meant");
        var items = ImmutableArray.CreateBuilder<TItem>();
        for (var i = 0; i < Math.Min(count, most); i++) items.Add(Group.Read(reading, json[i], $"{path}[{i}]", blank, fields));
        return set(owner, items.ToImmutable());
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).IsEmpty) return;
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
        if (emptyIsWrong) json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", most);
        json.WriteStartObject("items");
        Group.WriteSchema(json, blank, fields);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        fields.SelectMany(f => f.Describe(Group.Join(path + "[]", f.Name), blank)).Select(d => d.Group.Length > 0 ? d : d with { Group = Label });
}
