using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Turns;

namespace Rodwright.Stairs.Plans;

/// <summary>Lays every riser line of a shape: square ones in the flights, those of the turns by their method.</summary>
internal static class RiserLines
{
    public static ImmutableArray<RiserLine> Of(PlanShape shape)
    {
        var lines = new RiserLine?[shape.Risers];
        foreach (var leg in shape.Legs)
        {
            for (var k = leg.FirstRiser; k <= leg.LastRiser; k++) lines[k - 1] = Square(shape, leg, k);
        }
        foreach (var turn in shape.Turns) Lay(shape, turn, lines);
        return [.. lines.Select(l => l!)];
    }

    private static RiserLine Square(PlanShape shape, Leg leg, int number)
    {
        var y = leg.Start + (number - leg.FirstRiser) * shape.Job.Going;
        // On an open side the first and last risers end on their newels' faces, all others on the string's.
        var onNewel = (leg.Index == 0 && number == 1) || (leg.Index == shape.Legs.Length - 1 && number == shape.Risers && !shape.IsHalf(isTop: true));
        return new(number, leg.At(X(Hand.Left), y), leg.At(shape.WalkingX(leg.Index), y), leg.At(X(Hand.Right), y), leg.Along);

        double X(Hand side) => (onNewel || (leg.Index == 0 && number == 2 && shape.IsRounded(side))) && shape.IsOpen(leg.Index, side) ? shape.NewelX(side, -1) : shape.FaceX(side);
    }

    private static void Lay(PlanShape shape, TurnShape turn, RiserLine?[] lines)
    {
        var setting = TurnSolver.Setting(turn.Turn, turn.Found.FirstRiser, turn.Found.LastRiser, shape.Job.Practice, shape.Job.Going,
            Planner.Wanted(shape.Job, shape.Regulation).Narrow);
        var laid = turn.Method.Lines(turn.Site, setting);
        for (var j = 0; j < laid.Count; j++)
        {
            var number = turn.FirstLine - setting.Before + j;
            var (inner, walking, outer) = (turn.Frame.World(laid[j].Inner), turn.Frame.World(laid[j].Walking), turn.Frame.World(laid[j].Outer));
            var (left, right) = turn.Hand == Hand.Left ? (inner, outer) : (outer, inner);
            var line = new RiserLine(number, left, walking, right, (right - left).Unit.Left);
            lines[number - 1] = j > 0 && j < laid.Count - 1 ? line : Both(turn, lines[number - 1]!, line);
        }
    }

    /// <summary>
    /// A square riser that two parts of the stair speak of ends on whatever stands further into the stair: a newel's face rather than the string's. On the
    /// turn's own side, where no other turn's newel is, that is the turn's newel even if it stands behind the faces of its strings, which is a breach of its own.
    /// </summary>
    private static RiserLine Both(TurnShape turn, RiserLine before, RiserLine laid)
    {
        var across = (before.Outer - before.Inner).Unit;
        var isBehind = turn.Site.HalfNewel < turn.Site.InnerFace;
        var inner = (isBehind && turn.Hand == Hand.Left) || (laid.Inner - before.Inner).Dot(across) > 0 ? laid.Inner : before.Inner;
        var outer = (isBehind && turn.Hand == Hand.Right) || (laid.Outer - before.Outer).Dot(across) < 0 ? laid.Outer : before.Outer;
        return new(before.Number, inner, laid.Walking, outer, before.Up);
    }
}
