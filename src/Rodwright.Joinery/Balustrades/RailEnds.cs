using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Joinery.Balustrades;

/// <summary>Works out the tenons of all handrails.</summary>
internal static class RailEnds
{
    // Wood above and below a peg's hole in a rail's tenon, mm (common practice).
    private const double BesidePeg = 2;

    // A tenon shorter than this is none, mm.
    private const double Shortest = 10;

    /// <summary>The ends of all rails, shortened where they would meet the newel's other joints.</summary>
    public static ImmutableArray<RailEnd> Of(StairPlan plan, BalustradePlan balustrade, IEnumerable<Part> parts, List<Finding> findings)
    {
        var posts = parts.Where(p => p.Kind is PartKind.Newel or PartKind.WallNewel).ToDictionary(p => p.Id);
        var ends = new List<RailEnd>();
        foreach (var rail in balustrade.Rails)
        {
            if (rail.Lower.Length > 0) ends.Add(Clear(plan, balustrade, rail, false, posts[rail.Lower], findings));
            if (rail.Upper.Length > 0) ends.Add(Clear(plan, balustrade, rail, true, posts[rail.Upper], findings));
        }
        foreach (var end in ends) Report(plan, end, findings);
        return [.. ends];
    }

    private static RailEnd Clear(StairPlan plan, BalustradePlan balustrade, RailRun rail, bool isUpper, Part newel, List<Finding> findings)
    {
        var whole = At(plan, balustrade, rail, isUpper, plan.Job.Balustrade!.Tenon.Length);
        for (var end = whole; end.Length >= Shortest; end = At(plan, balustrade, rail, isUpper, end.Length - 1))
        {
            var mortice = RailMortices.Mortice(plan, newel, end);
            if (newel.Cuts.All(c => ClashProof.Shared(newel, mortice, c) <= Tolerance.Joint)) return end;
        }
        findings.Add(new("RW4104", Severity.Breach, rail.Name, $"its tenon meets another joint in {newel.Name}", "a larger newel, thinner tenons, or fewer winders round that newel"));
        return whole;
    }

    /// <summary>Plumb height of a rail's section of a square height.</summary>
    public static double Plumb(RailRun rail, double square) => square / rail.Pitch.Cosine;

    private static RailEnd At(StairPlan plan, BalustradePlan balustrade, RailRun rail, bool isUpper, double wanted)
    {
        var (job, practice) = (plan.Job, plan.Job.Balustrade!);
        var newel = isUpper ? rail.Upper : rail.Lower;
        // Two rails square to one another in one newel stop short of each other's mortices.
        var isCrossed = balustrade.At(newel).Any(o => !ReferenceEquals(o.Rail, rail) && Math.Abs(o.Rail.Centre.Along.Dot(rail.Centre.Along)) < 0.5);
        var most = job.Practice.Newel / 2 - job.Practice.Tenon.MorticeClearance - job.Practice.Tenon.Between - (isCrossed ? practice.Tenon.Thickness / 2 : 0);
        var length = Math.Min(wanted, most);
        var shoulder = isUpper ? rail.To : rail.From;
        var tip = shoulder + (isUpper ? length : -length);
        var (depth, groove) = (Plumb(rail, practice.Rail.Height), Plumb(rail, practice.Groove));
        var bottom = Math.Max(rail.TopAt(shoulder) - depth + groove, rail.TopAt(tip) - depth);
        var top = Math.Min(rail.TopAt(shoulder) - practice.Tenon.Shoulder, rail.TopAt(tip));
        return new(rail, isUpper, newel, shoulder, length, bottom, top, Math.Min(practice.Tenon.PegBack, length / 2));
    }

    private static void Report(StairPlan plan, RailEnd end, List<Finding> findings)
    {
        var (units, peg) = (plan.Units, plan.Job.Balustrade!.Tenon.Peg);
        var (has, wants) = (end.Top - end.Bottom, peg + 2 * BesidePeg);
        if (has >= wants - Tolerance.Same) return;
        // A level tenon loses the rail's slope over its length.
        var shorter = units.Down(end.Length - (wants - has) / Math.Max(0.1, Math.Abs(end.Rail.Slope)));
        findings.Add(new("RW4101", Severity.Breach, end.Rail.Name,
            $"its level tenon at the {(end.IsUpper ? "upper" : "lower")} newel is {units.Print(Math.Max(0, has))} deep at this pitch; a peg of {units.Print(peg)} wants {units.Print(wants)}",
            (shorter > 0 ? $"a tenon {units.Print(shorter)} long, or " : "") + $"a handrail {units.Print(units.Up(plan.Job.Balustrade!.Rail.Height + (wants - has) * end.Rail.Pitch.Cosine))} high")
        {
            Remedies =
            [
                .. shorter >= 10 ? new[] { Remedy.Of($"rails' tenons {units.Print(shorter)} long", FieldChange.To("balustrade.tenon.length", shorter)) } : [],
                Remedy.Of($"a handrail {units.Print(units.Up(plan.Job.Balustrade!.Rail.Height + (wants - has) * end.Rail.Pitch.Cosine))} high", FieldChange.To("balustrade.rail.height", units.Up(plan.Job.Balustrade!.Rail.Height + (wants - has) * end.Rail.Pitch.Cosine))),
            ],
        });
    }
}
