using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Things;

namespace Rodwright.Workshop.Picks;

/// <summary>A tread.</summary>
internal static class TreadPick
{
    public static Pick? Of(PickBench bench, string id)
    {
        if (bench.Number(id, "tread-") is not { } k || bench.Part(id) is not { } part) return null;
        return Draft.Pick(id, part.Name, $"{(part.Kind == PartKind.TaperedTread ? "tapered tread" : "tread")}, mark {part.Mark}",
            [.. Relations.Step(bench, k), ThingId.Going(k), .. Relations.CutsFor(bench, id)],
            [bench.Level("height of its surface", k), .. Board(bench, part), .. GoingFacts.Of(bench, k), .. TreadOutline.Corners(bench, part)]);
    }

    private static IEnumerable<Fact> Board(PickBench bench, Part part)
    {
        var (blank, practice, plan) = (part.Blank, bench.Practice, bench.Plan);
        yield return bench.Given("practice.tread", practice.Tread);
        yield return bench.Given("practice.nosing", practice.Nosing);
        yield return NosingPick.Round(bench);
        yield return bench.Mm("length of the board", blank.Length, Why.Rule(part.Kind == PartKind.TaperedTread ? "the smallest board it comes out of, grain along the nosing" : "between the faces, and its ends into their housings"), "",
            [.. TreadOutline.Length(bench, part)]);
        yield return bench.Mm("width of the board", blank.Width, Why.Rule(part.Kind == PartKind.TaperedTread ? "the smallest board it comes out of, square to the nosing" : "the going and the nosing; a riser that stands on it adds its thickness"), Why.Going,
            Working.Of(plan.Going) + practice.Nosing, Working.Of(plan.Going) + practice.Nosing + practice.Riser, TreadOutline.Deep(part));
        var glue = GlueUp.Of(part, practice);
        if (glue.Strips > 1)
        {
            yield return Facts.Count("strips it is glued up from", glue.Strips, Why.Field("practice.glueStrip") + $", {bench.Length(practice.GlueStrip)}", "practice.glueStrip");
            yield return bench.Mm("width of each strip", glue.Width, Why.Rule("equal strips, grain along the nosing"), "practice.glueStrip", Working.Of(blank.Width) / glue.Strips);
        }
        foreach (var joint in bench.Kit.Joints.Where(j => j.Male == part.Id && j.Depth > 0))
        {
            var newel = bench.Part(joint.Female)?.Kind == PartKind.Newel;
            var path = newel ? "practice.newelHousing" : "practice.housing";
            yield return bench.Mm($"end into {CutWords.The(bench.Part(joint.Female))}", joint.Depth, Why.Field(path), path);
        }
        yield return Facts.Words("timber", part.Material, Why.Field("practice.timber"), "practice.timber");
    }
}
