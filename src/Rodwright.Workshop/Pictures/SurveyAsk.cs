using System.Collections.Immutable;

namespace Rodwright.Workshop.Pictures;

/// <summary>What the pictures of a survey are asked to point at.</summary>
/// <param name="Reading">Path of the reading at hand, of one not yet taken as well: survey.walls[2].length. Null for none.</param>
/// <param name="Refused">Readings that were refused.</param>
public sealed record SurveyAsk(string? Reading, ImmutableArray<RefusedReading> Refused)
{
    /// <summary>Nothing at hand and nothing refused.</summary>
    public static SurveyAsk Nothing { get; } = new(null, []);

    /// <summary>What was refused at a path; null when nothing was.</summary>
    public RefusedReading? At(string path) => Refused.FirstOrDefault(r => r.Path == path);
}
