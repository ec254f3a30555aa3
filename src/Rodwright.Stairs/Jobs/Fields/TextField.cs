using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>A line of text, not blank, printable, of limited length.</summary>
internal sealed class TextField<T>(
    string name, string label, int longest, string source, Func<T, string> get, Func<T, string, T> set, bool required = false)
    : Field<T>(name, label, source, required) where T : class
{
    public override T Read(JobReading reading, JsonElement json, string path, T owner)
    {
        var hint = $"give the {Label} in quotation marks, at most {longest} characters";
        if (!reading.IsKind(json, JsonValueKind.String, path, JobCodes.TextWanted, "text", hint)) return owner;
        var text = json.GetString()!;
        if (string.IsNullOrWhiteSpace(text)) reading.Refuse(JobCodes.BlankText, path, "blank text was read; words are wanted", hint);
        else if (text.Length > longest) reading.Refuse(JobCodes.LongText, path, $"{text.Length} characters were read; at most {longest} fit", hint);
        else if (text.Any(c => char.IsControl(c) || c is '\u2028' or '\u2029'))
            reading.Refuse(JobCodes.UnprintableText, path, "a tab, a line break or another control character was read; one printable line is wanted", hint);
        else return set(owner, text);
        return owner;
    }

    public override void Write(Utf8JsonWriter json, T owner) => json.WriteString(Name, get(owner));

    public override void WriteSchema(Utf8JsonWriter json, T defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        WriteSchemaOfText(json);
        if (!Required) json.WriteString("default", get(defaults));
        json.WriteEndObject();
    }

    /// <summary>Writes what the schema asks of the text alone.</summary>
    internal void WriteSchemaOfText(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteNumber("minLength", 1);
        json.WriteNumber("maxLength", longest);
        json.WriteString("pattern", @"^[^\u0000-\u001f\u007f-\u009f\u2028\u2029]*[^\s\u0000-\u001f\u007f-\u009f\u2028\u2029][^\u0000-\u001f\u007f-\u009f\u2028\u2029]*$");
    }

    public override IEnumerable<FieldDescription> Describe(string path, T defaults) =>
        [new(path, Label, "", null, null, Required ? null : get(defaults), [], Required, Source)];
}
