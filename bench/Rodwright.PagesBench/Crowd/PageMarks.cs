using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Rodwright.PagesBench.Crowd;

/// <summary>What a page's text says of the live parts that belong in it.</summary>
/// <param name="Operations">What to ask the server for: one live part for each mark, as JSON.</param>
/// <param name="State">What the server wants back with it; empty for nothing.</param>
public sealed partial record PageMarks(string Operations, string State)
{
    /// <summary>Reads a page.</summary>
    public static PageMarks Of(string html)
    {
        var operations = new JsonArray();
        foreach (Match match in Marker().Matches(html))
        {
            var marker = JsonNode.Parse(WebUtility.HtmlDecode(match.Groups[1].Value))!;
            operations.Add(new JsonObject { ["type"] = "add", ["ssrComponentId"] = operations.Count + 1, ["marker"] = marker });
        }
        if (operations.Count == 0) throw new InvalidDataException("the page has no live part");
        var batch = new JsonObject { ["batchId"] = 1, ["operations"] = operations };
        return new(batch.ToJsonString(JsonSerializerOptions.Web), State_().Match(html) is { Success: true } state ? state.Groups[1].Value : "");
    }

    [GeneratedRegex("""<!--Blazor:(\{"type":"server".*?\})-->""")]
    private static partial Regex Marker();

    [GeneratedRegex("<!--Blazor-Server-Component-State:(.*?)-->")]
    private static partial Regex State_();
}
