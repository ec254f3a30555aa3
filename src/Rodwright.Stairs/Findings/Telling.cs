namespace Rodwright.Stairs.Findings;

/// <summary>How much is said of what would free a finding: trying remedies takes longer than setting out.</summary>
/// <param name="Hints">Whether the hint is worked out.</param>
/// <param name="Code">The code of the findings whose remedies are tried; null for none.</param>
internal sealed record Telling(bool Hints, string? Code)
{
    /// <summary>What pinches, and nothing more.</summary>
    public static Telling Bare { get; } = new(false, null);

    /// <summary>What pinches, and in words what would free it.</summary>
    public static Telling Words { get; } = new(true, null);

    /// <summary>With remedies for the findings of one code.</summary>
    public static Telling RemediesFor(string code) => new(true, code);

    /// <summary>Whether the remedies of a finding are wanted.</summary>
    public bool Remedies(string code) => code == Code;
}
