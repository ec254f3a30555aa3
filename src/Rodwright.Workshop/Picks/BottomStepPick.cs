using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Tables;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>The block and the wedges of a rounded bottom step; what its bent riser measures stands in <see cref="BentRiserFacts"/>.</summary>
internal static class BottomStepPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Part(id) is not { Kind: PartKind.Block or PartKind.Wedges } part) return null;
        var end = bench.Plan.RoundedEnds.First(e => e.Inner != id.EndsWith("-outer", StringComparison.Ordinal));
        var others = bench.Kit.Parts.Where(p => p.Step == 1 && p.Kind is PartKind.Block or PartKind.Wedges or PartKind.BentRiser).Select(p => p.Id);
        return Draft.Pick(id, part.Name, $"{part.Name}, mark {part.Mark}", [.. others, ThingId.Tread(1), end.Newel, .. Relations.CutsFor(bench, id)],
            [Height(bench, part), .. part.Kind == PartKind.Block ? Block(bench, part, end) : Wedges(bench, part), Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber")]);
    }

    private static Fact Height(PickBench bench, Part part) => bench.Mm("height", part.FaceSide.Thickness, Why.Rule("it stands on the floor and carries the tread"), "practice.tread", Working.Of(bench.Plan.Rise) - bench.Practice.Tread);

    private static IEnumerable<Fact> Block(PickBench bench, Part part, RoundedEnd end)
    {
        var step = bench.Job.BottomStep;
        yield return Radius(bench, end);
        yield return bench.Mm("radius of the block", end.Radius - step.Veneer, Why.Rule("the veneer lies round it: the riser's face, less the veneer"), "bottomStep.veneer", Working.Of(end.Radius) - step.Veneer);
        yield return bench.Mm("behind the riser's full thickness", step.Lap, Why.Field("bottomStep.lap"), "bottomStep.lap");
        yield return bench.Mm("length", part.Blank.Length, Why.Rule("along the riser, from the bend to the end of the lap"), "", Working.Of(end.Radius) - step.Veneer + step.Thinned + step.Lap);
        yield return bench.Mm("width", part.Blank.Width, Why.Rule("from the riser's veneer back to the newel's face"), "", Working.Of(end.Back) - step.Veneer);
        var layers = BlockLayers.Of(step, part);
        yield return Facts.Count("layers it is built up from", layers.Count, Why.Field("bottomStep.layer") + $", {bench.Length(step.Layer)}; grain crossing", "bottomStep.layer");
        yield return bench.Mm("thickness of each layer", layers.Thickness, Why.Rule("layers of one thickness"), "bottomStep.layer", Working.Of(part.FaceSide.Thickness) / layers.Count);
    }

    private static IEnumerable<Fact> Wedges(PickBench bench, Part part)
    {
        var (step, practice) = (bench.Job.BottomStep, bench.Practice);
        yield return bench.Mm("slot they are driven into", step.Wedges, Why.Field("bottomStep.wedges"), "bottomStep.wedges");
        yield return bench.Mm("width", part.Blank.Width, Why.Rule("behind the veneer, to the back of the riser's full thickness"), "", Working.Of(practice.Riser) - step.Veneer);
    }

    /// <summary>Radius of the riser's face.</summary>
    public static Fact Radius(PickBench bench, RoundedEnd end) => bench.Job.BottomStep.Radius is { } given
        ? bench.Given("bottomStep.radius", given)
        : bench.Mm("radius of the riser's face", end.Radius, Why.Rule("the quarter circle ends on the newel's face: the going, less half the newel"), "bottomStep.radius", Working.Of(bench.Plan.Going) - Working.Of(bench.Practice.Newel) / 2, end.Back);
}
