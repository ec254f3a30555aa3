using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Turns;

namespace Rodwright.Workshop.Edits;

/// <summary>
/// Changes of the steps as somebody thinks of them. Null where there is nothing to change: no turn to move, no step to take away. What comes of an edit is for
/// the reader to judge.
/// </summary>
public static class LayoutEdits
{
    /// <summary>The turn so many steps up the stair (negative: down). The steps stay as many as they are.</summary>
    public static JobEdit? MoveTurn(Job job, int steps)
    {
        var (before, turn, after) = Parts(job);
        if (turn is null || steps == 0 || before + steps < 0 || after - steps < 0) return null;
        var count = Math.Abs(steps);
        return Edit($"the turn {Count(count)} {(steps > 0 ? "up" : "down")}", before + steps, turn, after - steps);
    }

    /// <summary>One riser more, in the flight before the turn (or the only one), or after it.</summary>
    public static JobEdit? AddStep(Job job, bool beforeTurn) => Lengthen(job, beforeTurn, 1);

    /// <summary>One riser fewer, out of the flight before the turn (or the only one), or after it.</summary>
    public static JobEdit? RemoveStep(Job job, bool beforeTurn) => Lengthen(job, beforeTurn, -1);

    /// <summary>So many risers in all: steps are added to the longer flight or taken from it, and when that is used up from the other.</summary>
    public static JobEdit? Risers(Job job, int risers) => ChangesOfSteps.Risers(job, risers) is { } change
        ? JobEdit.Of($"{Number.Print(job.Layout.Risers, 0)} risers to {Number.Print(risers, 0)}", change)
        : null;

    /// <summary>So many tapered steps in the turn, in place of what it is now. The risers stay as many as they are: the longer flight gives or takes the difference.</summary>
    public static JobEdit? TaperedSteps(Job job, int tapered)
    {
        if (job.Layout.Turn is not { } turn || (turn.Kind == TurnKind.Winders && turn.Tapered == tapered) || tapered < 1) return null;
        var method = turn.Kind == TurnKind.Winders ? turn.Method : TurnCatalogue.Winders[0].Id;
        return ChangesOfSteps.Turn(job, 0, turn with { Kind = TurnKind.Winders, Tapered = tapered, Method = method }) is { } change
            ? JobEdit.Of($"{SequenceWords.Of(turn)} to {Number.Print(tapered, 0)} tapered", change)
            : null;
    }

    /// <summary>A quarter landing in place of the tapered steps, its risers on the newel's centre. The risers stay as many as they are.</summary>
    public static JobEdit? Landing(Job job) => job.Layout.Turn is { Kind: TurnKind.Winders } turn && ChangesOfSteps.Landing(job, 0) is { } change
        ? JobEdit.Of($"{SequenceWords.Of(turn)} to a quarter landing", change)
        : null;

    /// <summary>A straight flight of as many risers. What was the inner side stays as it is.</summary>
    public static JobEdit? RemoveTurn(Job job) => job.Layout.Turn is null ? null
        : JobEdit.Of("no turn", FieldChange.ToSequence([new Flight(job.Layout.Risers - 1)]));

    /// <summary>
    /// A turn of three tapered steps (fewer where the flight is shorter) after so many goings of a straight flight, its risers as many as before. The outer side of a turn is walled.
    /// </summary>
    public static JobEdit? AddTurn(Job job, int before)
    {
        var goings = job.Layout.Risers - 1;
        var tapered = Math.Min(3, goings - 1);
        if (job.Layout.Turn is not null || tapered < 2 || before < 0 || before + tapered > goings) return null;
        var turn = new Turn(TurnKind.Winders, tapered, null, null, TurnCatalogue.Winders[0].Id);
        var sequence = FieldChange.ToSequence([new Flight(before), turn, new Flight(goings - before - tapered)]);
        var wall = FieldChange.To(job.Layout.Hand == Hand.Left ? "sides.right" : "sides.left", "wall");
        return new(job.OuterSide == SideKind.Wall ? [sequence] : [sequence, wall], $"a turn of {Number.Print(tapered, 0)} tapered steps after {Count(before)}");
    }

    /// <summary>The mirror image: hand and sides.</summary>
    public static JobEdit Mirror(Job job) => JobEdit.Of(
        job.Layout.Hand == Hand.Left ? "left hand to right" : "right hand to left",
        FieldChange.To("layout.hand", job.Layout.Hand == Hand.Left ? "right" : "left"),
        FieldChange.To("sides.left", Word(job.Sides.Right)),
        FieldChange.To("sides.right", Word(job.Sides.Left)));

    private static string Word(SideKind side) => side == SideKind.Wall ? "wall" : "open";

    private static JobEdit? Lengthen(Job job, bool beforeTurn, int by)
    {
        var (before, turn, after) = Parts(job);
        var isLower = beforeTurn || turn is null;
        if ((isLower ? before : after) + by < (turn is null ? 1 : 0)) return null;
        var place = turn is null ? "" : isLower ? " before the turn" : " after the turn";
        return Edit(by > 0 ? $"one step more{place}" : $"one step fewer{place}", isLower ? before + by : before, turn, isLower ? after : after + by);
    }

    private static (int Before, Turn? Turn, int After) Parts(Job job) => (job.Layout.GoingsBefore, job.Layout.Turn, job.Layout.GoingsAfter);

    private static JobEdit Edit(string words, int before, Turn? turn, int after) => JobEdit.Of(words, ChangesOfSteps.Sequence(before, turn, after));

    private static string Count(int steps) => steps == 1 ? "1 step" : $"{Number.Print(steps, 0)} steps";
}
