using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>What was read, in words fit for a finding: short, printable.</summary>
internal static class JsonWords
{
    private const int Longest = 40;

    public static string Kind(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Object => "a group of fields",
        JsonValueKind.Array => "a list",
        JsonValueKind.String => $"the text \"{Shown(json.GetString()!)}\"",
        JsonValueKind.Number => $"the number {Shown(json.GetRawText())}",
        JsonValueKind.True => "true",
        JsonValueKind.False => "false",
        _ => "null",
    };

    /// <summary>Text held to 40 characters, control characters replaced.</summary>
    public static string Shown(string text)
    {
        var cut = text.Length <= Longest ? text : text[..Longest] + "…";
        return string.Concat(cut.Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c));
    }

    /// <summary>Names as a sentence lists them: a, b or c.</summary>
    public static string Either(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : string.Join(", ", names.Take(names.Count - 1)) + " or " + names[^1];
}
