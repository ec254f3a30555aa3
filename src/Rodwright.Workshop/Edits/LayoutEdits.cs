using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Edits;

/// <summary>
/// Changes of the steps as somebody thinks of them: flights and turns counted from the bottom, 0 the lowest, as <see cref="Course"/> reads them. Null where there is
/// nothing to change: no turn to move, no step to take away. What comes of an edit is for the reader to judge. What a turn is made of, <see cref="TurnEdits"/> changes.
/// </summary>
public static class LayoutEdits
{
    /// <summary>A turn so many steps up the stair (negative: down). The steps stay as many as they are.</summary>
    public static JobEdit? MoveTurn(Job job, int steps, int turn = 0)
    {
        var course = Course.Of(job.Layout);
        if (turn >= course.Turns.Length || steps == 0 || course.Goings[turn] + steps < 0 || course.Goings[turn + 1] - steps < 0) return null;
        var goings = course.Goings.SetItem(turn, course.Goings[turn] + steps).SetItem(turn + 1, course.Goings[turn + 1] - steps);
        return JobEdit.Of($"{The(course, turn)} {Count(Math.Abs(steps))} {(steps > 0 ? "up" : "down")}", ChangesOfSteps.Sequence(course with { Goings = goings }));
    }

    /// <summary>A flight longer by so many steps (negative: shorter).</summary>
    public static JobEdit? Lengthen(Job job, int flight, int steps)
    {
        var course = Course.Of(job.Layout);
        if (flight < 0 || flight >= course.Goings.Length || steps == 0 || course.Goings[flight] + steps < (course.Turns.IsEmpty ? 1 : 0)) return null;
        var place = course.Turns.Length switch
        {
            0 => "",
            1 => flight == 0 ? " before the turn" : " after the turn",
            _ => $" in the {TurnEdits.Ordinal(flight)} flight",
        };
        var more = Math.Abs(steps) == 1 ? "one step" : Count(Math.Abs(steps));
        return JobEdit.Of($"{more} {(steps > 0 ? "more" : "fewer")}{place}", ChangesOfSteps.Sequence(course with { Goings = course.Goings.SetItem(flight, course.Goings[flight] + steps) }));
    }

    /// <summary>One riser more, in the lowest flight (or the only one), or in the highest.</summary>
    public static JobEdit? AddStep(Job job, bool beforeTurn) => Lengthen(job, beforeTurn ? 0 : Course.Of(job.Layout).Goings.Length - 1, 1);

    /// <summary>One riser fewer, out of the lowest flight (or the only one), or the highest.</summary>
    public static JobEdit? RemoveStep(Job job, bool beforeTurn) => Lengthen(job, beforeTurn ? 0 : Course.Of(job.Layout).Goings.Length - 1, -1);

    /// <summary>So many risers in all: steps are added to the longest flight or taken from it, and when that is used up from the next.</summary>
    public static JobEdit? Risers(Job job, int risers) => ChangesOfSteps.Risers(job, risers) is { } change
        ? JobEdit.Of($"{Number.Print(job.Layout.Risers, 0)} risers to {Number.Print(risers, 0)}", change)
        : null;

    /// <summary>So many tapered steps in a turn, in place of what it is now. The risers stay as many as they are: the longest flight gives or takes the difference.</summary>
    public static JobEdit? TaperedSteps(Job job, int tapered, int turn = 0)
    {
        if (Course.Of(job.Layout).Turns.ElementAtOrDefault(turn) is not { } was || (was.Kind == TurnKind.Winders && was.Tapered == tapered) || tapered < (was.Quarters == 1 ? 1 : 4)) return null;
        var method = was.Kind == TurnKind.Winders ? was.Method : TurnCatalogue.Winders[0].Id;
        return ChangesOfSteps.Turn(job, turn, was with { Kind = TurnKind.Winders, Tapered = tapered, Method = method }) is { } change
            ? JobEdit.Of($"{SequenceWords.Of(was, job.Units)} to {Number.Print(tapered, 0)} tapered", change)
            : null;
    }

    /// <summary>A landing in place of the tapered steps, its risers on the newel's centre. The risers stay as many as they are.</summary>
    public static JobEdit? Landing(Job job, int turn = 0) => Course.Of(job.Layout).Turns.ElementAtOrDefault(turn) is { Kind: TurnKind.Winders } was && ChangesOfSteps.Landing(job, turn) is { } change
        ? JobEdit.Of($"{SequenceWords.Of(was, job.Units)} to a {(was.Quarters == 1 ? "quarter" : "half")} landing", change)
        : null;

    /// <summary>A turn taken out: its steps and the flights on both sides of it become one flight. The risers stay as many, and the sides as they are.</summary>
    public static JobEdit? RemoveTurn(Job job, int turn = 0)
    {
        var course = Course.Of(job.Layout);
        if (turn < 0 || turn >= course.Turns.Length) return null;
        var goings = course.Goings.SetItem(turn, course.Goings[turn] + course.Turns[turn].Steps + course.Goings[turn + 1]).RemoveAt(turn + 1);
        var words = course.Turns.Length == 1 ? "no turn" : $"without {The(course, turn)}";
        // A straight flight is written without what its sides were beside the turn.
        var sides = course.Turns.Length == 1 ? [new(0)] : course.Sides.RemoveAt(turn + 1);
        return JobEdit.Of(words, ChangesOfSteps.Sequence(new Course(goings, course.Turns.RemoveAt(turn)) { Sides = sides }));
    }

    /// <summary>
    /// A turn of three tapered steps (fewer where the flight is shorter) after so many goings of a flight, the risers as many as before. The outer side of a stair's
    /// first turn is walled. Of a stair that turns already, say which flight.
    /// </summary>
    public static JobEdit? AddTurn(Job job, int before, int? flight = null)
    {
        var course = Course.Of(job.Layout);
        if ((flight is null && !course.Turns.IsEmpty) || flight >= course.Goings.Length || flight < 0) return null;
        var at = flight ?? 0;
        var goings = course.Goings[at];
        var tapered = Math.Min(3, goings - 1);
        if (tapered < 2 || before < 0 || before + tapered > goings) return null;
        var turn = new Turn(TurnKind.Winders, tapered, null, null, TurnCatalogue.Winders[0].Id);
        var turned = new Course(course.Goings.SetItem(at, before).Insert(at + 1, goings - before - tapered), course.Turns.Insert(at, turn)) { Sides = course.Sides.Insert(at + 1, new(0)) };
        var sequence = ChangesOfSteps.Sequence(turned);
        var where = course.Turns.IsEmpty ? "" : $" in the {TurnEdits.Ordinal(at)} flight";
        var words = $"a turn of {Number.Print(tapered, 0)} tapered steps after {Count(before)}{where}";
        return job.OuterSide == SideKind.Wall || !course.Turns.IsEmpty
            ? JobEdit.Of(words, sequence)
            : JobEdit.Of(words, sequence, FieldChange.To(job.Layout.Hand == Hand.Left ? "sides.right" : "sides.left", "wall"));
    }

    /// <summary>The mirror image: hand and sides, and what turns and flights say of their own hands and sides.</summary>
    public static JobEdit Mirror(Job job)
    {
        List<FieldChange> changes =
        [
            FieldChange.To("layout.hand", job.Layout.Hand == Hand.Left ? "right" : "left"),
            FieldChange.To("sides.left", Word(job.Sides.Right)),
            FieldChange.To("sides.right", Word(job.Sides.Left)),
        ];
        if (job.Layout.Sequence.Any(i => i is Turn { Hand: not null } or Flight { Left: not null } or Flight { Right: not null }))
            changes.Add(FieldChange.ToSequence(job.Layout.Sequence.Select(Mirrored)));
        return new([.. changes], job.Layout.Hand == Hand.Left ? "left hand to right" : "right hand to left");
    }

    private static LayoutItem Mirrored(LayoutItem item) => item switch
    {
        Turn { Hand: { } hand } turn => turn with { Hand = hand == Hand.Left ? Hand.Right : Hand.Left },
        Flight flight => flight with { Left = flight.Right, Right = flight.Left },
        _ => item,
    };

    private static string Word(SideKind side) => side == SideKind.Wall ? "wall" : "open";

    /// <summary>"the turn", or of several "the second turn".</summary>
    internal static string The(Course course, int turn) => course.Turns.Length == 1 ? "the turn" : $"the {TurnEdits.Ordinal(turn)} turn";

    private static string Count(int steps) => steps == 1 ? "1 step" : $"{Number.Print(steps, 0)} steps";
}
