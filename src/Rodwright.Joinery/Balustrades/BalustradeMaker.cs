using Rodwright.Geometry;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Makes the pieces of a balustrade (setting-out.md 7), and cuts the newels for them. Left-hand frame.</summary>
internal static class BalustradeMaker
{
    /// <summary>Adds the pieces to the parts, the rails' mortices to the newels among them, and gives the joints that are not read from cuts.</summary>
    public static List<Joint> Add(StairPlan plan, BalustradePlan balustrade, IReadOnlyCollection<StringBoard> boards, List<Part> parts, List<Finding> findings)
    {
        var joints = new List<Joint>();
        var open = balustrade.Rails.Where(r => r.Kind != RailKind.Wall).ToList();
        foreach (var rail in open.Where(r => r.Upper == BalustradePlan.WallNewel)) parts.Add(WallNewelMaker.Make(plan, rail));
        var ends = RailEnds.Of(plan, balustrade, parts, findings);
        for (var i = 0; i < parts.Count; i++)
            if (parts[i].Kind is PartKind.Newel or PartKind.WallNewel) parts[i] = RailMortices.Cut(plan, parts[i], [.. ends.Where(e => e.Newel == parts[i].Id)], findings);
        foreach (var rail in open)
        {
            var under = UnderString.Of(rail, boards);
            parts.Add(HandrailMaker.Make(plan, rail, [.. ends.Where(e => ReferenceEquals(e.Rail, rail))], under));
            if (under is null) continue;
            joints.Add(new($"{rail.Id}/{under.String}", JointKind.UnderString, rail.Id, under.String, 0));
            // Where its lower edge reaches the newel before the string, part of its end stands there.
            if (under.Meets(HandrailMaker.GrooveLines(plan, rail).Mouth) is null) joints.Add(new($"{rail.Id}/{rail.Stop!.Newel}", JointKind.RailToNewel, rail.Id, rail.Stop.Newel, 0));
        }

        var below = open.Select(r => BaseRail.Of(plan, r, boards)).OfType<BaseRail>().ToList();
        foreach (var rail in below)
        {
            parts.Add(rail.Make(plan));
            if (rail.Rail.String is { } site) joints.Add(new($"{rail.Id}/{site.Id}", JointKind.RailOnString, rail.Id, site.Id, 0));
            if (rail.Below is { } above && above.Meets(rail.Over) is not null) joints.Add(new($"{rail.Id}/{above.String}", JointKind.UnderString, rail.Id, above.String, 0));
            var reaches = rail.Below?.Meets(rail.Under) is null;
            foreach (var newel in new[] { rail.Rail.Lower, reaches ? rail.Rail.Stop?.Newel ?? rail.Rail.Upper : "" }.Where(n => n.Length > 0)) joints.Add(new($"{rail.Id}/{newel}", JointKind.RailToNewel, rail.Id, newel, 0));
        }
        foreach (var rail in below.Where(b => b.Rail.Kind == RailKind.Landing)) LandingEdgeMaker.Add(plan, rail.Rail, rail.Id, parts, joints);
        var fill = new BalusterMaker(plan, balustrade);
        foreach (var rail in below) fill.Fill(rail.Rail, rail, parts, joints);
        parts.AddRange(Caps(plan, open, [.. parts]));
        foreach (var rail in balustrade.Rails.Where(r => r.Kind == RailKind.Wall)) WallRailMaker.Add(plan, rail, parts, joints);
        RailFindings.Report(plan, balustrade, findings);
        RailFindings.Stopped(plan, open, findings);
        RailFindings.UnderStrings(plan, open, parts, findings);
        return joints;
    }

    private static IEnumerable<Part> Caps(StairPlan plan, IReadOnlyCollection<RailRun> open, IReadOnlyCollection<Part> parts)
    {
        foreach (var site in plan.Newels)
            if (CapMaker.Make(plan, parts.First(p => p.Id == site.Id), site.Centre, site.Split) is { } cap) yield return cap;
        foreach (var rail in open.Where(r => r.Upper == BalustradePlan.WallNewel))
            if (CapMaker.Make(plan, parts.First(p => p.Id == BalustradePlan.WallNewel), WallNewelMaker.Centre(rail, plan.Job.Practice.Newel), rail.Centre.Along) is { } cap) yield return cap;
    }
}
