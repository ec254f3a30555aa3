using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Things;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;

namespace Rodwright.Workshop.Edits;

/// <summary>
/// What can be dragged on the plan, and what a drag does: the turn along the stair by whole goings, an end of the stair by whole millimetres of going, the
/// turn's risers by whole millimetres of offset. A drag past what is possible stops there.
/// </summary>
public static class DragEdits
{
    /// <summary>Everything that can be dragged, each thing once.</summary>
    public static ImmutableArray<DragHandle> Handles(Stair stair)
    {
        var (plan, layout) = (stair.Plan, stair.Job.Layout);
        var handles = ImmutableArray.CreateBuilder<DragHandle>();
        var (first, last) = (plan.Riser(1), plan.Riser(plan.Risers));
        if (plan.Turn is not { } turn)
        {
            handles.Add(EndOfFlight(first, -first.Up, layout.GoingsBefore, "first riser"));
            return handles.ToImmutable();
        }
        var newel = plan.Newels.First(n => n.Role == NewelRole.Turn);
        handles.Add(new(newel.Id, newel.Name, turn.Centre, first.Up, stair.Job.Going, "steps before and after the turn"));
        if (layout.GoingsBefore > 0) handles.Add(EndOfFlight(first, -first.Up, layout.GoingsBefore, "first riser"));
        else if (layout.GoingsAfter > 0) handles.Add(EndOfFlight(last, last.Up, layout.GoingsAfter, "last riser"));
        handles.Add(OfTurn(plan.Riser(turn.FirstLine), -1, "first"));
        handles.Add(OfTurn(plan.Riser(turn.LastLine), 1, "last"));
        return handles.ToImmutable();

        static DragHandle EndOfFlight(RiserLine riser, Vector2 away, int goings, string name) =>
            new(ThingId.Riser(riser.Number), name, riser.Walking, away, goings, "going");

        static DragHandle OfTurn(RiserLine riser, double away, string name) =>
            new(ThingId.Riser(riser.Number), $"{name} riser of the turn", riser.Walking, away * riser.Up, 1, $"{name} riser from the newel's centre");
    }

    /// <summary>The edit a drag of a handle makes; null when it changes nothing, or there is no such handle.</summary>
    /// <param name="stair">The stair as it was when the drag began.</param>
    /// <param name="handle">The handle's id.</param>
    /// <param name="distance">How far it was dragged along its direction, mm.</param>
    public static JobEdit? Edit(Stair stair, string handle, double distance)
    {
        var (job, layout) = (stair.Job, stair.Job.Layout);
        if (!double.IsFinite(distance) || Handles(stair).FirstOrDefault(h => h.Id == handle) is not { } held) return null;
        var steps = Math.Round(Math.Clamp(distance, -1e6, 1e6) / held.Step, MidpointRounding.AwayFromZero);
        if (stair.Plan.Turn is not { } turn) return Going(job, steps);
        if (handle == stair.Plan.Newels.First(n => n.Role == NewelRole.Turn).Id)
            return LayoutEdits.MoveTurn(job, (int)Math.Clamp(steps, -layout.GoingsBefore, layout.GoingsAfter));
        var number = handle == ThingId.Riser(turn.FirstLine) ? turn.FirstLine : handle == ThingId.Riser(turn.LastLine) ? turn.LastLine : 0;
        if (number == 0) return Going(job, steps);
        var isFirst = number == turn.FirstLine;
        return Riser(job, isFirst, isFirst ? turn.FirstRiser : turn.LastRiser, steps);
    }

    /// <summary>The edit of one press of an arrow key: the least step, over the newel's arris at one go where no riser can stand. Null when it changes nothing.</summary>
    public static JobEdit? Press(Stair stair, string handle, bool positive)
    {
        if (Handles(stair).FirstOrDefault(h => h.Id == handle) is not { } held) return null;
        var sign = positive ? 1 : -1;
        if (Edit(stair, handle, sign * held.Step) is { } edit) return edit;
        var practice = stair.Job.Practice;
        // From one side of the arris to the other: the cover on both sides and the riser's thickness.
        return stair.Plan.Turn is not null && held.Step == 1 ? Edit(stair, handle, sign * Math.Ceiling(2 * practice.Cover + practice.Riser)) : null;
    }

    private static JobEdit? Going(Job job, double more)
    {
        var going = Math.Round(job.Going + more, MidpointRounding.AwayFromZero);
        return more == 0 || going < 1 ? null : JobEdit.Of($"going {Number.Print(job.Going, 2)} to {Number.Print(going, 0)}", FieldChange.To("going", going));
    }

    private static JobEdit? Riser(Job job, bool isFirst, double e, double more)
    {
        if (more == 0) return null;
        var hasFlight = (isFirst ? job.Layout.GoingsBefore : job.Layout.GoingsAfter) > 0;
        var to = Allowed(job.Practice, Math.Max(0, Math.Round(e + more, MidpointRounding.AwayFromZero)), hasFlight);
        if (to == e) return null;
        var turn = job.Layout.Turn!;
        var changed = isFirst ? turn with { FirstRiser = to } : turn with { LastRiser = to };
        return JobEdit.Of($"{(isFirst ? "first" : "last")} riser of the turn {Number.Print(e, 2)} to {Number.Print(to, 0)}",
            FieldChange.ToSequence(job.Layout.Sequence.Select(item => item is Turn ? changed : item)));
    }

    /// <summary>The nearest place where a riser's housing can be cut: on the newel, or past it in a flight's string (setting-out.md 2.2).</summary>
    private static double Allowed(Practice practice, double e, bool hasFlight)
    {
        var half = practice.Newel / 2;
        var (onNewel, past) = (Math.Max(0, Math.Floor(half - practice.Cover + Tolerance.Same)), Math.Ceiling(half + practice.Riser + practice.Cover - Tolerance.Same));
        if (e <= onNewel || (hasFlight && e >= past)) return e;
        return !hasFlight || e - onNewel < past - e ? onNewel : past;
    }
}
