using System.Text;
using System.Text.Json;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The text of a job file before any field is looked at: size, depth, and whether it is JSON with one object.</summary>
internal static class JobText
{
    private const int Longest = 200_000;
    private const int Deepest = 12;

    /// <summary>The document, or null when the text was refused.</summary>
    public static JsonDocument? Parse(JobReading reading, string text)
    {
        var kind = reading.Kind;
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (string.IsNullOrWhiteSpace(text)) reading.Refuse(JobCodes.Empty, "", "the file is empty", kind.Start);
        else if (text.Length > Longest)
            reading.Refuse(JobCodes.TooLong, "", $"the file has {text.Length} characters; a {kind.Thing} has at most {Number.Print(Longest)}", $"this is probably not a {kind.Name}; " + kind.Start);
        else if (Encoding.UTF8.GetBytes(text) is var bytes && Scan(reading, bytes, kind))
        {
            // Comments and trailing commas were refused in the scan: nothing can go wrong any more.
            var document = JsonDocument.Parse(bytes);
            if (document.RootElement.ValueKind == JsonValueKind.Object) return document;
            reading.Refuse(JobCodes.NotAnObject, "", $"{JsonWords.Kind(document.RootElement)} was read; a {kind.Thing} is one group of fields in braces", kind.Start);
            document.Dispose();
        }
        return null;
    }

    private static bool Scan(JobReading reading, byte[] bytes, FileKind kind)
    {
        var json = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = int.MaxValue / 2 });
        try
        {
            while (json.Read())
            {
                if (json.CurrentDepth > Deepest)
                {
                    reading.Refuse(JobCodes.TooDeep, "", $"braces and brackets are nested more than {Deepest} deep near {Place(bytes, json.TokenStartIndex)}", $"no {kind.Thing} needs more than four; look for a brace that is not closed");
                    return false;
                }
                // Half of a surrogate pair written as \uD83D alone is JSON, but no text.
                if (json.TokenType is JsonTokenType.String or JsonTokenType.PropertyName && json.ValueIsEscaped) json.GetString();
            }
            return true;
        }
        catch (JsonException e)
        {
            reading.Refuse(JobCodes.NotJson, "", $"the file cannot be read as JSON from line {e.LineNumber + 1}, column {e.BytePositionInLine + 1} on", Help(bytes, e, kind));
            return false;
        }
        catch (InvalidOperationException)
        {
            reading.Refuse(JobCodes.UnprintableText, "", $"text with half a character was read at {Place(bytes, json.TokenStartIndex)}", "write the character itself instead of \\u…");
            return false;
        }
    }

    /// <summary>What is usually wrong, by the character the reader stopped at.</summary>
    private static string Help(byte[] bytes, JsonException e, FileKind kind)
    {
        var line = 0L;
        var at = 0;
        while (at < bytes.Length && line < e.LineNumber) if (bytes[at++] == '\n') line++;
        at = (int)Math.Min(bytes.Length, at + (e.BytePositionInLine ?? 0));
        return at >= bytes.Length ? "the file ends too early: a brace, bracket or quotation mark is not closed" : (char)bytes[at] switch
        {
            '/' or '#' => $"comments are not allowed in a {kind.Name}",
            '\'' => "text stands in double quotation marks",
            '}' or ']' => "there may be a comma too many before it, or a brace or bracket that does not match",
            'N' or 'I' or '+' or '.' or '-' => "numbers are written like 225 or 0.5; NaN and infinity are none",
            '"' => "a comma or a colon may be missing before it",
            _ => "look for a missing comma, colon or quotation mark just before it",
        };
    }

    private static string Place(byte[] bytes, long index)
    {
        var before = bytes.AsSpan(0, (int)index);
        return $"line {before.Count((byte)'\n') + 1}, column {before.Length - before.LastIndexOf((byte)'\n')}";
    }
}
