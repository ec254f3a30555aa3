using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Views;

/// <summary>Where a turn's corners lie, and which side of the stair is its far one: the side away from its newel, where the ends of its steps are wide.</summary>
public static class TurnPlaces
{
    /// <summary>The corners on the far side of a turn, in climbing order: one of a quarter turn, two of a half.</summary>
    public static ImmutableArray<Point2> Corners(TurnPlan turn)
    {
        var (o, w) = (turn.Site.OuterFace, turn.Site.Between);
        var first = turn.Frame.World(new(o, o));
        return turn.Site.Quarters == 1 ? [first] : [first, turn.Frame.World(new(-o - w, o))];
    }

    /// <summary>Every corner of a stair with its turn and its id, from the bottom up.</summary>
    public static ImmutableArray<(TurnPlan Turn, Point2 At, string Id)> Corners(StairPlan plan) =>
        [.. plan.Turns.SelectMany(t => Corners(t).Select(c => (t, c))).Select((c, i) => (c.t, c.c, ThingId.CornerOf(i)))];

    /// <summary>Id of the corner that a string's face ends at.</summary>
    /// <param name="plan">The stair in plan.</param>
    /// <param name="site">The string.</param>
    /// <param name="station">Where along its face.</param>
    public static string CornerAt(StairPlan plan, StringSite site, double station)
    {
        var at = site.Face.At(station);
        return Corners(plan).OrderBy(c => c.At.DistanceTo(at)).Select(c => c.Id).FirstOrDefault(ThingId.Corner);
    }

    /// <summary>"corner of the room", or of several "second corner of the room": the one nearest a point.</summary>
    public static string CornerName(StairPlan plan, Point2 near)
    {
        var corners = Corners(plan);
        if (corners.Length < 2) return "corner of the room";
        return $"{TurnWords.Ordinal(corners.IndexOf(corners.MinBy(c => c.At.DistanceTo(near))))} corner of the room";
    }

    /// <summary>The far end of a riser of a turn: on the side away from its newel.</summary>
    public static Point2 Far(StairPlan plan, TurnPlan turn, RiserLine riser) => plan.IsInner(turn) ? riser.Outer : riser.Inner;

    /// <summary>The near end of a riser of a turn: at its newel, or on the strings beside it.</summary>
    public static Point2 Near(StairPlan plan, TurnPlan turn, RiserLine riser) => plan.IsInner(turn) ? riser.Inner : riser.Outer;

    /// <summary>The wide end of a riser; the outer end of one that no turn slants.</summary>
    public static Point2 Wide(StairPlan plan, RiserLine riser) => OfRiser(plan, riser.Number) is { } turn ? Far(plan, turn, riser) : riser.Outer;

    /// <summary>The turn a riser belongs to: as the front of one of its steps, or as its last riser; null in a flight.</summary>
    public static TurnPlan? OfRiser(StairPlan plan, int riser) => plan.TurnOf(riser) ?? (riser > 1 ? plan.TurnOf(riser - 1) : null);

    /// <summary>Number of the last riser below a turn that stands square across its flight: with steps that share the taper, below them.</summary>
    public static int FirstSquare(TurnPlan turn) => turn.Steps.IsEmpty ? turn.FirstLine : turn.Steps[0].Number;

    /// <summary>Number of the first riser above a turn that stands square across its flight.</summary>
    public static int LastSquare(TurnPlan turn) => turn.Steps.IsEmpty ? turn.LastLine : turn.Steps[^1].Number + 1;

    /// <summary>Centre of a turn's newel: its only one, or of two the lower or upper.</summary>
    public static Point2 Newel(TurnPlan turn, bool last) => last && turn.Site.Between > 0 ? turn.Frame.World(new(-turn.Site.Between, 0)) : turn.Centre;

    /// <summary>The string along a flight on one side; null where the flight has none there, beside a landing.</summary>
    public static StringSite? StringOf(StairPlan plan, FlightPlan flight, bool inner) => plan.Strings.FirstOrDefault(s =>
        s.Inner == inner && s.Face.Along.Dot(flight.Along) > 1 - Tolerance.Joint && s.FirstRiser <= flight.FirstRiser && s.LastRiser >= flight.LastRiser);

    /// <summary>The turn a flight leads to or, without one, comes from; null for a straight stair.</summary>
    public static TurnPlan? TurnBeside(StairPlan plan, FlightPlan flight) =>
        flight.Index < plan.Turns.Length ? plan.Turns[flight.Index] : plan.Turns.IsEmpty ? null : plan.Turns[^1];

    /// <summary>The turn at whose open outer corner a newel stands.</summary>
    public static TurnPlan OfCorner(StairPlan plan, NewelSite newel) => Corners(plan).MinBy(c => c.At.DistanceTo(newel.Centre)).Turn;

    /// <summary>Length of the walking line from the turn's first riser to its last, mm.</summary>
    public static double WalkingLength(TurnPlan turn) => turn.Path.Length + turn.Site.Between;

    /// <summary>Unit direction away from the stair, square to the incoming flight, or to the outgoing one, on the turn's far side.</summary>
    public static Vector2 Outward(TurnPlan turn, bool last) => !last ? turn.Frame.Across : turn.Site.Quarters == 1 ? turn.Frame.Along : -1 * turn.Frame.Across;
}
