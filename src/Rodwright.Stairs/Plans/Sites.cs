using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Stairs.Plans;

/// <summary>Where the newels and strings of a plan stand.</summary>
internal static class Sites
{
    public static ImmutableArray<NewelSite> Newels(PlanShape shape)
    {
        var sites = new List<NewelSite>();
        End(Hand.Left, "", isTop: false);
        foreach (var turn in shape.Turns)
        {
            var name = shape.Turns.Length == 1 ? "turn newel" : $"newel of the {Ordinal(turn.Index)} turn";
            var lower = Ids.Turn(shape, turn.Index, last: false);
            if (turn.Between == 0)
            {
                Add(lower, name, NewelRole.Turn, turn.Frame.Centre, turn.Hand == Hand.Left);
                continue;
            }
            Add(lower, "lower " + name, NewelRole.Turn, turn.Frame.Centre, turn.Hand == Hand.Left);
            Add(Ids.Turn(shape, turn.Index, last: true), "upper " + name, NewelRole.Turn, turn.LastCentre, turn.Hand == Hand.Left);
        }
        End(Hand.Left, "", isTop: true);
        foreach (var turn in shape.Turns.Where(shape.HasOuterNewel))
        {
            var name = shape.Turns.Length == 1 ? "newel at the outer corner" : $"newel at the outer corner of the {Ordinal(turn.Index)} turn";
            var o = shape.OuterCentre(turn);
            Add(Ids.Outer(shape, turn.Index, last: false), turn.Quarters == 1 ? name : "lower " + name, NewelRole.Corner, turn.Frame.World(new(o, o)), turn.Hand != Hand.Left);
            if (turn.Quarters == 2)
                Add(Ids.Outer(shape, turn.Index, last: true), "upper " + name, NewelRole.Corner, turn.Frame.World(new(-o - turn.Between, o)), turn.Hand != Hand.Left);
        }
        End(Hand.Right, ", other side", isTop: false);
        End(Hand.Right, ", other side", isTop: true);
        return [.. sites];

        // An open side has a newel at each end of the stair, unless the stair begins or ends there with a turn, whose own newel serves.
        void End(Hand side, string words, bool isTop)
        {
            var leg = isTop ? shape.Legs[^1] : shape.Legs[0];
            var turn = isTop ? shape.Turns.LastOrDefault() : shape.Turns.FirstOrDefault();
            if (!shape.IsOpen(leg.Index, side) || (leg.Goings == 0 && turn?.Hand == side)) return;
            var at = leg.At(shape.CentreX(side), isTop ? leg.End : shape.Foot(side));
            var half = shape.IsHalf(isTop) ? "half newel at the " + (isTop ? "head" : "foot") : null;
            if (isTop) Add(Ids.Top(side), (half ?? "top newel") + words, NewelRole.Top, at, side == Hand.Left);
            else Add(Ids.Bottom(side), (half ?? "bottom newel") + words, NewelRole.Bottom, at, side == Hand.Left);
            if (half is not null) sites[^1] = sites[^1] with { Split = isTop ? leg.Along : -leg.Along };
        }

        void Add(string id, string name, NewelRole role, Point2 centre, bool inner) =>
            sites.Add(new(id, name, "N" + Number.Print(sites.Count + 1, 0), role, centre, inner));
    }

    public static ImmutableArray<StringSite> Strings(PlanShape shape, IReadOnlyList<Run> left, IReadOnlyList<Run> right) => [.. Side(shape, right), .. Side(shape, left)];

    /// <summary>The strings of one side from the bottom up; round a corner of the room s counts on.</summary>
    private static IEnumerable<StringSite> Side(PlanShape shape, IReadOnlyList<Run> runs)
    {
        var s = 0.0;
        foreach (var run in runs.Where(r => r.Carries))
        {
            // Station along the face where s = 0.
            var zero = run.Lower.Kind == RunEndKind.Corner ? run.Lower.At - s : run.Lower.StringAt;
            var site = Site(shape, run, zero);
            s = site.Upper.At;
            yield return site;
        }
    }

    private static StringSite Site(PlanShape shape, Run run, double zero)
    {
        var isWall = !run.IsOpen;
        var board = isWall ? shape.Job.Practice.WallString : shape.Job.Practice.NewelString;
        var half = shape.HalfNewel;
        var reach = (run.Lower.StringAt - zero + (run.Lower.Kind == RunEndKind.Newel ? half : 0), run.Upper.StringAt - zero - (run.Upper.Kind == RunEndKind.Newel ? half : 0));
        return new(run.Id, Name(shape, run, isWall), (isWall ? "W" : "F") + run.Id[(run.Id.LastIndexOf('-') + 1)..], isWall, run.Side == Hand.Left,
            new(run.Face.At(zero), run.Face.Along), board.Thickness, board.Width, End(run.Lower, false, zero), End(run.Upper, true, zero))
        {
            FirstRiser = run.FirstRiser, LastRiser = run.LastRiser, Reach = reach,
        };
    }

    private static StringEnd End(RunEnd end, bool isUpper, double zero)
    {
        var at = end.StringAt - zero;
        return end.Kind switch
        {
            RunEndKind.Newel => new(StringEndKind.Newel, at, 0, end.Newel),
            RunEndKind.Corner => new(isUpper ? StringEndKind.CornerThrough : StringEndKind.CornerLetIn, at, 0),
            _ => new(isUpper ? StringEndKind.Head : StringEndKind.Foot, at, end.Level),
        };
    }

    private static string Name(PlanShape shape, Run run, bool isWall)
    {
        var name = isWall ? "wall string" : "newel string";
        if (run.Leg is not { } leg) name += $" across the {(shape.Turns.Length == 1 ? "" : Ordinal(shape.Turns.First(t => t.FirstLine == run.FirstRiser).Index) + " ")}turn";
        else if (shape.Legs.Length == 2) name += leg.Index == 0 ? ", lower flight" : ", upper flight";
        else if (shape.Legs.Length > 2) name += $", {Ordinal(leg.Index)} flight";
        return shape.Job.InnerSide == shape.Job.OuterSide ? name + SideWords(shape, run.Side == Hand.Left) : name;
    }

    /// <summary>Which side, in words: of a stair that turns one way the inner or outer, otherwise the left or right as one climbs.</summary>
    private static string SideWords(PlanShape shape, bool left) => shape.Turns.Length > 0 && shape.Turns.All(t => t.Hand == Hand.Left)
        ? left ? ", inner side" : ", outer side"
        : left == shape.Job.IsRightHanded ? ", right side" : ", left side";

    private static string Ordinal(int index) => index switch
    {
        0 => "first", 1 => "second", 2 => "third", 3 => "fourth", 4 => "fifth", 5 => "sixth",
        _ => Number.Print(index + 1, 0) + "th",
    };
}
