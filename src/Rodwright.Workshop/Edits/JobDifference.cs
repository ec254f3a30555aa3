namespace Rodwright.Workshop.Edits;

/// <summary>One field in which two jobs differ.</summary>
/// <param name="Path">Where it stands in the file; layout.sequence for flights and turns as a whole.</param>
/// <param name="Label">What it is called, unlike every other field.</param>
/// <param name="Unit">mm, or empty.</param>
/// <param name="Before">What it was, as people read it; empty where it was left out.</param>
/// <param name="After">What it is now, likewise.</param>
public sealed record JobDifference(string Path, string Label, string Unit, string Before, string After)
{
    /// <summary>In one phrase: "going of the straight steps 225 to 230".</summary>
    public string Words => $"{Label} {Or(Before)} to {Or(After)}";

    private static string Or(string value) => value.Length > 0 ? value : "none given";
}
