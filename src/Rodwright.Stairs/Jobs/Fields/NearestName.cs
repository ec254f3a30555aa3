namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The known name most like a misspelt one.</summary>
internal static class NearestName
{
    private const int Longest = 40;

    /// <summary>The nearest name, capitals not counted; null when nothing is near enough to be meant.</summary>
    public static string? To(string written, IEnumerable<string> known)
    {
        if (written.Length is 0 or > Longest) return null;
        string? best = null;
        var least = Math.Max(1, written.Length / 3) + 1;
        foreach (var name in known)
        {
            if (written.Length > 3 && name.StartsWith(written, StringComparison.OrdinalIgnoreCase)) return name;
            var changes = Changes(written.ToLowerInvariant(), name.ToLowerInvariant());
            if (changes >= least) continue;
            (best, least) = (name, changes);
        }
        return best;
    }

    /// <summary>How many letters must be put in, taken out or changed to make one word the other.</summary>
    private static int Changes(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var above = row[j];
                row[j] = Math.Min(Math.Min(above, row[j - 1]) + 1, diagonal + (a[i - 1] == b[j - 1] ? 0 : 1));
                diagonal = above;
            }
        }
        return row[^1];
    }
}
