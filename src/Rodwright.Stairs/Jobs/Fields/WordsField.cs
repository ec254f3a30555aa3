using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Several of a few known words, in brackets; left out of the file when there are none.</summary>
/// <param name="thing">What the words name: "family".</param>
internal sealed class WordsField<T>(
    string name, string label, Func<ImmutableArray<string>> known, string code, string thing, string source, Func<T, ListOf<string>> get, Func<T, ListOf<string>, T> set)
    : Field<T>(name, label, source, required: false) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        var words = known();
        const string hint = "in brackets, each in quotation marks, with commas between";
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, $"a list of {Label} in brackets", hint)) return owner;
        var count = json.GetArrayLength();
        if (count > words.Length) reading.Refuse(JobCodes.TooManyItems, path, $"{count} {Label} were read; there are {words.Length}", "name each once");
        var items = new List<string>();
        for (var i = 0; i < Math.Min(count, words.Length); i++)
        {
            var where = $"{path}[{i}]";
            if (!reading.IsKind(json[i], JsonValueKind.String, where, JobCodes.TextWanted, $"the name of a {thing}", hint)) continue;
            var text = json[i].GetString()!;
            if (words.Contains(text)) items.Add(text);
            else reading.Refuse(code, where, $"the {thing} \"{JsonWords.Shown(text)}\" is not known; known: {JsonWords.Either(words)}", NearestName.To(text, words) is { } near ? $"did you mean {near}?" : "choose one of them");
        }
        return set(owner, [.. items]);
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner).Count == 0) return;
        json.WriteStartArray(Name);
        foreach (var word in get(owner)) json.WriteStringValue(word);
        json.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteString("type", "array");
        json.WriteNumber("maxItems", known().Length);
        json.WriteStartObject("items");
        json.WriteStartArray("enum");
        foreach (var word in known()) json.WriteStringValue(word);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) => [new(path, Label, "", null, null, null, known(), Required, Source)];
}
