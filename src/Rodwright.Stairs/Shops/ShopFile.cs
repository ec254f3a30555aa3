using System.Text;
using System.Text.Json;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Shops;

/// <summary>Reads and writes shop files (NAME.shop.json). Text in, text out: files belong to the program.</summary>
public static class ShopFile
{
    /// <summary>How the name of such a file ends.</summary>
    public const string Ending = ".shop.json";

    /// <summary>The shop in a text, or everything that is wrong with it, all at once. Never throws, whatever the text.</summary>
    public static Outcome<Shop> Read(string text)
    {
        var reading = new JobReading(ShopFields.Kind);
        var shop = ShopFields.Blank;
        using (var document = JobText.Parse(reading, text))
        {
            if (document is null) return Outcome<Shop>.Refused(reading.Findings);
            shop = Group.Read(reading, document.RootElement, "", shop, ShopFields.All);
        }
        ShopChecks.Apply(reading, shop);
        return reading.Findings.Any(f => f.Severity == Severity.Error) ? Outcome<Shop>.Refused(reading.Findings) : Outcome<Shop>.Of(shop, reading.Findings);
    }

    /// <summary>The shop as text that reads back as the same shop.</summary>
    public static string Write(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout))
        {
            json.WriteStartObject();
            foreach (var field in ShopFields.All) field.Write(json, shop);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>The JSON Schema (draft 2020-12) of a shop file, indented, ending in a line feed. Contradictions between fields are the reader's alone.</summary>
    public static string Schema()
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, JobFile.Layout))
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", "Rodwright shop");
            json.WriteString("description", "A shop's stock, allowances and rates: lengths in millimetres.");
            Group.WriteSchema(json, ShopFields.Blank, ShopFields.All);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }
}
