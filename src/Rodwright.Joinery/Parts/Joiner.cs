using System.Collections.Immutable;
using Rodwright.Joinery.Balustrades;
using Rodwright.Joinery.Carriages;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Newels;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.SmallParts;
using Rodwright.Joinery.Steps;
using Rodwright.Joinery.Strings;
using Rodwright.Joinery.Wells;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Parts;

/// <summary>Makes the kit of parts of a plan. All of it is made left-handed; a right-hand stair is mirrored once, at the end.</summary>
public static class Joiner
{
    /// <summary>The kit of a left-hand plan as the planner made it, mirrored when the job's hand is right.</summary>
    /// <exception cref="ArgumentException">The plan is already mirrored.</exception>
    public static Kit Make(StairPlan plan)
    {
        if (plan.IsMirrored) throw new ArgumentException("a kit is made from the left-hand plan", nameof(plan));
        var findings = new List<Finding>();
        var sections = new SectionsOfPlan(plan);
        var strings = StringsOf(plan, sections, findings, out var tenons);
        var reaches = new Dictionary<string, double>();
        var parts = new List<Part>();
        parts.AddRange(strings.Select(s => s.Part));
        var balustrade = BalustradePlan.Of(plan);
        parts.AddRange(plan.Newels.Select(n => NewelMaker.Make(plan, sections, n, tenons, balustrade, findings)));
        parts.AddRange(sections.Treads.Values.OrderBy(t => t.Step).Select(t => TreadMaker.Tread(plan, t)));
        parts.AddRange(sections.NosingPieces.Values.OrderBy(t => t.Step).Select(t => TreadMaker.NosingPiece(plan, t)));
        if (!plan.RoundedEnds.IsEmpty) parts.AddRange(BullNose.Make(plan, sections.Risers[1], reaches));
        parts.AddRange(sections.Risers.Values.Where(r => r.Step > 1 || plan.RoundedEnds.IsEmpty).OrderBy(r => r.Step).Select(r => RiserMaker.Make(plan, r, findings, reaches)));
        List<Joint> rails = balustrade is null ? [] : BalustradeMaker.Add(plan, balustrade, strings, parts, findings);
        if (plan.Job.LandingEdge is not null) rails.AddRange(WellEdgeMaker.Add(plan, parts, findings));
        if (plan.Job.LandingEdge is not null && !parts.Exists(p => p.Kind == PartKind.Apron) && !findings.Exists(f => f.Code == "RW4108"))
        {
            findings.Add(new("RW4107", Severity.Note, "landing edges", "no landing has an open edge with a balustrade on it and no surveyed well one that is known to show, so no nosing and no apron lining is made",
                "a half landing round a well, or a balustrade on the upper floor (balustrade.upperLanding.length)"));
        }
        CarriageMaker.Advise(plan, findings);
        if (plan.Job.Carriage is not null) rails.AddRange(CarriageMaker.Add(plan, parts));
        if (plan.Job.SmallParts is not null) rails.AddRange(SmallPartMaker.Add(plan, strings, parts));
        var kit = new Kit(plan, [.. parts], [.. JointList.Of(plan, parts, reaches), .. rails], strings, [.. findings]);
        kit = kit with { Findings = [.. findings, .. Pinches.Of(kit)] };
        return plan.Job.IsRightHanded ? kit.Mirrored() : kit;
    }

    private static ImmutableArray<StringBoard> StringsOf(
        StairPlan plan, SectionsOfPlan sections, List<Finding> findings, out ImmutableArray<StringTenon> tenons)
    {
        var housings = plan.Strings.ToDictionary(s => s.Id, s => StringHousings.Of(plan, sections, s));
        var set = Development.Of(plan)
            .Select(d => (Development: d, Edges: StringEdges.Of(plan, d, [.. d.Sites.SelectMany(s => housings[s.Id])]))).ToList();
        if (set.Count > 0) StringFindings.Report(plan, set, findings);
        var all = TenonMaker.Make(plan, set, findings);
        tenons = all;
        ImmutableArray<StringBoard> boards = [.. set.SelectMany(s => StringMaker.Make(plan, s.Development, s.Edges, housings, all))];
        StringFindings.Impossible(plan, boards, findings);
        StringFindings.WidePieces(plan.Units, boards, findings);
        StringsAtNewel.Report(plan, boards, findings);
        return boards;
    }
}
