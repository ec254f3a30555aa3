using System.Text;
using System.Text.Json;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>Reads and writes regulation files (NAME.regulation.json). Text in, text out: files belong to the program.</summary>
public static class OwnRegulationFile
{
    /// <summary>How the name of such a file ends.</summary>
    public const string Ending = ".regulation.json";

    /// <summary>The table in a text, or everything that is wrong with it, all at once. Never throws, whatever the text.</summary>
    public static Outcome<OwnRegulation> Read(string text)
    {
        var reading = new JobReading(OwnFields.Kind);
        var table = OwnFields.Blank;
        using (var document = JobText.Parse(reading, text))
        {
            if (document is null) return Outcome<OwnRegulation>.Refused(reading.Findings);
            table = Group.Read(reading, document.RootElement, "", table, OwnFields.All);
        }
        OwnChecks.Apply(reading, table);
        return reading.Findings.Any(f => f.Severity == Severity.Error) ? Outcome<OwnRegulation>.Refused(reading.Findings) : Outcome<OwnRegulation>.Of(table, reading.Findings);
    }

    /// <summary>The table as text that reads back as the same table.</summary>
    public static string Write(OwnRegulation table)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout))
        {
            json.WriteStartObject();
            foreach (var field in OwnFields.All) field.Write(json, table);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>The JSON Schema (draft 2020-12) of a regulation file, indented, ending in a line feed. Contradictions between fields are the reader's alone.</summary>
    public static string Schema()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Rodwright regulation");
            json.WriteString("description", "A shop's own table to judge stairs by: lengths in millimetres, full size.");
            Group.WriteSchema(json, OwnFields.Blank, OwnFields.All);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
