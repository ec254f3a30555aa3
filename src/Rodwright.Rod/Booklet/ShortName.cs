using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Booklet;

/// <summary>Names of lines short enough for a table's head or a mark in a picture: the marks of the pieces themselves.</summary>
internal static class ShortName
{
    public static string Of(StageLine line)
    {
        var name = line.Name;
        if (name.StartsWith("housing of ", StringComparison.Ordinal))
        {
            var words = name["housing of ".Length..].Split(' ');
            return words[0] switch { "tread" => "T", "riser" => "R", _ => "P" } + words.First(w => char.IsDigit(w[0]));
        }
        foreach (var plain in (string[])["riser ", "level ", "nosing ", "housing ", "mortice ", "haunch ", "peg ", "face of "])
            name = name.Replace(plain, "", StringComparison.Ordinal);
        return name.Replace(", inward", " (in)", StringComparison.Ordinal);
    }

    /// <summary>The mark in a picture: without the face of a newel, which the picture shows, and without remarks.</summary>
    public static string InPicture(StageLine line)
    {
        var name = Of(line);
        var colon = name.IndexOf(": ", StringComparison.Ordinal);
        if (colon >= 0) name = name[(colon + 2)..];
        var space = name.IndexOf(' ', StringComparison.Ordinal);
        return space > 0 ? name[..space] : name;
    }
}
