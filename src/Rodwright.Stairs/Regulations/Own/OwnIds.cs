using System.Text.Json;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>Ids of own tables: own- and small letters, figures and single dashes, so that each is a file name everywhere.</summary>
public static class OwnIds
{
    /// <summary>Longest id, prefix included.</summary>
    public const int Longest = 60;

    private const string Pattern = "^own(-[a-z0-9]+)+$";

    /// <summary>Whether a text is such an id.</summary>
    public static bool Are(string id) => id.Length <= Longest && RegulationShelf.IsOwn(id)
        && id[RegulationShelf.OwnPrefix.Length..].Split('-').All(w => w.Length > 0 && w.All(c => c is >= 'a' and <= 'z' or >= '0' and <= '9'));

    /// <summary>An id made from a title: "Our stairs, 2026" is own-our-stairs-2026. Empty titles give own-table.</summary>
    public static string From(string title)
    {
        var letters = string.Concat(title.ToLowerInvariant().Select(c => c is >= 'a' and <= 'z' or >= '0' and <= '9' ? c : '-'));
        var words = letters.Split('-', StringSplitOptions.RemoveEmptyEntries);
        var id = RegulationShelf.OwnPrefix + (words.Length == 0 ? "table" : string.Join('-', words));
        return id.Length <= Longest ? id : id[..Longest].TrimEnd('-');
    }

    internal static void WritePattern(Utf8JsonWriter json)
    {
        json.WriteString("type", "string");
        json.WriteString("pattern", Pattern);
        json.WriteNumber("maxLength", Longest);
    }
}
