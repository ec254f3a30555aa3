using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Workshop.Edits;

/// <summary>A job in one line, for the shelf.</summary>
public static class JobSummary
{
    /// <summary>"13 risers of 200.0, left hand, 3 tapered steps, going 225".</summary>
    public static string Of(Job job)
    {
        var course = Course.Of(job.Layout);
        var hands = course.Turns.Select(job.Layout.HandOf).Distinct().ToList();
        var hand = hands.Count == 2 ? "left and right hand" : (hands.Count == 1 ? hands[0] == Hand.Right : job.IsRightHanded) ? "right hand" : "left hand";
        var turn = course.Turns.IsEmpty ? "straight flight" : string.Join(" and ", course.Turns.Select(Kind));
        var scale = job.ModelScale == 1 ? "" : $", model at {Number.Print(job.ModelScale, 3)} of full size";
        return $"{Number.Print(job.Layout.Risers, 0)} risers of {job.Units.Fixed(job.Rise, 1)}, {hand}, {turn}, going {job.Units.Print(job.Going)}{scale}";
    }

    private static string Kind(Turn turn) => turn switch
    {
        { Kind: TurnKind.Landing, Quarters: 1 } => "quarter landing",
        { Kind: TurnKind.Landing } => "half landing",
        { Quarters: 1 } => $"{Number.Print(turn.Tapered, 0)} tapered steps",
        _ => $"half turn of {Number.Print(turn.Tapered, 0)} tapered steps",
    };
}
