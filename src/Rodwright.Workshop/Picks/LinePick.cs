using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Picks;

/// <summary>Lines that carry others: walking line, centre lines of newel strings, margin line.</summary>
internal static class LinePick
{
    public static Pick? Of(PickBench bench, string id) => id switch
    {
        ThingId.WalkingLine => Draft.Pick(id, "walking line", "line in plan on which goings are measured", Enumerable.Range(1, bench.Plan.Risers - 1).Select(ThingId.Going), Walking(bench)),
        ThingId.CentreLine when !bench.Plan.Newels.IsEmpty => Draft.Pick(id, "centre lines", "centre lines of the inner strings, on which the newels stand", bench.Plan.Newels.Select(n => n.Id), Centre(bench)),
        ThingId.MarginLine => Draft.Pick(id, "margin line", "line through the pitch points, which the edges of strings are set off from", bench.Plan.Strings.Select(s => s.Id), Margin(bench)),
        _ => null,
    };

    private static IEnumerable<Fact> Walking(PickBench bench)
    {
        var (plan, scale) = (bench.Plan, bench.Job.ModelScale);
        var rule = plan.Regulation.WalkingLine;
        var inset = rule.InsetFor(plan.ClearWidth, scale);
        var middle = plan.ClearWidth < rule.MiddleBelow * scale;
        yield return bench.Mm("from the inner string's face", inset, $"{plan.Regulation.Title}: {(middle ? "in the middle of the clear width" : $"{bench.Length(rule.Inset)} from the inner side")}", "regulation",
            middle ? Working.Of(plan.ClearWidth) / 2 : Working.Of(rule.Inset) * Working.Ratio(scale));
        yield return bench.Mm("from the newel's centre lines", plan.WalkingRadius, Why.Rule("half the inner string more; in a turn it is the radius about the newel's centre"), "", Working.Of(inset) + Working.Of(plan.InnerThickness) / 2);
        foreach (var turn in plan.Turns)
            yield return bench.Mm($"length in {TurnWords.The(plan, turn)}", TurnPlaces.WalkingLength(turn), Why.Rule(turn.Site.Quarters == 1 ? "an offset, a quarter circle, and an offset" : "an offset, a half circle, and an offset"), Why.Steps, WalkingFacts.Turn(turn));
        yield return WalkingFacts.Length(bench);
        if (rule.SecondInsetFor(plan.ClearWidth, scale) is { } second)
            yield return bench.Mm("outer measuring line, from the inner string's face", second, $"{plan.Regulation.Title}: {bench.Length(rule.Inset)} from the outer side", "regulation", Working.Of(plan.ClearWidth) - rule.Inset * scale);
    }

    private static IEnumerable<Fact> Centre(PickBench bench)
    {
        var plan = bench.Plan;
        var half = Working.Of(plan.InnerThickness) / 2;
        yield return bench.Mm("from the outer string's face", plan.ClearWidth + plan.InnerThickness / 2, Why.Rule("the clear width and half the inner string"), Why.Width, Working.Of(plan.ClearWidth) + half);
        yield return bench.Mm("from the inner string's face", plan.InnerThickness / 2, Why.Rule("the centre line halves the string"), "", half);
        foreach (var newel in plan.Newels)
            foreach (var fact in NewelPick.Place(bench, newel)) yield return fact;
    }

    private static IEnumerable<Fact> Margin(PickBench bench)
    {
        var plan = bench.Plan;
        yield return bench.Given("practice.margin", bench.Practice.Margin);
        if (plan.Steps.Contains(StepKind.Straight))
        {
            yield return bench.Pitch();
            var stride = Math.Sqrt(plan.Rise * plan.Rise + plan.Going * plan.Going);
            yield return bench.Mm("from pitch point to pitch point, straight steps", stride, Why.Rule("the long side of the pitch board"), Why.Going, Working.Across(plan.Rise, plan.Going));
        }
        foreach (var boards in bench.Developments())
        {
            var points = boards[0].Margin;
            for (var i = 0; i + 1 < points.Length; i++)
            {
                var d = points[i + 1] - points[i];
                if (points.Length == 2) continue;
                yield return Facts.Degrees($"pitch of piece {Number.Print(i + 1, 0)}, {RiserPlaces.Name(boards)}", Angle.OfPitch(d.Y, d.X).Degrees, Why.Rule("over tapered steps the wide or narrow ends spread or close the pitch points"), "", Working.Atan(Working.Of(d.Y) / d.X));
            }
        }
    }
}
