using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Stages;

/// <summary>Directions and datums of a plan on the rod, the first flight climbing up the page.</summary>
internal sealed class PlanWords(PlanView view)
{
    /// <summary>From the wall string towards the inner side, in the first flight.</summary>
    public string In => view.OuterSide > 0 ? "to the left" : "to the right";

    /// <summary>From the inner side towards the wall, in the first flight.</summary>
    public string Out => view.OuterSide > 0 ? "to the right" : "to the left";

    /// <summary>Up the stair in a flight's direction.</summary>
    public string Climbing(Vector2 along) => along.Y > 0.5 ? "up the page" : along.Y < -0.5 ? "down the page" : along.X > 0 ? "to the right" : "to the left";

    /// <summary>Whether the outer side is walled.</summary>
    public bool HasOuterWall => view.Stair.Job.OuterSide == SideKind.Wall;

    /// <summary>What the inner side's string is called.</summary>
    public string InnerString => view.Stair.Job.InnerSide == SideKind.Open ? "newel string" : "inner wall string";

    /// <summary>What the outer side's string is called.</summary>
    public string OuterString => HasOuterWall ? "wall string" : "outer newel string";

    /// <summary>What the string on a turn's far side is called.</summary>
    public string FarString(TurnPlan turn) => view.Stair.Plan.IsInner(turn) ? OuterString : InnerString;

    /// <summary>What the string on the side of a turn's newel is called.</summary>
    public string NearString(TurnPlan turn) => view.Stair.Plan.IsInner(turn) ? InnerString : OuterString;
}
