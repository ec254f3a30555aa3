using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>One of a few known words.</summary>
/// <param name="code">The code for a word that is not known.</param>
/// <param name="thing">What the words name: "hand", "turn".</param>
/// <param name="help">What would help; empty to name the nearest word.</param>
internal sealed class ChoiceField<T>(
    string name, string label, ImmutableArray<string> choices, string code, string thing, string source,
    Func<T, string> get, Func<T, string, T> set, bool required = false, string help = "")
    : Field<T>(name, label, source, required) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        var known = JsonWords.Either(choices);
        if (!reading.IsKind(json, JsonValueKind.String, path, JobCodes.TextWanted, $"the {thing}, {known},", $"write {known} in quotation marks")) return owner;
        var text = json.GetString()!;
        if (choices.Contains(text)) return set(owner, text);
        var nearest = NearestName.To(text, choices);
        reading.Refuse(code, path, $"the {thing} \"{JsonWords.Shown(text)}\" is not known; known: {known}",
            nearest is not null ? $"did you mean {nearest}?" : help.Length > 0 ? help : $"write {known}");
        return owner;
    }

    public override void Write(Utf8JsonWriter json, T owner)
    {
        if (get(owner) is { Length: > 0 } text) json.WriteString(Name, text);
    }

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteStartArray("enum");
        foreach (var choice in choices) json.WriteStringValue(choice);
        json.WriteEndArray();
        if (!Required && get(defaults) is { Length: > 0 } usual) json.WriteString("default", usual);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        [new(path, Label, "", null, null, Required || get(defaults).Length == 0 ? null : get(defaults), choices, Required, Source)];
}
