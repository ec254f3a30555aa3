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
        sketch.Write(Number.Print(count, 2) + (count == 1 ? " riser" : " risers"), [corner + new Vector2(11, -2.5)]);
        return sketch;
    }

    /// <summary>The first and the last riser a check speaks of.</summary>
    public static (int First, int Last) Risers(StairPlan plan, ClauseCheck check) => Risers(plan, check.Where);

    /// <summary>The first and the last riser of a flight by its name; of "stair" the longest stretch that does not turn.</summary>
    public static (int First, int Last) Risers(StairPlan plan, string where)
    {
        int[] floors = [0, .. Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] == StepKind.Landing), plan.Risers];
        var number = where == "lower flight" ? 1 : where == "upper flight" ? 2 : Places.Number(where, "flight");
        if (number is { } n && n > 0 && n < floors.Length) return (floors[n - 1] + 1, floors[n]);
        if (where != "stair" || plan.Turns.IsEmpty) return (1, plan.Risers);
        var longest = plan.Flights.MaxBy(f => f.LastRiser - f.FirstRiser)!;
        return (longest.FirstRiser, longest.LastRiser);
    }

    private static (Sketch Sketch, StepSection Section) Ground(PlanView view, int first, int last)
    {
        var section = new StepSection(view.Stair.Plan);
        var (foot, head) = (section.Nosing(first), section.Face(last, last));
        var sketch = new Sketch(Box2.Of([new(foot.X, section.Level(first - 1)), head]), left: 12, bottom: 4, right: 8, top: 4) { Units = view.Stair.Units };
        section.Outline(sketch);
        return (sketch, section);
    }
}
