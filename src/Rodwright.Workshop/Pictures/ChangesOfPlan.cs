using Rodwright.Geometry;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Pictures;

/// <summary>What moves between two plans of one job, in words; lengths in the unit of the job, millimetres to a hundredth.</summary>
internal static class ChangesOfPlan
{
    private const double Same = 0.005;

    public static IEnumerable<string> Between(StairPlan was, StairPlan now)
    {
        if (Moved(now.Units, was.WalkingRadius - was.InnerThickness / 2, now.WalkingRadius - now.InnerThickness / 2) is { } line)
            yield return $"the walking line runs {line} from the inner string's face";
        if (was.Turns.Length != now.Turns.Length) yield break;
        foreach (var (old, turn) in was.Turns.Zip(now.Turns))
        {
            var (name, its) = now.Turns.Length == 1 ? ("the turn", "its") : ($"turn {Number.Print(turn.Index + 1)}", $"turn {Number.Print(turn.Index + 1)}'s");
            if (Moved(now.Units, old.FirstRiser, turn.FirstRiser) is { } first) yield return $"{name}'s first riser, riser {Number.Print(turn.FirstLine)}, stands {first} outside the newel's centre";
            if (Moved(now.Units, old.LastRiser, turn.LastRiser) is { } last) yield return $"{its} last riser, riser {Number.Print(turn.LastLine)}, stands {last} outside the newel's centre";
            foreach (var (a, b) in old.Steps.Zip(turn.Steps))
            {
                var parts = new List<string>();
                if (Moved(now.Units, Going(was, a), Going(now, b)) is { } going) parts.Add($"going on the walking line {going}");
                if (Moved(now.Units, a.NarrowAlongFaces, b.NarrowAlongFaces) is { } narrow) parts.Add($"narrow end along the faces {narrow}");
                if (Moved(now.Units, a.Wide, b.Wide) is { } wide) parts.Add($"wide end {wide}");
                if (parts.Count > 0) yield return $"step {Number.Print(b.Number)}: {string.Join(", ", parts)}";
            }
        }
    }

    private static double Going(StairPlan plan, TaperedStep step) => Clauses.Places.Going(plan, step.Number);

    /// <summary>"225 (was 223.5)"; null when both are one length.</summary>
    private static string? Moved(Units units, double was, double now) =>
        Math.Abs(was - now) <= Same ? null : $"{units.Print(now, 2)} (was {units.Print(was, 2)})";
}
