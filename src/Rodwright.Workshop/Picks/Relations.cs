using System.Collections.Immutable;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>What lights up together.</summary>
internal static class Relations
{
    /// <summary>A cut: both parts of its joint, and all the joint's cuts in both.</summary>
    public static ImmutableArray<string> OfCut(PickBench bench, Part part, Cut cut)
    {
        // The round of a landing nosing is of no step.
        if (cut.Kind == CutKind.RoundedEdge) return part.Step == 0 ? [part.Id] : [.. new[] { part.Id, ThingId.Nosing(part.Step), ThingId.Riser(part.Step) }.Distinct()];
        if (bench.Joint(cut.Joint) is not { } joint) return [part.Id];
        var own = ThingId.Of(part, cut);
        return [joint.Male, joint.Female, .. CutsOf(bench, joint.Male, joint.Id).Concat(CutsOf(bench, joint.Female, joint.Id)).Where(c => c != own)];
    }

    /// <summary>A part: the cuts made for it in other parts.</summary>
    public static IEnumerable<string> CutsFor(PickBench bench, string part) =>
        bench.JointsOf(part).SelectMany(j => CutsOf(bench, j.Male == part ? j.Female : j.Male, j.Id));

    /// <summary>A string or newel: the strings and newels it is framed to, and the cuts made for it in them.</summary>
    public static IEnumerable<string> Framed(PickBench bench, string part) =>
    [
        .. bench.JointsOf(part).Where(j => j.Kind is JointKind.Tenon or JointKind.Corner or JointKind.RailTenon).Select(j => j.Male == part ? j.Female : j.Male),
        .. CutsFor(bench, part),
    ];

    /// <summary>A step's riser, its nosing and its tread, or what of them there is.</summary>
    public static IEnumerable<string> Step(PickBench bench, int k)
    {
        yield return ThingId.Riser(k);
        yield return ThingId.Nosing(k);
        if (bench.Plan.Steps[k - 1] is not (StepKind.Straight or StepKind.Tapered)) yield break;
        yield return ThingId.Tread(k);
        if (bench.Part(ThingId.Tread(k)) is { } tread) yield return Edge(tread);
    }

    /// <summary>The rounded edge of a tread or nosing piece.</summary>
    public static string Edge(Part tread) => ThingId.Of(tread, tread.Cuts.First(c => c.Kind == CutKind.RoundedEdge));

    private static IEnumerable<string> CutsOf(PickBench bench, string part, string joint) =>
        bench.Part(part) is { } p ? p.Cuts.Where(c => c.Joint == joint).Select(c => ThingId.Of(p, c)) : [];
}
