using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>What the house gives: floors, walls, the corner of the room; and a landing.</summary>
internal static class PlacePick
{
    public static Pick? Of(PickBench bench, string id)
    {
        var plan = bench.Plan;
        return id switch
        {
            ThingId.Floor => Draft.Pick(id, "lower floor", "level all heights are counted from", [ThingId.Riser(1), ThingId.UpperFloor], Floor(bench)),
            ThingId.UpperFloor => Draft.Pick(id, "upper floor", "level the stair arrives at", [ThingId.Nosing(plan.Risers), ThingId.Riser(plan.Risers), ThingId.Floor], Upper(bench)),
            ThingId.WallOuter when PickIds.Walls(plan).Contains(id) => Draft.Pick(id, "outer wall", "face of the wall on the outer side", plan.Strings.Where(s => s.IsWall && !s.Inner).Select(s => s.Id), Wall(bench, id, plan.OuterThickness)),
            ThingId.WallInner when PickIds.Walls(plan).Contains(id) => Draft.Pick(id, "inner wall", "face of the wall on the inner side", plan.Strings.Where(s => s.IsWall && s.Inner).Select(s => s.Id), Wall(bench, id, plan.InnerThickness)),
            _ when PickIds.Landings(plan).FirstOrDefault(k => ThingId.Level(plan, k) == id) is > 0 and var step && plan.TurnOf(step) is { } turn => Draft.Pick(
                id, plan.Turns.Count(t => t.Steps.IsEmpty) == 1 ? "landing" : $"landing of {TurnWords.The(plan, turn)}", $"{(turn.Site.Quarters == 1 ? "quarter" : "half")} landing: floor, boards on joists", [.. Relations.Step(bench, step), ThingId.Riser(turn.LastLine)],
                [bench.Level("height", step), .. LandingFacts.Lengths(bench, step)]),
            _ when CornerFacts.Find(plan, id) is >= 0 and var corner => CornerFacts.Pick(bench, id, corner),
            _ => null,
        };
    }

    private static IEnumerable<Fact> Floor(PickBench bench)
    {
        yield return bench.Mm("height", 0, Why.Rule("the datum: all heights are counted up from the finished lower floor"));
        yield return bench.Mm("up to the upper floor", bench.Job.Survey.Height, Why.Field(Why.Height), Why.Height, Survey.Mean(bench.Job.Survey));
        foreach (var (reading, i) in bench.Job.Survey.FloorToFloor.Select((r, i) => (r, i)).Where(_ => bench.Job.Survey.FloorToFloor.Length > 1))
            yield return bench.Mm($"reading {Number.Print(i + 1, 0)}", reading, Why.Field(Why.Height), Why.Height);
        yield return bench.Rise();
    }

    private static IEnumerable<Fact> Upper(PickBench bench)
    {
        var (plan, practice) = (bench.Plan, bench.Practice);
        yield return bench.Mm("height", plan.Risers * plan.Rise, Why.Rule("the rises together are the height that was measured"), Why.Height, Working.Of(plan.Risers) * plan.Rise);
        yield return bench.Rise();
        yield return bench.Given("practice.floorBoards", practice.FloorBoards);
        yield return bench.Mm("top of the trimmer", plan.Risers * plan.Rise - practice.FloorBoards, Why.Rule("the floor's boards lie on it, and so does the seat of a wall string"), "practice.floorBoards", Working.Of(plan.Risers * plan.Rise) - practice.FloorBoards);
    }

    private static IEnumerable<Fact> Wall(PickBench bench, string id, double thickness)
    {
        var plan = bench.Plan;
        yield return bench.Given(Why.Width, bench.Job.Width);
        if (plan.Strings.FirstOrDefault(s => s.IsWall && s.Inner == (id == ThingId.WallInner)) is { } own)
            yield return bench.Mm(id == ThingId.WallInner ? "to the face of the inner wall string" : "to the face of the wall string", own.Thickness, Why.Field("practice.wallString.thickness"), "practice.wallString.thickness");
        var n = 0;
        foreach (var wall in PlanWall.Of(plan).Where(w => w.Id == id))
        {
            var points = wall.Face.Vertices.Select(v => v.At).ToList();
            if (points.Count == 2) continue;
            for (var i = 0; i + 1 < points.Count; i++)
            {
                var length = points[i].DistanceTo(points[i + 1]);
                // Each corner adds the string's thickness to what is measured along the string's face.
                var ends = (i > 0 ? 1 : 0) + (i + 2 < points.Count ? 1 : 0);
                yield return bench.Mm($"length of its face {Number.Print(++n, 0)}", length, Why.Rule("along the wall's face: as along the string's, and at each corner the string's thickness more"), "", Working.Of(length - ends * thickness) + Working.Of(ends) * thickness);
            }
        }
    }
}
