using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Rod.Sheets;

/// <summary>What the stair is, how it was judged and proved, what to beware of, and which sheets there are.</summary>
public static class Cover
{
    /// <summary>The cover: one sheet, or more when there is much to say. Made last, for its list of sheets.</summary>
    /// <param name="rod">The job.</param>
    /// <param name="others">The sheets that follow the cover, in order.</param>
    public static IReadOnlyList<Sheet> Make(RodJob rod, IReadOnlyList<Sheet> others)
    {
        var sheets = Make(rod, others, 1);
        return sheets.Count == 1 ? sheets : Make(rod, others, sheets.Count);
    }

    private static IReadOnlyList<Sheet> Make(RodJob rod, IReadOnlyList<Sheet> others, int covers)
    {
        var stair = rod.Stair;
        var words = new SheetWords("cover", "Cover", "Cover");
        var flow = new SheetFlow(SheetStart.Written(rod, words, Scale.Full));
        var pictures = new CoverPictures(stair, flow.Width, 0.47 * flow.Width);
        flow = new(SheetStart.Written(rod, words, pictures.Scale));
        flow.Paragraph(stair.Job.Title, 2 * flow.Height, bold: true);
        flow.Paragraph(CoverWords.Kind(stair));
        flow.Picture(pictures.Height, pictures.Draw);
        flow.Heading($"Main sizes, {stair.Units.Name}");
        flow.Table([("What", 5, false), ("Size", 4, false)], CoverWords.Sizes(stair));
        Findings(flow, stair);
        flow.Heading("Before you cut", 16 * flow.Height);
        foreach (var caution in CoverWords.Cautions(stair.Job)) flow.Paragraph(caution);
        Regulation(flow, stair);
        Proof(flow, rod);
        flow.Heading("Sheets", flow.HeightOfRows(others.Count));
        flow.Table([("No.", 1, true), ("Sheet", 6, false), ("Scale", 1.4, true)],
            others.Select((s, i) => (IReadOnlyList<string>)[Number.Print(covers + 1 + i, 0), s.Title, s.ScaleWords]));
        return flow.Sheets();
    }

    private static void Findings(SheetFlow flow, Stair stair)
    {
        flow.Heading("Findings");
        // Findings of the regulation stand in its report too, but what must be put right belongs at the top.
        var found = stair.Findings.OrderByDescending(f => f.Severity).ToList();
        if (found.Count == 0) flow.Paragraph("Nothing pinches.");
        foreach (var finding in found)
            flow.Paragraph(CoverWords.Told(finding));
    }

    private static void Regulation(SheetFlow flow, Stair stair)
    {
        var report = stair.Regulation;
        flow.Heading(report.Title, 24 * flow.Height);
        flow.Paragraph($"{Tally(report)}. {report.Measures}");
        if (report.DoubtWords.Length > 0) flow.Paragraph(report.DoubtWords);
        if (stair.Job.ModelScale != 1) flow.Paragraph($"{SheetStart.ModelWords(stair.Job)}; limits are multiplied by {Number.Print(stair.Job.ModelScale, 3)}.");
        flow.Table(
            [("Clause", 4.4, false), ("What", 7.4, false), ("Measured", 3.8, true), ("Limit", 6.2, false), ("Outcome", 4.1, false), ("Evidence", 4.3, false)],
            report.Checks.Select(CoverWords.Row));
    }

    private static void Proof(SheetFlow flow, RodJob rod)
    {
        var proof = rod.Proof;
        flow.Heading("Proof that it goes together", flow.HeightOfRows(6));
        flow.Table([("What", 6, false), ("Found", 4, false)],
        [
            ["Joints, each on both its parts", $"{Number.Print(proof.Joints.Count(j => j.Holds), 0)} of {Number.Print(proof.Joints.Length, 0)} close"],
            ["Worst gap in a joint", $"{rod.Units.With(proof.WorstGap, 3)}"],
            ["Pieces in one place", proof.Clashes.IsEmpty ? "none" : Number.Print(proof.Clashes.Length, 0)],
            ["Cuts of one newel that meet", proof.NewelCuts.IsEmpty ? "none" : Number.Print(proof.NewelCuts.Length, 0)],
            ["Pieces within their boards", $"{Number.Print(proof.Blanks.Count(b => b.Holds), 0)} of {Number.Print(proof.Blanks.Length, 0)}"],
            ["Rises against the height measured", proof.Survey.Holds ? "one length" : $"{rod.Units.Print(proof.Survey.Risers, 3)} for {rod.Units.Print(proof.Survey.Height, 3)}"],
        ]);
        foreach (var joint in proof.Joints.Where(j => !j.Holds).Take(8))
            flow.Paragraph($"{joint.Male} in {joint.Female}: gap {rod.Units.Print(joint.Gap, 3)}, reaches {rod.Units.Print(joint.Reached, 2)} of {rod.Units.Print(joint.Wanted, 2)}");
        foreach (var clash in proof.Clashes.Concat(proof.NewelCuts).Take(8)) flow.Paragraph($"{clash.First} and {clash.Second}: {clash.Words(rod.Units)}");
    }

    private static string Tally(RegulationReport report)
    {
        var (failed, advised, open) = (report.Count(CheckOutcome.Fail), report.Count(CheckOutcome.Advice), report.Count(CheckOutcome.NotChecked));
        var words = new List<string> { $"{Number.Print(report.Count(CheckOutcome.Pass), 0)} kept", failed > 0 ? $"{Number.Print(failed, 0)} NOT KEPT" : "none broken" };
        if (advised > 0) words.Add($"{Number.Print(advised, 0)} {(advised == 1 ? "piece" : "pieces")} of advice not followed");
        if (open > 0) words.Add($"{Number.Print(open, 0)} not checked");
        return string.Join(", ", words);
    }
}
