using Rodwright.Geometry;
using Rodwright.Rod.Views;
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

    /// <summary>Whether there is a wall on the outer side of the first flight, to measure everything from.</summary>
    public bool HasOuterWall => view.WallParts.Any(w => w.Id == Things.ThingId.WallOuter);

    /// <summary>What the string on the inner side of the first flight is called.</summary>
    public string InnerString => String(Plan.Flights[0], near: Beside(Plan.Flights[0]));

    /// <summary>What the string on its outer side is called.</summary>
    public string OuterString => String(Plan.Flights[0], near: !Beside(Plan.Flights[0]));

    /// <summary>What the string of a flight on the side of its turn's newel is called, or that on the other side.</summary>
    public string String(FlightPlan flight, bool near)
    {
        var inner = near == Beside(flight);
        var wall = TurnPlaces.StringOf(Plan, flight, inner)?.IsWall ?? !near;
        return near ? wall ? "inner wall string" : "newel string" : wall ? "wall string" : "outer newel string";
    }

    /// <summary>What the string on a turn's far side is called.</summary>
    public string FarString(TurnPlan turn) => Plan.Strings.Any(s => s.IsWall && s.Inner != Plan.IsInner(turn) && s.LastRiser > turn.FirstLine && s.FirstRiser < turn.LastLine) ? "wall string" : "outer newel string";

    /// <summary>What the string on the side of a turn's newel is called.</summary>
    public string NearString(TurnPlan turn) => String(Plan.Flights[turn.Index], near: true);

    private StairPlan Plan => view.Stair.Plan;

    /// <summary>Whether the side of a flight's turn is the plan's inner side.</summary>
    private bool Beside(FlightPlan flight) => TurnPlaces.TurnBeside(Plan, flight) is not { } turn || Plan.IsInner(turn);
}
