using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>What pinches in the handrails: where a straight one cannot follow its flight, and where two meet one newel at different heights.</summary>
internal static class RailFindings
{
    public static void Report(StairPlan plan, BalustradePlan balustrade, List<Finding> findings)
    {
        var units = plan.Units;
        foreach (var rail in balustrade.Rails.Where(r => r.Excess > plan.Job.Balustrade!.Follow + Tolerance.Same && !r.Heights.IsEmpty))
        {
            var heights = string.Join(", ", rail.Heights.Where(h => h.Riser > 0).Select(h => $"{units.Print(h.Above)} over nosing {Number.Print(h.Riser, 0)}"));
            findings.Add(new("RW4102", Severity.Advice, rail.Name,
                $"straight between its newels it cannot follow the nosings: it stands up to {units.Print(rail.Excess)} higher than the {units.Print(plan.Job.Practice.RailHeight)} wanted ({heights})",
                "fewer steps that share the taper, or let a ramp or a wreath be worked into it by hand"));
        }
        foreach (var newel in plan.Newels)
        {
            var meeting = balustrade.At(newel.Id).OrderBy(r => r.Top).ToList();
            if (meeting.Count != 2 || meeting[1].Top - meeting[0].Top < Tolerance.Print) continue;
            var winders = plan.TurnAt(newel.Id) is { Steps.IsEmpty: false } turn ? $"; over winders {Number.Print(turn.FirstLine, 0)} to {Number.Print(turn.LastLine - 1, 0)} the newel itself is held and guards" : "";
            findings.Add(new("RW4103", Severity.Note, newel.Name,
                $"{meeting[0].Rail.Name} meets it with its top {units.Print(meeting[0].Top)} above the lower floor, {meeting[1].Rail.Name} {units.Print(meeting[1].Top)}: {units.Print(meeting[1].Top - meeting[0].Top)} higher{winders}",
                "two rails at one newel usually meet it one above the other"));
        }
    }

    /// <summary>Rails that end under the string of a flight that comes back over theirs.</summary>
    public static void Stopped(StairPlan plan, IEnumerable<RailRun> rails, List<Finding> findings)
    {
        var units = plan.Units;
        foreach (var rail in rails.Where(r => r.Stop is not null))
        {
            var over = rail.Stop!.Bare.Select(n => Number.Print(n, 0)).ToList();
            var bare = over.Count == 0 ? "" : $"; over nosing{(over.Count == 1 ? "" : "s")} {string.Join(", ", over)} there is no rail to hold on that side: the string and the balustrade on it guard";
            var newel = plan.Newels.First(n => n.Id == rail.Stop!.Newel).Name;
            findings.Add(new("RW4106", over.Count == 0 ? Severity.Note : Severity.Advice, rail.Name,
                (rail.Face - rail.To < Tolerance.Print ? $"its top is scribed under {rail.Stop!.String.Name} and it butts on {newel} without a tenon" : $"it ends under {rail.Stop!.String.Name}, {units.Print(rail.Face - rail.To)} short of {newel}") + bare,
                "an open well, so that the flights stand apart in plan" + (over.Count == 0 ? "" : ", or a rail on the wall (balustrade.wallRail.wanted)"))
            {
                Remedies = over.Count == 0 || plan.Job.Balustrade!.WallRail.Wanted == WallRailWanted.Always ? [] : [Remedy.Of("wall rails on every wall", FieldChange.To("balustrade.wallRail.wanted", "always"))],
            });
        }
    }

    /// <summary>A rail that runs into the string of a flight above it, as at the newel of a dog-leg stair whose flights stand over one another.</summary>
    public static void UnderStrings(StairPlan plan, IEnumerable<RailRun> rails, IReadOnlyCollection<Part> parts, List<Finding> findings)
    {
        foreach (var rail in rails)
        {
            var body = UprightBody.Of(parts.First(p => p.Id == rail.Id));
            foreach (var @string in parts.Where(p => p.Kind is PartKind.NewelString or PartKind.WallString && p.Id != rail.String?.Id))
            {
                if (rail.Stop?.String.Id == @string.Id || UprightBody.Shared(body, UprightBody.Of(@string)) <= 0) continue;
                findings.Add(new("RW4105", Severity.Breach, rail.Name,
                    $"it runs into {@string.Name}, which comes down beside it to the same newel",
                    "an open well, so that the flights stand apart in plan, or end the rail under the string by hand"));
            }
        }
    }
}
