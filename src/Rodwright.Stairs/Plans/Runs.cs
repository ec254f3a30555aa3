using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Finds the runs of each side of a stair, in climbing order.</summary>
internal static class Runs
{
    public static (ImmutableArray<Run> Left, ImmutableArray<Run> Right) Of(PlanShape shape)
    {
        var (left, right) = (Side(shape, Hand.Left), Side(shape, Hand.Right));
        // Strings are numbered by kind: the right side's first, which is the outer side's.
        var counts = new Dictionary<bool, int> { [true] = 0, [false] = 0 };
        var (namedRight, namedLeft) = (Named(right), Named(left));
        return (namedLeft, namedRight);

        ImmutableArray<Run> Named(List<Run> runs) => [.. runs.Select(run =>
        {
            if (!run.Carries) return run;
            var open = run.IsOpen;
            return run with { Id = $"{(open ? "newel-string" : "wall-string")}-{++counts[open]}" };
        })];
    }

    private static List<Run> Side(PlanShape shape, Hand side)
    {
        var runs = new List<Run>();
        foreach (var leg in shape.Legs)
        {
            if (Along(shape, leg, side) is { } run) runs.Add(run);
            if (leg.Index < shape.Turns.Length && shape.Turns[leg.Index] is { Quarters: 2 } turn && turn.Hand != side) runs.Add(Across(shape, turn, side));
        }
        return runs;
    }

    private static Run? Along(PlanShape shape, Leg leg, Hand side)
    {
        var before = leg.Index > 0 ? shape.Turns[leg.Index - 1] : null;
        var after = leg.Index < shape.Turns.Length ? shape.Turns[leg.Index] : null;
        // A stair that begins or ends with a turn has nothing on the turn's own side there but the newel.
        if (leg.Goings == 0 && ((before is null && after?.Hand == side) || (after is null && before?.Hand == side))) return null;
        var face = new Line2(leg.At(shape.FaceX(side), 0), leg.Along);
        // Without steps of its own a flight has a string for the tapered steps on the outside of a turn, and between two newels for what stands past them.
        var carries = leg.Goings > 0 || Winds(before) || Winds(after) || (before?.Hand == side && after?.Hand == side);
        return new(side, face, Lower(), Upper(), carries, leg, before is { IsLanding: false } ? before.FirstLine : leg.FirstRiser + (before is null && shape.IsRounded(side) ? 1 : 0),
            after is { IsLanding: false } ? after.LastLine : leg.LastRiser)
        {
            IsOpen = Open(),
        };

        bool Winds(TurnShape? turn) => turn is { IsLanding: false } && turn.Hand != side;

        RunEnd Lower()
        {
            if (before is null) return Open() ? Newel(shape.Foot(side), Ids.Bottom(side)) : new(RunEndKind.Floor, leg.Start, "", leg.Start, 0);
            if (before.Hand == side) return Newel(0, Ids.Turn(shape, before.Index, last: true));
            if (shape.HasOuterNewel(before)) return Newel(-shape.OuterCentre(before), Ids.Outer(shape, before.Index, last: true));
            var corner = -before.Site.OuterFace;
            return before.IsLanding ? new(RunEndKind.Landing, corner, "", leg.Start, before.FirstLine * shape.Job.Rise) : new(RunEndKind.Corner, corner, "", corner, 0);
        }

        RunEnd Upper()
        {
            if (after is null) return Open() ? Newel(leg.End, Ids.Top(side)) : new(RunEndKind.Floor, leg.End, "", leg.End, leg.LastRiser * shape.Job.Rise);
            var centre = leg.End + after.Found.FirstRiser;
            if (after.Hand == side) return Newel(centre, Ids.Turn(shape, after.Index, last: false));
            if (shape.HasOuterNewel(after)) return Newel(centre + shape.OuterCentre(after), Ids.Outer(shape, after.Index, last: false));
            var corner = centre + after.Site.OuterFace;
            return after.IsLanding ? new(RunEndKind.Landing, corner, "", leg.End, leg.LastRiser * shape.Job.Rise) : new(RunEndKind.Corner, corner, "", corner, 0);
        }

        bool Open() => shape.IsOpen(leg.Index, side);

        RunEnd Newel(double at, string id) => new(RunEndKind.Newel, at, id, at, 0);
    }

    /// <summary>Along the wall across a half turn, between its two corners.</summary>
    private static Run Across(PlanShape shape, TurnShape turn, Hand side)
    {
        var (o, w) = (turn.Site.OuterFace, turn.Between);
        var (from, to) = (turn.Frame.World(new(o, o)), turn.Frame.World(new(-o - w, o)));
        var kind = turn.IsLanding ? RunEndKind.Landing : RunEndKind.Corner;
        var length = from.DistanceTo(to);
        var (lower, upper) = (new RunEnd(kind, 0, "", 0, 0), new RunEnd(kind, length, "", length, 0));
        if (shape.HasOuterNewel(turn))
        {
            var beyond = shape.OuterCentre(turn) - o;
            lower = new(RunEndKind.Newel, -beyond, Ids.Outer(shape, turn.Index, last: false), -beyond, 0);
            upper = new(RunEndKind.Newel, length + beyond, Ids.Outer(shape, turn.Index, last: true), length + beyond, 0);
        }
        return new(side, Line2.Between(from, to), lower, upper, !turn.IsLanding, null, turn.FirstLine, turn.LastLine) { IsOpen = shape.HasOuterNewel(turn) };
    }
}
