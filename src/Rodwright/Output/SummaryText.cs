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
        to.WriteLine($"  {plan.Risers} risers of {Mm(plan.Rise)} in {Mm(stair.Job.Survey.Height)}; going {Mm(plan.Going)}; pitch {Number.Print(plan.Pitch.Degrees, 2)}°; 2R+G {Mm(2 * plan.Rise + plan.Going)}");
        to.WriteLine($"  {Mm(stair.Job.Width)} over the strings, {Mm(plan.ClearWidth)} clear; walking line {Mm(plan.WalkingRadius)} from the inner string's centre line");
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
        if (plan.Turn is not { } turn) return;
        to.WriteLine();
        to.WriteLine($"  Turn to the {turn.Hand.ToString().ToLowerInvariant()}: risers {turn.FirstLine} to {turn.LastLine}, faces {Mm(turn.FirstRiser)} and {Mm(turn.LastRiser)} outside the newel's centre. Decided by {turn.DecidedBy}.");
        if (turn.Steps.IsEmpty) return;
        var rows = new List<string[]> { new[] { "step", "going", "along the line", "nosings", "narrow, faces", "straight", "tread", "wide", "taper" } };
        rows.AddRange(turn.Steps.Select(s => new[]
        {
            Number.Print(s.Number, 0), Number.Fixed(s.GoingChord, 2), Number.Fixed(s.GoingArc, 2), Number.Fixed(s.NosingGoing, 2), Number.Fixed(s.NarrowAlongFaces, 2), Number.Fixed(s.NarrowStraight, 2),
            Number.Fixed(s.NarrowTreadWidth, 2), Number.Fixed(s.Wide, 2), Number.Fixed(s.Taper.Degrees, 2) + "°",
        }));
        Columns.Write(to, rows, 0, 1, 2, 3, 4, 5, 6, 7, 8);
    }

    private static void Strings(TextWriter to, Stair stair)
    {
        to.WriteLine();
        var rows = new List<string[]> { new[] { "string", "", "board", "least width", "jointed up" } };
        rows.AddRange(stair.Kit.Strings.Select(s => new[]
        {
            s.Site.Mark, s.Site.Name, $"{Mm(s.Part.Blank.Length)} x {Mm(s.Part.Blank.Width)} x {Mm(s.Part.Blank.Thickness)}", Mm(s.LeastWidth),
            s.Part.Blank.JointedUp.IsEmpty ? "-" : string.Join("; ", s.Part.Blank.JointedUp.Select(j => $"{j.Edge} {Mm(j.Length)} x {Mm(j.Width)}")),
        }));
        Columns.Write(to, rows, 3);
    }

    private static void Newels(TextWriter to, Stair stair)
    {
        var newels = stair.Kit.Parts.Where(p => p.Kind == Joinery.Parts.PartKind.Newel).ToList();
        if (newels.Count == 0) return;
        to.WriteLine();
        var rows = new List<string[]> { new[] { "newel", "", "length", "side", "cuts" } };
        rows.AddRange(newels.Select(n => new[] { n.Mark, n.Name, Mm(n.Blank.Length), Mm(n.Blank.Width), Number.Print(n.Cuts.Length, 0) }));
        Columns.Write(to, rows, 2, 3, 4);
    }

    private static string Mm(double value) => Number.Print(value, 1);
}
