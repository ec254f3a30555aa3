using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>A whole flight, cut along the walking line: its height, or its risers counted.</summary>
internal static class FlightPictures
{
    public static Sketch Rise(PlanView view, ClauseCheck check)
    {
        var (first, last) = Risers(view.Stair.Plan, check);
        var (sketch, section) = Ground(view, first, last);
        var front = section.Nosing(first).X;
        sketch.Span(new(front, section.Level(first - 1)), new(front, section.Level(last)), 2.5);
        return sketch;
    }

    /// <summary>A dot on every riser counted.</summary>
    public static Sketch Risers(PlanView view, ClauseCheck check)
    {
        var (first, last) = Risers(view.Stair.Plan, check);
        var (sketch, section) = Ground(view, first, last);
        for (var k = first; k <= last; k++) sketch.Dot(section.Face(k, k - 1).Towards(section.Face(k, k), 0.5));
        var count = last - first + 1;
        var corner = sketch.Place.Map(section.Nosing(first)) with { Y = sketch.Place.Map(section.Nosing(last)).Y };
        sketch.Write(Sketch.Print(count) + (count == 1 ? " riser" : " risers"), [corner + new Vector2(11, -2.5)]);
        return sketch;
    }

    /// <summary>The first and the last riser a check speaks of.</summary>
    public static (int First, int Last) Risers(StairPlan plan, ClauseCheck check) => Risers(plan, check.Where);

    /// <summary>The first and the last riser of a flight by its name; of "stair" the longest stretch that does not turn.</summary>
    public static (int First, int Last) Risers(StairPlan plan, string where)
    {
        var landing = plan.Steps.IndexOf(StepKind.Landing) + 1;
        return where switch
        {
            "lower flight" => (1, landing),
            "upper flight" => (landing + 1, plan.Risers),
            "stair" when plan.Turn is { } turn => turn.FirstLine >= plan.Risers - turn.LastLine + 1 ? (1, turn.FirstLine) : (turn.LastLine, plan.Risers),
            _ => (1, plan.Risers),
        };
    }

    private static (Sketch Sketch, StepSection Section) Ground(PlanView view, int first, int last)
    {
        var section = new StepSection(view.Stair.Plan);
        var (foot, head) = (section.Nosing(first), section.Face(last, last));
        var sketch = new Sketch(Box2.Of([new(foot.X, section.Level(first - 1)), head]), left: 12, bottom: 4, right: 8, top: 4);
        section.Outline(sketch);
        return (sketch, section);
    }
}
