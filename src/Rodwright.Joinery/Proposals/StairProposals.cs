using Rodwright.Geometry;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Joinery.Proposals;

/// <summary>Proposals every one of which has been set out, joined and proved.</summary>
public static class StairProposals
{
    // How true the walls are and how the pieces come in belong to the house, not to the choice of a layout; they stand with the job once it is chosen.
    private static readonly HashSet<string> OfTheHouse = ["RW2707", "RW2709"];

    /// <summary>The proposals for a brief.</summary>
    /// <param name="brief">Survey, regulation, practice and wishes.</param>
    /// <param name="shelf">The tables it may be judged by; the published ones when null.</param>
    /// <exception cref="ArgumentException">The brief names a regulation that is not among them.</exception>
    public static ProposalReport Propose(Brief brief, RegulationShelf? shelf = null)
    {
        var tables = shelf ?? RegulationShelf.Published;
        var table = tables.Find(brief.Regulation) ?? throw new ArgumentException($"no regulation {brief.Regulation}", nameof(brief));
        return Proposer.Propose(brief, table, job => Against(job, tables));
    }

    /// <summary>What stands against a job when it is set out in full, in words: a contradiction, a breach, or a joint that does not close; null when nothing does.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shelf">The tables it may be judged by; the published ones when null.</param>
    public static string? Against(Job job, RegulationShelf? shelf = null)
    {
        // A job is written and read before it is proposed: what the reader would refuse is no proposal.
        var text = JobFile.Write(job);
        var read = shelf is null ? JobFile.Read(text) : JobFile.Read(text, shelf);
        if (read.Value is not { } whole) return Worst(read.Findings);
        var outcome = Stair.Draft(whole, read.Findings, shelf);
        if (outcome.Value is not { } stair) return Worst(outcome.Findings);
        if (Worst(stair.Findings) is { } breach) return breach;
        return Unproved(stair.Prove(), stair.Units);
    }

    private static string? Unproved(ProofReport proof, Units units) => proof switch
    {
        { Holds: true } => null,
        { Clashes: [var clash, ..] } => $"{clash.First} and {clash.Second} would stand in one place: {clash.Words(units)}",
        { NewelCuts: [var cuts, ..] } => $"two cuts of one newel would meet: {cuts.First} and {cuts.Second}",
        _ when proof.Joints.FirstOrDefault(j => !j.Holds) is { } joint => $"the {joint.Kind} of {joint.Male} in {joint.Female} does not close: gap {units.Print(joint.Gap, 3)}",
        _ when proof.Blanks.FirstOrDefault(b => !b.Holds) is { } blank => $"{blank.Part} stands {units.Print(blank.Outside)} out of its blank",
        _ => "the stair does not measure what was surveyed",
    };

    private static string? Worst(IEnumerable<Finding> findings) =>
        findings.Where(f => f.Severity >= Severity.Breach && !OfTheHouse.Contains(f.Code)).MaxBy(f => f.Severity) is { } worst ? $"{worst.Code}: {worst.Message}" : null;
}
