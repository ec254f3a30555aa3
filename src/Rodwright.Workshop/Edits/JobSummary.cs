using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Edits;

/// <summary>A job in one line, for the shelf.</summary>
public static class JobSummary
{
    /// <summary>"13 risers of 200.0, left hand, 3 tapered steps, going 225".</summary>
    public static string Of(Job job)
    {
        var turn = job.Layout.Turn switch
        {
            null => "straight flight",
            { Kind: TurnKind.Landing } => "quarter landing",
            { } tapered => $"{Number.Print(tapered.Tapered, 0)} tapered steps",
        };
        var scale = job.ModelScale == 1 ? "" : $", model at {Number.Print(job.ModelScale, 3)} of full size";
        return $"{Number.Print(job.Layout.Risers, 0)} risers of {Number.Fixed(job.Rise, 1)}, {(job.IsRightHanded ? "right" : "left")} hand, {turn}, going {Number.Print(job.Going)}{scale}";
    }
}
