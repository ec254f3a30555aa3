using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>A riser: its face on the rod, and the board it becomes.</summary>
internal static class RiserPick
{
    public static Pick? Of(PickBench bench, string id) => bench.Number(id, "riser-") is not { } k ? null : Draft.Pick(
        id, $"riser {Number.Print(k, 0)}", Kind(bench, k), [.. Relations.Step(bench, k), .. Relations.CutsFor(bench, id)],
        [bench.Rise(), bench.Level("height of its tread", k), .. RiserPlaces.InPlan(bench, k), .. RiserPlaces.OnStrings(bench, k), .. Board(bench, k), .. ClauseFacts.At(bench, w => w == "every step", r => r == "rise")]);

    private static string Kind(PickBench bench, int k)
    {
        var turn = TurnPlaces.OfRiser(bench.Plan, k);
        var of = turn is null ? "" : TurnWords.The(bench.Plan, turn);
        var where = k == 1 ? ", the first" : k == bench.Plan.Risers ? ", the last" : turn is null ? "" :
            k == turn.FirstLine ? $", {of}'s first" : k == turn.LastLine ? $", {of}'s last" : k < turn.FirstLine || k > turn.LastLine ? $", beside {of}" : $" in {of}";
        return bench.Part(ThingId.Riser(k))?.Kind switch
        {
            PartKind.TaperedRiser => "tapered riser, its face and its board",
            PartKind.BentRiser => "riser, its face and its board, bent round the end of the step",
            _ => "riser, its face and its board",
        } + where;
    }

    private static IEnumerable<Fact> Board(PickBench bench, int k)
    {
        if (bench.Part(ThingId.Riser(k)) is not { } part) yield break;
        var (plan, practice) = (bench.Plan, bench.Practice);
        var top = k * plan.Rise - practice.Tread;
        yield return bench.Given("practice.riser", practice.Riser);
        yield return bench.Mm("height of the board", part.Blank.Width, Why.Rule(k == 1 ? "it stands on the floor and ends under its tread"
                : practice.RiserOnTread || plan.Steps[k - 2] == StepKind.Landing ? "it stands on the tread or floor below and ends under its own tread" : "it runs down behind the tread below and ends under its own"),
            "", Working.Of(plan.Rise) - practice.Tread, Working.Of(top) - (top - plan.Rise));
        if (part.Kind == PartKind.BentRiser)
        {
            foreach (var fact in BentRiserFacts.Of(bench, part)) yield return fact;
            // Sheet material cannot be thinned to a veneer.
            yield return Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber");
            yield break;
        }
        var line = plan.Riser(k);
        var depths = bench.Kit.Joints.Where(j => j.Male == part.Id && j.Depth > 0).Select(j => j.Depth).ToList();
        var face = line.Inner.DistanceTo(line.Outer);
        yield return bench.Mm("length between the faces", face, Why.Rule("along the riser's face in plan, from what carries one end to what carries the other"), "", RiserPlaces.Length(bench, k));
        var length = depths.Aggregate(Working.Of(face), (sum, d) => sum + d);
        yield return bench.Mm("length of the board", part.Blank.Length, Why.Rule("between the faces, and its ends into their housings"), "practice.housing", [length, .. SlantFacts.Length(bench, part, line)]);
        foreach (var fact in SlantFacts.Of(bench, part, line)) yield return fact;
        yield return Facts.Words("material", part.Material, Why.Field("practice.riserMaterial"), "practice.riserMaterial");
    }
}
