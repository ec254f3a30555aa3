using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Things;
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
            ThingId.Landing when plan.Turn is { } turn && plan.Steps.Contains(StepKind.Landing) => Draft.Pick(id, "landing", "quarter landing: floor, boards on joists", [.. Relations.Step(bench, turn.FirstLine), ThingId.Riser(turn.LastLine)], Landing(bench, turn)),
            ThingId.Corner when PickIds.HasCorner(plan) => Draft.Pick(id, "corner of the room", "where the two wall strings meet", Meeting(bench), Corner(bench)),
            ThingId.WallOuter when PickIds.HasOuterWall(bench.Stair) => Draft.Pick(id, "outer wall", "face of the wall on the outer side", plan.Strings.Where(s => s.IsWall && !s.Inner).Select(s => s.Id), Outer(bench)),
            ThingId.WallInner when PickIds.HasInnerWall(bench.Stair) => Draft.Pick(id, "inner wall", "face of the wall on the inner side", plan.Strings.Where(s => s.IsWall && s.Inner).Select(s => s.Id), Inner(bench)),
            _ => null,
        };
    }

    private static IEnumerable<Fact> Floor(PickBench bench)
    {
        yield return Facts.Mm("height", 0, Why.Rule("the datum: all heights are counted up from the finished lower floor"));
        yield return Facts.Mm("up to the upper floor", bench.Job.Survey.Height, Why.Field(Why.Height), Why.Height, Survey.Mean(bench.Job.Survey));
        foreach (var (reading, i) in bench.Job.Survey.FloorToFloor.Select((r, i) => (r, i)).Where(_ => bench.Job.Survey.FloorToFloor.Length > 1))
            yield return Facts.Mm($"reading {Number.Print(i + 1, 0)}", reading, Why.Field(Why.Height), Why.Height);
        yield return bench.Rise();
    }

    private static IEnumerable<Fact> Upper(PickBench bench)
    {
        var (plan, practice) = (bench.Plan, bench.Practice);
        yield return Facts.Mm("height", plan.Risers * plan.Rise, Why.Rule("the rises together are the height that was measured"), Why.Height, Working.Of(plan.Risers) * plan.Rise);
        yield return bench.Rise();
        yield return Facts.Given("practice.floorBoards", practice.FloorBoards);
        yield return Facts.Mm("top of the trimmer", plan.Risers * plan.Rise - practice.FloorBoards, Why.Rule("the floor's boards lie on it, and so does the seat of a wall string"), "practice.floorBoards", Working.Of(plan.Risers * plan.Rise) - practice.FloorBoards);
    }

    private static IEnumerable<Fact> Landing(PickBench bench, TurnPlan turn) => [bench.Level("height", turn.FirstLine), .. LandingFacts.Lengths(bench)];

    private static IEnumerable<string> Meeting(PickBench bench)
    {
        foreach (var site in bench.Plan.Strings.Where(s => !s.Inner)) yield return site.Id;
        foreach (var part in bench.Kit.Parts)
            foreach (var cut in part.Cuts.Where(c => c.Kind == CutKind.CornerHousing)) yield return ThingId.Of(part, cut);
    }

    private static IEnumerable<Fact> Corner(PickBench bench)
    {
        var plan = bench.Plan;
        if (plan.Turn is not { } turn) yield break;
        var half = Working.Of(plan.InnerThickness) / 2;
        yield return Facts.Mm("from the first riser along the wall string", FromRiser(plan, 1), Why.Rule("the goings before, the offset, half the inner string and the clear width"), Why.Width,
            Working.Of(bench.Job.Layout.GoingsBefore) * plan.Going + turn.FirstRiser + half + plan.ClearWidth);
        yield return Facts.Mm("on to the last riser", FromRiser(plan, plan.Risers), Why.Rule("the clear width, half the inner string, the offset and the goings after"), Why.Width,
            Working.Of(plan.ClearWidth) + half + turn.LastRiser + Working.Of(bench.Job.Layout.GoingsAfter) * plan.Going);
        if (plan.Strings.Any(s => s.Upper.Kind == StringEndKind.CornerThrough))
        {
            yield return Facts.Given("practice.corner", bench.Practice.Corner);
            yield return Facts.Mm("lower string runs on past it", plan.OuterThickness, Why.Rule("the lower wall string runs through behind the other to the wall"), "practice.wallString.thickness");
        }
    }

    private static double FromRiser(StairPlan plan, int k) => plan.Outer.Edges[0].To.DistanceTo(plan.Riser(k).Outer);

    private static IEnumerable<Fact> Outer(PickBench bench)
    {
        var plan = bench.Plan;
        yield return Facts.Given(Why.Width, bench.Job.Width);
        if (plan.Strings.Any(s => s.IsWall && !s.Inner)) yield return Facts.Mm("to the face of the wall string", plan.OuterThickness, Why.Field("practice.wallString.thickness"), "practice.wallString.thickness");
        if (plan.Turn is null) yield break;
        var thick = plan.OuterThickness;
        yield return Facts.Mm("corner of the walls to the first riser", FromRiser(plan, 1) + thick, Why.Rule("along the wall's face: as along the string's, and the string's thickness more"), "", Working.Of(FromRiser(plan, 1)) + thick);
        yield return Facts.Mm("corner of the walls to the last riser", FromRiser(plan, plan.Risers) + thick, Why.Rule("along the wall's face: as along the string's, and the string's thickness more"), "", Working.Of(FromRiser(plan, plan.Risers)) + thick);
    }

    private static IEnumerable<Fact> Inner(PickBench bench)
    {
        yield return Facts.Given(Why.Width, bench.Job.Width);
        yield return Facts.Mm("to the face of the inner wall string", bench.Plan.InnerThickness, Why.Field("practice.wallString.thickness"), "practice.wallString.thickness");
    }
}
