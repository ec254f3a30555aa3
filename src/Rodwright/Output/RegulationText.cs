using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Output;

/// <summary>The regulation report as text.</summary>
internal static class RegulationText
{
    public static void Write(TextWriter to, RegulationReport report)
    {
        to.WriteLine(report.Title);
        to.WriteLine("  " + report.Measures);
        to.WriteLine();
        var rows = new List<string[]> { new[] { "outcome", "clause", "what", "measured", "limit", "evidence", "where" } };
        rows.AddRange(report.Checks.Select(c => new[]
        {
            c.OutcomeWord, c.Clause.Number, c.Clause.Rule.Title, c.Measured is { } m ? c.Units.IsInches && c.Unit == "mm" ? c.MeasuredWords : Number.Print(m, 2) + Unit(c.Unit) : "-", c.Limit, EvidenceWords.Print(c.Clause.Evidence),
            c.Measured is null ? c.Reason : c.Where,
        }));
        Columns.Write(to, rows, 3);
        to.WriteLine();
        to.WriteLine($"  {report.Count(CheckOutcome.Pass)} pass, {report.Count(CheckOutcome.Fail)} fail, {report.Count(CheckOutcome.Advice)} advice, {report.Count(CheckOutcome.NotChecked)} not checked.");
        if (report.DoubtWords.Length > 0) to.WriteLine("  " + report.DoubtWords);
        to.WriteLine("  The last word is the local authority's.");
    }

    private static string Unit(string unit) => unit.Length == 0 || unit == "°" ? unit : " " + unit;
}
