using System.Text;
using System.Text.Json;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Jobs;

/// <summary>The JSON Schema (draft 2020-12) of a job file, made from the same descriptions the reader works from. Contradictions between fields are the reader's alone.</summary>
public static class JobSchema
{
    private static readonly Lazy<string> Written = new(Write);

    /// <summary>The schema, indented, ending in a line feed.</summary>
    public static string Text() => Written.Value;

    private static string Write()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Rodwright job");
            json.WriteString("description", "A timber stair to be set out: lengths in millimetres.");
            Group.WriteSchema(json, JobFields.Blank, JobFields.All);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
