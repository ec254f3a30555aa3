using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Plans;

namespace Rodwright.Output;

/// <summary>What setout prints: the stair in a screenful, then the findings.</summary>
internal static class SummaryText
{
    public static void Write(TextWriter to, string path, Stair stair)
    {
        var plan = stair.Plan;
        to.WriteLine(stair.Job.Title + (stair.Job.ModelScale == 1 ? "" : $" (teaching model 1:{Number.Print(1 / stair.Job.ModelScale, 2)}; timber sizes are real)"));
        to.WriteLine($"  {plan.Risers} risers of {stair.Units.Print(plan.Rise)} in {stair.Units.Print(stair.Job.Survey.Height)}; going {stair.Units.Print(plan.Going)}; pitch {Number.Print(plan.Pitch.Degrees, 2)}°; 2R+G {stair.Units.Print(2 * plan.Rise + plan.Going)}");
        to.WriteLine($"  {stair.Units.Print(stair.Job.Width)} over the strings, {stair.Units.Print(plan.ClearWidth)} clear; walking line {stair.Units.Print(plan.WalkingRadius)} from the inner string's centre line");
        Turn(to, plan);
        Strings(to, stair);
        Newels(to, stair);
        SurveyText.Write(to, stair);
        to.WriteLine();
        FindingText.Write(to, path, stair.Findings);
        to.WriteLine(stair.Findings.IsEmpty ? "  Nothing found." : $"  {stair.Findings.Length} finding{(stair.Findings.Length == 1 ? "" : "s")}.");
    }

    private static void Turn(TextWriter to, StairPlan plan)
    {
        foreach (var turn in plan.Turns)
        {
            to.WriteLine();
            var name = plan.Turns.Length == 1 ? "Turn" : $"Turn {Number.Print(turn.Index + 1, 0)}";
            to.WriteLine($"  {name} to the {turn.Hand.ToString().ToLowerInvariant()}: risers {turn.FirstLine} to {turn.LastLine}, faces {plan.Units.Print(turn.FirstRiser)} and {plan.Units.Print(turn.LastRiser)} outside the newel's centre. Decided by {turn.DecidedBy}.");
            if (turn.Steps.IsEmpty) continue;
            var rows = new List<string[]> { new[] { "step", "going", "along the line", "nosings", "narrow, faces", "straight", "tread", "wide", "taper" } };
            rows.AddRange(turn.Steps.Select(s => new[]
            {
                Number.Print(s.Number, 0), plan.Units.Fixed(s.GoingChord, 2), plan.Units.Fixed(s.GoingArc, 2), plan.Units.Fixed(s.NosingGoing, 2), plan.Units.Fixed(s.NarrowAlongFaces, 2), plan.Units.Fixed(s.NarrowStraight, 2),
                plan.Units.Fixed(s.NarrowTreadWidth, 2), plan.Units.Fixed(s.Wide, 2), Number.Fixed(s.Taper.Degrees, 2) + "°",
            }));
            Columns.Write(to, rows, 0, 1, 2, 3, 4, 5, 6, 7, 8);
        }
    }

    private static void Strings(TextWriter to, Stair stair)
    {
        to.WriteLine();
        var rows = new List<string[]> { new[] { "string", "", "board", "least width", "jointed up" } };
        rows.AddRange(stair.Kit.Strings.Select(s => new[]
        {
            s.Site.Mark, s.Site.Name, $"{stair.Units.Print(s.Part.Blank.Length)} x {stair.Units.Print(s.Part.Blank.Width)} x {stair.Units.Print(s.Part.Blank.Thickness)}", stair.Units.Print(s.LeastWidth),
            s.Part.Blank.JointedUp.IsEmpty ? "-" : string.Join("; ", s.Part.Blank.JointedUp.Select(j => $"{j.Edge} {stair.Units.Print(j.Length)} x {stair.Units.Print(j.Width)}")),
        }));
        Columns.Write(to, rows, 3);
    }

    private static void Newels(TextWriter to, Stair stair)
    {
        var newels = stair.Kit.Parts.Where(p => p.Kind == Joinery.Parts.PartKind.Newel).ToList();
        if (newels.Count == 0) return;
        to.WriteLine();
        var rows = new List<string[]> { new[] { "newel", "", "length", "side", "cuts" } };
        rows.AddRange(newels.Select(n => new[] { n.Mark, n.Name, stair.Units.Print(n.Blank.Length), stair.Units.Print(n.Blank.Width), Number.Print(n.Cuts.Length, 0) }));
        Columns.Write(to, rows, 2, 3, 4);
    }
}
