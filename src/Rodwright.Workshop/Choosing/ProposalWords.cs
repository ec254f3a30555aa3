using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Workshop.Choosing;

/// <summary>Proposals in words.</summary>
public static class ProposalWords
{
    /// <summary>"13 risers of 200.2, going 225, left hand".</summary>
    public static string Stair(Proposal proposal) =>
        $"{Number.Print(proposal.Job.Layout.Risers, 0)} risers of {proposal.Job.Units.Fixed(proposal.Job.Rise, 1)}, going {proposal.Job.Units.Print(proposal.Job.Going)}, {Hand(proposal.Hand)}";

    /// <summary>"flights of 5, 4; turn of 3 tapered steps; newel 90; 860 wide".</summary>
    public static string Layout(Job job)
    {
        var course = Course.Of(job.Layout);
        var flights = string.Join(", ", course.Goings.Select(n => Number.Print(n, 0)));
        var turns = string.Join(", ", course.Turns.Select(t => t.Kind == TurnKind.Landing ? "landing" : $"{Number.Print(t.Tapered, 0)} tapered steps"));
        return $"goings in flights {flights}{(turns.Length > 0 ? $"; {turns}" : "")}{(job.HasNewels ? $"; newel {job.Units.Print(job.Practice.Newel)}" : "")}; {job.Units.Print(job.Width)} wide";
    }

    /// <summary>"left hand".</summary>
    public static string Hand(Hand hand) => hand == Stairs.Jobs.Hand.Left ? "left hand" : "right hand";

    /// <summary>What a revision says in which a proposal was taken.</summary>
    public static string Taken(Proposal proposal) => $"proposal taken: {proposal.Family.Title}, {Stair(proposal)}";

    /// <summary>What the wall can be sorted by.</summary>
    public static string Of(WallOrder order) => order switch
    {
        WallOrder.Comfort => "comfort: nearest to the ideal first",
        WallOrder.Pitch => "pitch: gentlest first",
        WallOrder.Headroom => "headroom: most first",
        WallOrder.FloorArea => "floor taken: least first",
        WallOrder.Narrowest => "narrow ends: widest first",
        WallOrder.Timber => "timber: least first",
        WallOrder.TaperedSteps => "tapered steps: fewest first",
        _ => "the ranking: best first",
    };
}
