using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Surveys;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Output;

/// <summary>The stair in its room as text: what is over it, beside it, on the way in, and how sure it is.</summary>
internal static class SurveyText
{
    public static void Write(TextWriter to, Stair stair)
    {
        var report = stair.InRoom();
        Heights(to, stair);
        Headroom(to, stair, report);
        Walls(to, stair, report);
        WayIn(to, report);
        Certainty(to, stair, report);
    }

    private static void Heights(TextWriter to, Stair stair)
    {
        var survey = stair.Job.Survey;
        if (survey is { LowerFinish: 0, UpperFinish: 0 }) return;
        to.WriteLine();
        to.WriteLine($"  Height {Mm(survey.Height)}: {Mm(survey.FloorToFloor.Average())} measured, {Mm(survey.UpperFinish)} still to come above, {Mm(survey.LowerFinish)} below.");
    }

    private static void Headroom(TextWriter to, Stair stair, SurveyReport report)
    {
        if (report.Headroom is not { } headroom) return;
        to.WriteLine();
        var frame = RoomFrame.Of(stair.Plan);
        var rows = new List<string[]> { new[] { "headroom", "least", "in the middle", "along", "out", "where" } };
        rows.AddRange(headroom.Under.Select(c =>
        {
            var at = frame.ToRoom(c.At);
            var middle = headroom.InMiddle.FirstOrDefault(m => m.Under.Ceiling == c.Under.Ceiling);
            return new[] { "under " + c.Under.Name, Mm(c.Least), middle is null ? "-" : Mm(middle.Least), Mm(at.X), Mm(at.Y), HeadroomWords.Step(stair.Plan, c.Step) };
        }));
        Columns.Write(to, rows, 1, 2, 3, 4);
        foreach (var edge in report.WellLonger)
            to.WriteLine($"  For {Mm(report.HeadroomWanted!.Value)} the well would have to be {Mm(edge.By)} longer {HeadroomWords.Towards(stair.Plan, edge)}.");
    }

    private static void Walls(TextWriter to, Stair stair, SurveyReport report)
    {
        if (report.Walls.IsEmpty && report.Scribing.IsEmpty) return;
        to.WriteLine();
        if (RoomFrame.Of(stair.Plan).From is { } from) to.WriteLine($"  First riser {Mm(from)} from the beginning of its wall.");
        var rows = new List<string[]> { new[] { "wall", "room left", "string", "widest gap", "along", "up", "off square", "leans in per m" } };
        foreach (var wall in report.Walls.Select(w => w.Wall).Concat(report.Scribing.Select(g => g.Wall)).Distinct().Order())
        {
            var (name, fit) = (RoomShape.NameOf(stair.Job.Survey.Walls[wall], wall), report.Walls.FirstOrDefault(w => w.Wall == wall));
            foreach (var gap in report.Scribing.Where(g => g.Wall == wall).DefaultIfEmpty(null))
                rows.Add([name, fit is null ? "-" : Mm(fit.Least), .. gap is null ? ["-", "-", "-", "-", "-", "-"] : new[] { gap.String, Mm(gap.Widest), Mm(gap.S), Mm(gap.Z), Number.Fixed(gap.OffSquareDegrees, 2) + "°", Mm(gap.LeanPerMetre) }]);
        }
        Columns.Write(to, rows, 1, 3, 4, 5, 6, 7);
        foreach (var fit in report.Openings)
            to.WriteLine($"  {stair.Job.Survey.Walls[fit.Wall].Openings[fit.Index].Words} in {RoomShape.NameOf(stair.Job.Survey.Walls[fit.Wall], fit.Wall)}: {(fit.Clear is { } clear ? $"{Mm(clear)} clear before step {Number.Print(fit.Step, 0)}, {Mm(fit.Opening.Depth)} wanted" : "clear")}{(fit.Crossed ? "; crossed by a string" : "")}.");
    }

    private static void WayIn(TextWriter to, SurveyReport report)
    {
        if (report.WayIn.IsEmpty) return;
        to.WriteLine();
        var rows = new List<string[]> { new[] { "way in", "piece", "", "size", "passes", "longest of its section" } };
        rows.AddRange(report.WayIn.Select(v => new[]
        {
            v.Stop.Words, v.Piece.Mark, v.Piece.Name, $"{Mm(v.Piece.Length)} x {Mm(v.Piece.Width)} x {Mm(v.Piece.Thickness)}", v.Passes ? "yes" : "no", v.Longest is { } longest ? longest > 0 ? Mm(longest) : "too large" : "any",
        }));
        Columns.Write(to, rows, 5);
        to.WriteLine(report.Largest is { } largest ? $"  Largest that can be carried in whole: {largest.Mark}, {largest.Name}." : "  Nothing of it can be carried in whole.");
    }

    private static void Certainty(TextWriter to, Stair stair, SurveyReport report)
    {
        var all = report.Certainty(stair.Kit);
        if (all.IsEmpty) return;
        to.WriteLine();
        var rows = new List<string[]> { new[] { "how sure", "worked to", "from", "to", "limit", "" } };
        rows.AddRange(all.Select(c => new[] { c.What, Number.Print(c.Value, 2), Number.Print(c.Low, 2), Number.Print(c.High, 2), c.Limit, c.Limit.Length > 0 ? c.Words : "" }));
        Columns.Write(to, rows, 1, 2, 3);
    }

    private static string Mm(double value) => Number.Print(value);
}
