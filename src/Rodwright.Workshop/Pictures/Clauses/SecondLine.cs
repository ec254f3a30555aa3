using Rodwright.Geometry;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Pictures.Clauses;

/// <summary>The outer measuring line of a wide stair's turn, where its regulation has one.</summary>
internal sealed class SecondLine
{
    private readonly TurnPlan turn;
    private readonly bool mirrored;
    private readonly WalkingPath path;

    public SecondLine(StairPlan plan)
    {
        turn = plan.Turn!;
        mirrored = plan.IsMirrored;
        var inset = plan.Regulation.WalkingLine.SecondInsetFor(plan.ClearWidth, plan.Job.ModelScale)!.Value;
        path = new(plan.InnerThickness / 2 + inset, turn.FirstRiser, turn.LastRiser);
    }

    /// <summary>The line in plan, from the turn's first riser to its last.</summary>
    public Path2 Path
    {
        get
        {
            var (r, a, b) = (path.Radius, path.FirstRiser, path.LastRiser);
            var line = new Path2([new(new(r, -a)), new(new(r, 0), Angle.Tan(Math.PI / 8)), new(new(0, r)), new(new(-b, r))], false);
            return mirrored ? line.MapMirrored(FromTurn).Reversed() : line.Moved(FromTurn);
        }
    }

    /// <summary>Where a riser's face crosses it.</summary>
    public Point2 On(RiserLine riser) =>
        FromTurn(path.Crossing(Line2.Between(ToTurn(riser.Inner), ToTurn(riser.Outer))) ?? ToTurn(riser.Outer));

    /// <summary>Into the turn's own frame: left-handed, the newel's centre its origin.</summary>
    private Point2 ToTurn(Point2 p) => mirrored ? new(turn.Centre.X - p.X, p.Y - turn.Centre.Y) : new(p.X - turn.Centre.X, p.Y - turn.Centre.Y);

    private Point2 FromTurn(Point2 p) => new(turn.Centre.X + (mirrored ? -p.X : p.X), turn.Centre.Y + p.Y);
}
