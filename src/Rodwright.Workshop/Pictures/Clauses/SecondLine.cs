using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The outer measuring line of a wide stair's turn, where its regulation has one.</summary>
internal sealed class SecondLine
{
    private readonly StairPlan plan;
    private readonly TurnPlan turn;
    private readonly WalkingPath path;

    public SecondLine(StairPlan plan, TurnPlan turn)
    {
        this.plan = plan;
        this.turn = turn;
        var inset = plan.Regulation.WalkingLine.SecondInsetFor(plan.ClearWidth, plan.Job.ModelScale)!.Value;
        path = turn.Path with { Radius = turn.Site.InnerFace + inset };
    }

    /// <summary>The line in plan, from the turn's first riser to its last.</summary>
    public Path2 Path
    {
        get
        {
            var (r, a, b) = (path.Radius, path.FirstRiser, path.LastRiser);
            var quarter = Angle.Tan(Math.PI / 8);
            var line = turn.Site.Quarters == 1
                ? new Path2([new(new(r, -a)), new(new(r, 0), quarter), new(new(0, r)), new(new(-b, r))], false)
                : new Path2([new(new(r, -a)), new(new(r, 0), quarter), new(new(0, r), quarter), new(new(-r, 0)), new(new(-r, -b))], false);
            return turn.Frame.Hand == Stairs.Jobs.Hand.Left ? line.Moved(turn.Frame.World) : line.MapMirrored(turn.Frame.World).Reversed();
        }
    }

    /// <summary>Where a riser's face crosses it.</summary>
    public Point2 On(RiserLine riser)
    {
        var (near, far) = (turn.Frame.Local(TurnPlaces.Near(plan, turn, riser)), turn.Frame.Local(TurnPlaces.Far(plan, turn, riser)));
        return turn.Frame.World(path.Crossing(Line2.Between(near, far)) ?? far);
    }
}
