using Rodwright.Commands;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Output;

/// <summary>What propose prints: a row for each proposal, the unbeaten ones marked, then each rejected family with its reason.</summary>
internal static class ProposalText
{
    private const double Foot = 12 * Units.Inch / 1000; // in metres

    public static void Write(TextWriter to, string path, BriefArgument asked, ProposalReport report, double milliseconds)
    {
        var brief = asked.Brief;
        to.WriteLine($"{brief.Title}: {brief.Units.Print(brief.Survey.Height)} from floor to floor, {asked.Tables.Find(brief.Regulation)!.Title}");
        to.WriteLine();
        if (report.Proposals.IsEmpty) to.WriteLine("  No layout fits.");
        var rows = new List<string[]> { new[] { "", "", "hand", "risers", "going", "flights", "newel", "2R+G", "pitch", "headroom", brief.Units.IsInches ? "floor sq ft" : "floor m²", "narrow", brief.Units.IsInches ? "timber cu ft" : "timber m³", "tapered", "layout" } };
        rows.AddRange(report.Proposals.Select(Row));
        if (!report.Proposals.IsEmpty)
        {
            Columns.Write(to, rows, 0, 3, 4, 6, 7, 8, 9, 10, 11, 12, 13);
            to.WriteLine();
            to.WriteLine("  * nothing else here is at least as good in every measure and better in one");
        }
        foreach (var family in report.Rejected)
        {
            to.WriteLine();
            to.WriteLine($"  Not {family.Family.Title}. Decided by {family.DecidedBy}.");
            to.WriteLine($"    what would help: {family.WouldHelp}");
        }
        to.WriteLine();
        FindingText.Write(to, path, asked.Findings);
        to.WriteLine($"  {Number.Print(report.CandidatesJudged, 0)} stairs judged in {Number.Print(milliseconds, 0)} ms; every one shown was set out and proved.");
    }

    private static string[] Row(Proposal p, int index)
    {
        var (m, job) = (p.Measures, p.Job);
        return
        [
            Number.Print(index + 1, 0), p.Unbeaten ? "*" : "", p.Hand == Hand.Left ? "left" : "right", Number.Print(job.Layout.Risers, 0), job.Units.Print(job.Going), Flights(job),
            job.HasNewels ? job.Units.Print(job.Practice.Newel) : "-", job.Units.Print(m.Comfort), Number.Fixed(m.PitchDegrees, 1) + "°", m.Headroom is { } h ? job.Units.Print(h, 0) : "-",
            Number.Fixed(m.FloorArea / (job.Units.IsInches ? Foot * Foot : 1), 2), m.Narrowest is { } n ? job.Units.Print(n) : "-", Number.Fixed(m.Timber / (job.Units.IsInches ? Foot * Foot * Foot : 1), 2), Number.Print(m.TaperedSteps, 0), p.Family.Title,
        ];
    }

    /// <summary>"5 (3) 4": goings, and steps of turns in brackets; L for a landing.</summary>
    private static string Flights(Job job) => string.Join(' ', job.Layout.Sequence.Select(i => i is Turn turn
        ? turn.Kind == TurnKind.Landing ? "(L)" : $"({Number.Print(turn.Tapered, 0)})"
        : Number.Print(i.Steps, 0)));
}
