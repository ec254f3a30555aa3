using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Edits;

/// <summary>
/// What can be dragged on the plan, and what a drag does: each turn along the stair by whole goings, an end of the stair by whole millimetres (or sixteenths) of going, the
/// turns' risers by whole millimetres (or sixteenths) of offset. A drag past what is possible stops there.
/// </summary>
public static class DragEdits
{
    /// <summary>Everything that can be dragged, each thing once.</summary>
    public static ImmutableArray<DragHandle> Handles(Stair stair) => [.. All(stair).Select(h => h.Handle)];

    /// <summary>The edit a drag of a handle makes; null when it changes nothing, or there is no such handle.</summary>
    /// <param name="stair">The stair as it was when the drag began.</param>
    /// <param name="handle">The handle's id.</param>
    /// <param name="distance">How far it was dragged along its direction, mm.</param>
    public static JobEdit? Edit(Stair stair, string handle, double distance)
    {
        var (job, plan) = (stair.Job, stair.Plan);
        if (!double.IsFinite(distance) || All(stair).FirstOrDefault(h => h.Handle.Id == handle) is not { Handle: { } held } found) return null;
        var steps = Math.Round(Math.Clamp(distance, -1e6, 1e6) / held.Step, MidpointRounding.AwayFromZero);
        if (found.Turn is not { } turn) return Going(job, steps);
        if (found.Riser == 0) return LayoutEdits.MoveTurn(job, (int)Math.Clamp(steps, -plan.Flights[turn.Index].Goings, plan.Flights[turn.Index + 1].Goings), turn.Index);
        var isFirst = found.Riser == turn.FirstLine;
        return Riser(stair, turn, isFirst, isFirst ? turn.FirstRiser : turn.LastRiser, steps);
    }

    /// <summary>The edit of one press of an arrow key: the least step, over the newel's arris at one go where no riser can stand. Null when it changes nothing.</summary>
    public static JobEdit? Press(Stair stair, string handle, bool positive)
    {
        if (Handles(stair).FirstOrDefault(h => h.Id == handle) is not { } held) return null;
        var sign = positive ? 1 : -1;
        if (Edit(stair, handle, sign * held.Step) is { } edit) return edit;
        var practice = stair.Job.Practice;
        // From one side of the arris to the other: the cover on both sides and the riser's thickness.
        return !stair.Plan.Turns.IsEmpty && held.Step == stair.Units.Step ? Edit(stair, handle, sign * stair.Units.Up(2 * practice.Cover + practice.Riser)) : null;
    }

    /// <summary>Handles, each with its turn, and the riser of the turn it moves; 0 for the turn itself.</summary>
    private static List<Held> All(Stair stair)
    {
        var (plan, goings) = (stair.Plan, stair.Plan.Flights.Select(f => f.Goings).ToList());
        var (first, last) = (plan.Riser(1), plan.Riser(plan.Risers));
        if (plan.Turns.IsEmpty) return [new(EndOfFlight(first, -first.Up, goings[0], "first riser"), null, 0)];
        var handles = new List<Held>();
        foreach (var turn in plan.Turns)
        {
            var newel = plan.Newels.First(n => n.Id == turn.Newels[0]);
            handles.Add(new(new(newel.Id, newel.Name, turn.Centre, plan.Flights[turn.Index].Along, stair.Job.Going, plan.Turns.Length == 1 ? "steps before and after the turn" : $"steps before and after {TurnWords.The(plan, turn)}"), turn, 0));
        }
        if (goings[0] > 0) handles.Add(new(EndOfFlight(first, -first.Up, goings[0], "first riser"), null, 0));
        else if (goings[^1] > 0) handles.Add(new(EndOfFlight(last, last.Up, goings[^1], "last riser"), null, 0));
        // Where steps share the taper, the riser at the turn has no place of its own to be dragged to.
        foreach (var turn in plan.Turns.Where(t => t.Turn.SharedBefore + t.Turn.SharedAfter == 0))
        {
            foreach (var (riser, away, name) in new[] { (plan.Riser(turn.FirstLine), -1.0, "first"), (plan.Riser(turn.LastLine), 1.0, "last") })
            {
                var handle = new DragHandle(ThingId.Riser(riser.Number), $"{name} riser of {TurnWords.The(plan, turn)}", riser.Walking, away * riser.Up, stair.Units.Step, $"{name} riser from the newel's centre");
                if (!handles.Exists(h => h.Handle.Id == handle.Id)) handles.Add(new(handle, turn, riser.Number));
            }
        }
        return handles;

        DragHandle EndOfFlight(RiserLine riser, Vector2 away, int goings, string name) =>
            new(ThingId.Riser(riser.Number), name, riser.Walking, away, goings * stair.Units.Step, "going");
    }

    private static JobEdit? Going(Job job, double more)
    {
        var units = job.Units;
        var going = units.IsInches ? units.Stock(job.Going + more * units.Step) : Math.Round(job.Going + more, MidpointRounding.AwayFromZero);
        return more == 0 || going < 1 ? null : JobEdit.Of($"going {units.Print(job.Going, 2)} to {units.Print(going, 0)}", FieldChange.To("going", going));
    }

    private static JobEdit? Riser(Stair stair, TurnPlan turn, bool isFirst, double e, double more)
    {
        if (more == 0) return null;
        var job = stair.Job;
        var flight = turn.Index + (isFirst ? 0 : 1);
        // A flight between two turns has a string whatever its steps; at an end of the stair only steps give it one.
        var hasFlight = stair.Plan.Flights[flight].Goings > 0;
        var units = job.Units;
        var to = Allowed(units, job.Practice, Math.Max(0, units.IsInches ? units.Stock(e + more * units.Step) : Math.Round(e + more, MidpointRounding.AwayFromZero)), hasFlight);
        if (to == e) return null;
        var course = Course.Of(job.Layout);
        var was = course.Turns[turn.Index];
        var changed = isFirst ? was with { FirstRiser = to } : was with { LastRiser = to };
        return JobEdit.Of($"{(isFirst ? "first" : "last")} riser of {TurnWords.The(stair.Plan, turn)} {units.Print(e, 2)} to {units.Print(to, 0)}",
            ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(turn.Index, changed) }));
    }

    /// <summary>The nearest place where a riser's housing can be cut: on the newel, or past it in a flight's string (setting-out.md 2.2).</summary>
    private static double Allowed(Units units, Practice practice, double e, bool hasFlight)
    {
        var half = practice.Newel / 2;
        var (onNewel, past) = (Math.Max(0, units.Down(half - practice.Cover + Tolerance.Same)), units.Up(half + practice.Riser + practice.Cover - Tolerance.Same));
        if (e <= onNewel || (hasFlight && e >= past)) return e;
        return !hasFlight || e - onNewel < past - e ? onNewel : past;
    }

    private sealed record Held(DragHandle Handle, TurnPlan? Turn, int Riser);
}
