using System.Text;
using Rodwright.Geometry;
using Rodwright.Hosting.Files;
using Rodwright.Joinery;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Output;

/// <summary>A small plan of each proposal, as SVG, and the names they go by.</summary>
internal static class ProposalPlans
{
    /// <summary>"01-quarter-landing-left.svg"; the number is the rank.</summary>
    public static string NameOf(int rank, Proposal proposal) =>
        $"{(rank < 10 ? "0" : "")}{Number.Print(rank, 0)}-{proposal.Family.Id}-{(proposal.Hand == Hand.Left ? "left" : "right")}.svg";

    /// <summary>Writes the plans, each beside its place and then renamed; what was wrong, or null.</summary>
    public static string? Write(string folder, IReadOnlyList<Proposal> proposals, RegulationShelf tables)
    {
        try
        {
            Directory.CreateDirectory(folder);
            for (var i = 0; i < proposals.Count; i++)
            {
                if (Stair.Draft(proposals[i].Job, shelf: tables).Value is not { } stair) continue;
                var path = Path.Combine(folder, NameOf(i + 1, proposals[i]));
                File.WriteAllText(path + ".new", CardPicture.Of(stair), new UTF8Encoding(false));
                File.Move(path + ".new", path, overwrite: true);
            }
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return "the plans cannot be written: " + e.Message;
        }
    }
}
