using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Balustrades;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>Handrails and balusters: heights over a nosing or a floor, the gap beside a newel, and rails counted in plan.</summary>
internal static class RailPictures
{
    /// <summary>The rail's top plumb above the nosing spoken of.</summary>
    public static Sketch Height(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var rail = Rails(plan).First(r => check.Where.StartsWith(r.Name + ", nosing ", StringComparison.Ordinal) && r.Heights.Any(h => check.Where == $"{r.Name}, nosing {Number.Print(h.Riser, 0)}"));
        var height = rail.Heights.First(h => check.Where == $"{rail.Name}, nosing {Number.Print(h.Riser, 0)}");
        var (at, going) = (height.At, plan.Going);
        var sketch = new Sketch(new(at - 1.5 * going, height.Nosing - plan.Rise, at + 1.5 * going, height.Top + 60), left: 10, right: 10) { Units = plan.Units };
        foreach (var h in rail.Heights.Where(h => h.Riser > 0))
        {
            var next = rail.Heights.FirstOrDefault(o => o.Riser == h.Riser + 1)?.At ?? h.At + going;
            sketch.Draw(Path2.Polyline(new Point2(h.At, h.Nosing - plan.Rise), new(h.At, h.Nosing), new(next, h.Nosing)), PicturePens.Edge, Layer.Visible);
        }
        Rail(sketch, plan, rail, at - 2 * going, at + 2 * going);
        sketch.Span(new(at, height.Nosing), new(at, height.Top));
        return sketch;
    }

    /// <summary>A landing's rail above its floor.</summary>
    public static Sketch Landing(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var rail = Rails(plan).First(r => r.Kind == RailKind.Landing && r.Name == check.Where);
        var (top, middle) = (rail.TopAt(rail.From), (rail.From + rail.To) / 2);
        var sketch = new Sketch(new(rail.From - 60, rail.Floor - 60, rail.To + 60, top + 60)) { Units = plan.Units };
        sketch.Draw(Path2.Polyline(new Point2(rail.From - 200, rail.Floor), new(rail.To + 200, rail.Floor)), PicturePens.Edge, Layer.Visible);
        Rail(sketch, plan, rail, rail.From, rail.To);
        sketch.Span(new(middle, rail.Floor), new(middle, top));
        return sketch;
    }

    /// <summary>From the newel's face to the first baluster.</summary>
    public static Sketch Gap(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var balustrade = BalustradePlan.Of(plan)!;
        var rail = balustrade.Rails.First(r => check.Where == "balusters under " + r.Name);
        var row = balustrade.RowOf(plan, rail);
        var end = Math.Min(rail.To, rail.From + 2 * (row.Gap + row.Side) + row.Gap);
        var low = rail.TopAt(rail.From) - 500;
        var sketch = new Sketch(new(rail.From - 60, low, end, rail.TopAt(end) + 40), left: 10, right: 10) { Units = plan.Units };
        sketch.Draw(Path2.Polyline(new Point2(rail.From, low - 300), new(rail.From, rail.TopAt(rail.From) + 300)), PicturePens.Newel, Layer.Visible);
        Rail(sketch, plan, rail, rail.From, rail.To);
        for (var i = 0; i < row.Count; i++)
        {
            foreach (var s in new[] { rail.From + row.Start(i), rail.From + row.Start(i) + row.Side })
                sketch.Draw(Path2.Polyline(new Point2(s, low - 300), new(s, rail.TopAt(s) - plan.Job.Balustrade!.Rail.Height / rail.Pitch.Cosine)), PicturePens.Edge, Layer.Visible);
        }
        var across = low + 150;
        sketch.Span(new(rail.From, across), new(rail.From + row.Gap, across));
        return sketch;
    }

    /// <summary>The sides of a flight that have a handrail.</summary>
    public static Sketch Sides(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var flight = plan.Flights.First(f => check.Where == "flight" || check.Where == "flight " + Number.Print(f.Index + 1, 0));
        var beside = Rails(plan).Where(r => r.String is { } s && s.Face.Along.Dot(flight.Along) > 1 - 1e-9 && s.FirstRiser <= flight.LastRiser && s.LastRiser >= flight.FirstRiser)
            .DistinctBy(r => r.String!.Inner).ToList();
        return Counted(view, beside, beside.Count == 1 ? "1 side" : $"{Number.Print(beside.Count, 0)} sides");
    }

    /// <summary>The handrail on the outside of a turn.</summary>
    public static Sketch Outer(PlanView view, ClauseCheck check)
    {
        var plan = view.Stair.Plan;
        var turn = plan.Turns.First(t => !t.Steps.IsEmpty && (check.Where == "turn" || check.Where == "turn " + Number.Print(t.Index + 1, 0)));
        var inner = plan.IsInner(turn);
        var found = Rails(plan).Where(r => r.String is { } s && s.Inner != inner && r.Heights.Any(h => h.Riser >= turn.FirstLine && h.Riser <= turn.LastLine)).Take(1).ToList();
        return Counted(view, found, found.Count == 1 ? "1 handrail" : "0 handrails");
    }

    private static Sketch Counted(PlanView view, List<RailRun> rails, string words)
    {
        var plan = view.Stair.Plan;
        var sketch = new Sketch(Box2.Of(plan.RiserLines.SelectMany(r => new[] { r.Inner, r.Outer })).Grown(60), 5, 8, 5, 8) { Units = plan.Units };
        PlanGround.Draw(sketch, view);
        foreach (var rail in rails) sketch.Dot(rail.Centre.At((rail.From + rail.To) / 2));
        sketch.Write(words, [new(Sketch.Width / 2, Sketch.Height - 4), new(Sketch.Width / 2, 4), new(14, 4), new(Sketch.Width - 14, 4), new(14, Sketch.Height - 4), new(Sketch.Width - 14, Sketch.Height - 4)]);
        return sketch;
    }

    private static void Rail(Sketch sketch, StairPlan plan, RailRun rail, double from, double to)
    {
        var practice = plan.Job.Balustrade!;
        var depth = (rail.Kind == RailKind.Wall ? practice.WallRail.Section.Height : practice.Rail.Height) / rail.Pitch.Cosine;
        var shape = Path2.Polygon(new Point2(from, rail.TopAt(from) - depth), new(to, rail.TopAt(to) - depth), new(to, rail.TopAt(to)), new(from, rail.TopAt(from)));
        sketch.Draw(new FillMark([sketch.Place.Map(shape)], 0.1, Layer.Tint));
        sketch.Draw(shape, PicturePens.Edge, Layer.Visible);
    }

    private static IEnumerable<RailRun> Rails(StairPlan plan) => BalustradePlan.Of(plan)?.Rails ?? [];
}
