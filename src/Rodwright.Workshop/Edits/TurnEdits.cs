using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Edits;

/// <summary>Changes of one turn: its hand, what fills it, how far round it goes, how it is set out. Null where nothing would change.</summary>
public static class TurnEdits
{
    /// <summary>The same turn to the other hand. A turn to the hand of the layout says nothing of its own.</summary>
    public static JobEdit? To(Job job, int turn, Hand hand)
    {
        if (Of(job, turn) is not { } was || job.Layout.HandOf(was) == hand) return null;
        return With(job, turn, was with { Hand = hand == job.Layout.Hand ? null : hand }, $"to the {(hand == Hand.Left ? "left" : "right")}");
    }

    /// <summary>
    /// Filled with tapered steps or a landing, a quarter or a half of a turn. The risers stay as many: the longest flight gives or takes the difference. Risers
    /// fixed by hand and a well are let go.
    /// </summary>
    public static JobEdit? Made(Job job, int turn, TurnKind kind, int quarters)
    {
        if (Of(job, turn) is not { } was || (was.Kind == kind && was.Quarters == quarters)) return null;
        var method = kind == TurnKind.Landing ? "" : was.Kind == TurnKind.Winders ? was.Method : TurnCatalogue.Winders[0].Id;
        var steps = kind == TurnKind.Landing ? 1 : was.Kind == TurnKind.Winders ? Math.Clamp(was.Tapered * quarters / was.Quarters, 2 * quarters, 6 * quarters) : 3 * quarters;
        var made = new Turn(kind, steps, null, null, method) { Hand = was.Hand, Quarters = quarters };
        if (kind == TurnKind.Winders) made = made with { SharedBefore = was.SharedBefore, SharedAfter = was.SharedAfter };
        return ChangesOfSteps.Turn(job, turn, made) is { } change ? JobEdit.Of($"{SequenceWords.Of(was, job.Units)} to {SequenceWords.Of(made, job.Units)}", change) : null;
    }

    /// <summary>Set out another way. A way that shares no taper lets the shared steps go; one that does begins with as many as the flights have, up to two either side.</summary>
    public static JobEdit? Method(Job job, int turn, string method)
    {
        if (Of(job, turn) is not { Kind: TurnKind.Winders } was || was.Method == method || TurnCatalogue.Find(method) is not { } found) return null;
        var course = Course.Of(job.Layout);
        var shares = found.Shares;
        var (before, after) = shares
            ? was.SharedBefore + was.SharedAfter > 0 ? (was.SharedBefore, was.SharedAfter) : (Math.Min(2, Free(course, turn, after: false)), Math.Min(2, Free(course, turn, after: true)))
            : (0, 0);
        return With(job, turn, was with { Method = method, SharedBefore = before, SharedAfter = after }, found.Title);
    }

    /// <summary>So many straight steps before or after the turn share its taper.</summary>
    public static JobEdit? Shared(Job job, int turn, bool after, int steps)
    {
        if (Of(job, turn) is not { Kind: TurnKind.Winders } was || TurnCatalogue.Find(was.Method) is not { Shares: true } || steps < 0 || steps > 8) return null;
        if (steps == (after ? was.SharedAfter : was.SharedBefore) || steps > Free(Course.Of(job.Layout), turn, after)) return null;
        return With(job, turn, after ? was with { SharedAfter = steps } : was with { SharedBefore = steps },
            $"{Number.Print(steps, 0)} {(steps == 1 ? "step" : "steps")} {(after ? "after" : "before")} it share the taper");
    }

    /// <summary>
    /// A number of the turn as somebody typed it: firstRiser, lastRiser or well. Empty lets it be found. What cannot be read is for the reader of the job to refuse.
    /// </summary>
    public static JobEdit Typed(Job job, int turn, string field, string typed)
    {
        var course = Course.Of(job.Layout);
        var path = $"{FieldChange.SequencePath}[{Number.Print(2 * turn + 1, 0)}].{field}";
        var set = JobEdits.Set(job, path, typed);
        // Items are found by their place in the course.
        return course.Items.SequenceEqual(job.Layout.Sequence) ? set : new([ChangesOfSteps.Sequence(course), .. set.Changes], set.Words);
    }

    /// <summary>A side of a flight: walled, open, or null for what the layout implies.</summary>
    public static JobEdit? Side(Job job, int flight, Hand side, SideKind? kind)
    {
        var course = Course.Of(job.Layout);
        if (flight < 0 || flight >= course.Sides.Length) return null;
        var was = course.Sides[flight];
        var now = side == Hand.Left ? was with { Left = kind } : was with { Right = kind };
        if (was == now) return null;
        var words = kind switch { null => "as the stair's", SideKind.Wall => "against a wall", _ => "open" };
        return JobEdit.Of($"{(side == Hand.Left ? "left" : "right")} side of the {(course.Goings.Length == 1 ? "flight" : $"{Ordinal(flight)} flight")} {words}",
            ChangesOfSteps.Sequence(course with { Sides = course.Sides.SetItem(flight, now) }));
    }

    /// <summary>How many steps of the flight beside a turn may share its taper: those that no other turn shares.</summary>
    public static int Free(Course course, int turn, bool after)
    {
        var flight = after ? turn + 1 : turn;
        var taken = after ? turn + 1 < course.Turns.Length ? course.Turns[turn + 1].SharedBefore : 0 : turn > 0 ? course.Turns[turn - 1].SharedAfter : 0;
        return Math.Max(0, course.Goings[flight] - taken);
    }

    /// <summary>"first", "second", from 0 on.</summary>
    internal static string Ordinal(int index) => TurnWords.Ordinal(index);

    private static Turn? Of(Job job, int turn) => Course.Of(job.Layout).Turns.ElementAtOrDefault(turn);

    private static JobEdit With(Job job, int turn, Turn now, string words)
    {
        var course = Course.Of(job.Layout);
        return JobEdit.Of($"{LayoutEdits.The(course, turn)} {words}", ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(turn, now) }));
    }
}
