using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Builds one side of a plan as a boundary: the faces of its runs, and of the newels between them.</summary>
internal static class Boundaries
{
    // Of a wall that a half newel stands against, mm: past every piece that may butt there.
    private const double WallDrawn = 150;

    public static Boundary Of(PlanShape shape, Hand side, IReadOnlyList<Run> runs)
    {
        var edges = new List<BoundaryEdge>();
        for (var i = 0; i < shape.Legs.Length; i++)
        {
            var leg = shape.Legs[i];
            var run = runs.FirstOrDefault(r => ReferenceEquals(r.Leg, leg));
            if (run is not null) AddRun(shape, leg, run, edges);
            if (i == shape.Turns.Length) break;
            var turn = shape.Turns[i];
            if (turn.Hand == side) AddNewels(shape, turn, side, edges);
            else if (turn.Quarters == 2)
            {
                var across = runs.First(r => r.Leg is null && r.FirstRiser == turn.FirstLine && r.LastRiser == turn.LastLine);
                AddAcross(shape, turn, across, edges);
            }
        }
        return new(edges);
    }

    private static void AddRun(PlanShape shape, Leg leg, Run run, List<BoundaryEdge> edges)
    {
        var h = shape.HalfNewel;
        var face = shape.FaceX(run.Side);
        var (from, to) = (run.Lower.At, run.Upper.At);
        var (lower, upper) = (shape.NewelX(run.Side, leg.Index - 1), shape.NewelX(run.Side, leg.Index));
        if (run.Lower.Kind == RunEndKind.Newel)
        {
            // The newel at the foot of the stair; a turn's own faces were added with the turn.
            if (leg.Index == 0 && shape.IsRounded(run.Side)) edges.Add(new(leg.At(lower, leg.Start), leg.At(lower, from - h), BoundaryKind.FreeEnd, "", ""));
            var half = leg.Index == 0 && shape.IsHalf(isTop: false);
            if (half)
            {
                edges.Add(new(leg.At(face, from - WallDrawn), leg.At(face, from), BoundaryKind.WallEnd, "", ""));
                edges.Add(Newel(leg.At(face, from), leg.At(lower, from), BoundaryKind.NewelJog, run.Lower.Newel, run.Side));
            }
            if (leg.Index == 0) edges.Add(Newel(leg.At(lower, half ? from : from - h), leg.At(lower, from + h), BoundaryKind.NewelFace, run.Lower.Newel, run.Side));
            from += h;
            edges.Add(Newel(leg.At(lower, from), leg.At(face, from), BoundaryKind.NewelJog, run.Lower.Newel, run.Side));
        }
        if (run.Upper.Kind == RunEndKind.Newel) to -= h;
        edges.Add(Face(leg.At(face, from), leg.At(face, to), run));
        if (run.Upper.Kind != RunEndKind.Newel) return;
        edges.Add(Newel(leg.At(face, to), leg.At(upper, to), BoundaryKind.NewelJog, run.Upper.Newel, run.Side));
        if (leg.Index < shape.Legs.Length - 1) return;
        var split = shape.IsHalf(isTop: true);
        edges.Add(Newel(leg.At(upper, to), leg.At(upper, to + (split ? h : 2 * h)), BoundaryKind.NewelFace, run.Upper.Newel, run.Side));
        if (!split) return;
        edges.Add(Newel(leg.At(upper, to + h), leg.At(face, to + h), BoundaryKind.NewelJog, run.Upper.Newel, run.Side));
        edges.Add(new(leg.At(face, to + h), leg.At(face, to + h + WallDrawn), BoundaryKind.WallEnd, "", ""));
    }

    /// <summary>The wall across a half turn; where that side is open, the faces of the two corner newels with it.</summary>
    private static void AddAcross(PlanShape shape, TurnShape turn, Run run, List<BoundaryEdge> edges)
    {
        if (run.Lower.Kind != RunEndKind.Newel)
        {
            edges.Add(Face(run.Face.At(run.Lower.At), run.Face.At(run.Upper.At), run));
            return;
        }
        var h = shape.HalfNewel;
        var (from, to) = (run.Face.At(run.Lower.At + h), run.Face.At(run.Upper.At - h));
        var arris = shape.OuterCentre(turn) - h;
        edges.Add(Newel(turn.Frame.World(new(arris, arris)), from, BoundaryKind.NewelJog, run.Lower.Newel, run.Side));
        edges.Add(Face(from, to, run));
        edges.Add(Newel(to, turn.Frame.World(new(-arris - turn.Between, arris)), BoundaryKind.NewelJog, run.Upper.Newel, run.Side));
    }

    /// <summary>The faces a turn's newel shows to the stair, and the edge of a half landing between two of them.</summary>
    private static void AddNewels(PlanShape shape, TurnShape turn, Hand side, List<BoundaryEdge> edges)
    {
        var (h, f, w) = (shape.HalfNewel, turn.Site.InnerFace, turn.Between);
        var (lower, upper) = (Ids.Turn(shape, turn.Index, last: false), Ids.Turn(shape, turn.Index, last: true));
        Add(new(h, -h), new(h, h), BoundaryKind.NewelFace, lower);
        Add(new(h, h), new(-h, h), BoundaryKind.NewelFace, lower);
        if (turn.Quarters == 1) return;
        if (w > 0)
        {
            Add(new(-h, h), new(-h, f), BoundaryKind.NewelJog, lower);
            Add(new(-h, f), new(-w + h, f), BoundaryKind.Wall, "");
            Add(new(-w + h, f), new(-w + h, h), BoundaryKind.NewelJog, upper);
            Add(new(-w + h, h), new(-w - h, h), BoundaryKind.NewelFace, upper);
        }
        Add(new(-w - h, h), new(-w - h, -h), BoundaryKind.NewelFace, upper);

        void Add(Point2 from, Point2 to, BoundaryKind kind, string id)
        {
            var (a, b) = (turn.Frame.World(from), turn.Frame.World(to));
            edges.Add(kind == BoundaryKind.Wall ? new(a, b, kind, "", "") : Newel(a, b, kind, id, side));
        }
    }

    private static BoundaryEdge Face(Point2 from, Point2 to, Run run) =>
        new(from, to, run.Carries ? BoundaryKind.StringFace : BoundaryKind.Wall, run.Carries ? run.Id : "", "");

    private static BoundaryEdge Newel(Point2 from, Point2 to, BoundaryKind kind, string id, Hand side)
    {
        var along = (to - from).Unit;
        var looks = side == Hand.Left ? along.Right : along.Left;
        return new(from, to, kind, id, Math.Abs(looks.X) > Math.Abs(looks.Y) ? looks.X > 0 ? "E" : "W" : looks.Y > 0 ? "N" : "S");
    }
}
