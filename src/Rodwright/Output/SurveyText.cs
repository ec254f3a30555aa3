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
        WayIn(to, stair.Units, report);
        Certainty(to, stair, report);
    }

    private static void Heights(TextWriter to, Stair stair)
    {
        var survey = stair.Job.Survey;
        if (survey is { LowerFinish: 0, UpperFinish: 0 }) return;
        to.WriteLine();
        to.WriteLine($"  Height {stair.Units.Print(survey.Height)}: {stair.Units.Print(survey.FloorToFloor.Average())} measured, {stair.Units.Print(survey.UpperFinish)} still to come above, {stair.Units.Print(survey.LowerFinish)} below.");
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
            return new[] { "under " + c.Under.Name, stair.Units.Print(c.Least), middle is null ? "-" : stair.Units.Print(middle.Least), stair.Units.Print(at.X), stair.Units.Print(at.Y), HeadroomWords.Step(stair.Plan, c.Step) };
        }));
        Columns.Write(to, rows, 1, 2, 3, 4);
        foreach (var edge in report.WellLonger)
            to.WriteLine($"  For {stair.Units.Print(report.HeadroomWanted!.Value)} the well would have to be {stair.Units.Print(edge.By)} longer {HeadroomWords.Towards(stair.Plan, edge)}.");
    }

    private static void Walls(TextWriter to, Stair stair, SurveyReport report)
    {
        if (report.Walls.IsEmpty && report.Scribing.IsEmpty) return;
        to.WriteLine();
        if (RoomFrame.Of(stair.Plan).From is { } from) to.WriteLine($"  First riser {stair.Units.Print(from)} from the beginning of its wall.");
        var rows = new List<string[]> { new[] { "wall", "room left", "string", "widest gap", "along", "up", "off square", "leans in per m" } };
        foreach (var wall in report.Walls.Select(w => w.Wall).Concat(report.Scribing.Select(g => g.Wall)).Distinct().Order())
        {
            var (name, fit) = (RoomShape.NameOf(stair.Job.Survey.Walls[wall], wall), report.Walls.FirstOrDefault(w => w.Wall == wall));
            foreach (var gap in report.Scribing.Where(g => g.Wall == wall).DefaultIfEmpty(null))
                rows.Add([name, fit is null ? "-" : stair.Units.Print(fit.Least), .. gap is null ? ["-", "-", "-", "-", "-", "-"] : new[] { gap.String, stair.Units.Print(gap.Widest), stair.Units.Print(gap.S), stair.Units.Print(gap.Z), Number.Fixed(gap.OffSquareDegrees, 2) + "°", stair.Units.Print(gap.LeanPerMetre) }]);
        }
        Columns.Write(to, rows, 1, 3, 4, 5, 6, 7);
        foreach (var fit in report.Openings)
            to.WriteLine($"  {stair.Job.Survey.Walls[fit.Wall].Openings[fit.Index].Words} in {RoomShape.NameOf(stair.Job.Survey.Walls[fit.Wall], fit.Wall)}: {(fit.Clear is { } clear ? $"{stair.Units.Print(clear)} clear before step {Number.Print(fit.Step, 0)}, {stair.Units.Print(fit.Opening.Depth)} wanted" : "clear")}{(fit.Crossed ? "; crossed by a string" : "")}.");
    }

    private static void WayIn(TextWriter to, Units units, SurveyReport report)
    {
        if (report.WayIn.IsEmpty) return;
        to.WriteLine();
        var rows = new List<string[]> { new[] { "way in", "piece", "", "size", "passes", "longest of its section" } };
        rows.AddRange(report.WayIn.Select(v => new[]
        {
            v.Stop.Words, v.Piece.Mark, v.Piece.Name, $"{units.Print(v.Piece.Length)} x {units.Print(v.Piece.Width)} x {units.Print(v.Piece.Thickness)}", v.Passes ? "yes" : "no", v.Longest is { } longest ? longest > 0 ? units.Print(longest) : "too large" : "any",
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
        rows.AddRange(all.Select(c => new[] { c.What, Told(stair.Units, c, c.Value), Told(stair.Units, c, c.Low), Told(stair.Units, c, c.High), c.Limit, c.Limit.Length > 0 ? c.Words : "" }));
        Columns.Write(to, rows, 1, 2, 3);
    }

    private static string Told(Units units, Certainty certain, double value) => certain.Unit == "mm" ? units.Print(value, 2) : Number.Print(value, 2);
}
