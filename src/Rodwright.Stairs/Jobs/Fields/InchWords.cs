using System.Collections.Frozen;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>What fields mean in a job in inches, where what is said of them names lengths. Every other field says the same in both units.</summary>
internal static class InchWords
{
    private static readonly FrozenDictionary<string, string> Meanings = new Dictionary<string, string>
    {
        ["survey.walls[].corner.leg"] = "from the corner back to a mark: 3 feet of 3, 4, 5",
        ["survey.walls[].openings[].clear"] = "depth before the opening; left out: 15 3/4\" before a door, and beyond its leaf where it swings in",
        ["bottomStep.veneer"] = "where it is thinned; 1/16\" to 1/8\" is usual",
        ["practice.riser"] = "1/2\" in plywood",
        ["practice.margin"] = "square from the margin line to the string's upper edge; usually 2\" or more",
        ["practice.newelHousing"] = "3/4\" where the riser is screwed",
        ["practice.treadWedge.thin"] = "1/8\" to 1/4\" is usual",
        ["practice.riserWedge.thin"] = "1/8\" to 1/4\" is usual",
        ["wishes.comfort"] = "what proposals are measured against; the old handbooks have 24\" and 25\"",
        ["wishes.widths"] = "one, or several to choose from; left out: the width of the job, or 38 1/2\"",
        ["wishes.weights.comfort"] = "for every 2 3/8\" off the ideal",
        ["wishes.weights.headroom"] = "for 11 13/16\" short of 11 13/16\" more than is asked",
        ["wishes.weights.floorArea"] = "for every 21 1/2 square feet",
        ["wishes.weights.narrowest"] = "for 3 15/16\" short of 3 15/16\"",
        ["wishes.weights.timber"] = "for every 3 1/2 cubic feet",
    }.ToFrozenDictionary();

    /// <summary>The meaning of a field in a job in inches; null where it is the same as in millimetres.</summary>
    /// <param name="path">Its path; places in lists open or not.</param>
    public static string? Of(string path) => Meanings.GetValueOrDefault(OpenPath(path));

    private static string OpenPath(string path)
    {
        for (var open = path.IndexOf('[', StringComparison.Ordinal); open >= 0; open = path.IndexOf('[', open + 1))
            path = path[..(open + 1)] + path[path.IndexOf(']', open)..];
        return path;
    }
}
