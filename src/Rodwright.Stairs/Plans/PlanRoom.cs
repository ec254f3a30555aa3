using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Regulations;
using System.Collections.Immutable;

namespace Rodwright.Stairs.Plans;

/// <summary>What cannot exist in plan, and what would free it.</summary>
internal static class PlanRoom
{
    public static ImmutableArray<Finding> Check(Job job, Course course, double clear, double inset, double innerThickness)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var needed = job.Practice.Newel / 2 - innerThickness / 2 + job.Practice.Cover;
        if (clear <= needed)
        {
            findings.Add(new("RW2001", Severity.Error, "width",
                $"{job.Units.Print(job.Width)} over the strings leaves {job.Units.Print(clear)} clear between them; beside a newel of {job.Units.Print(job.Practice.Newel)} more than {job.Units.Print(needed)} is needed",
                $"make the stair at least {job.Units.Print(job.Units.Up(job.Width - clear + needed + 1))} wide"));
        }
        else if (inset >= clear || inset + innerThickness / 2 <= job.Practice.Newel / 2)
        {
            findings.Add(new("RW2002", Severity.Error, "width",
                $"the regulation's walking line, {job.Units.Print(inset)} from the inner string, does not lie between the newel's face and the wall in a clear width of {job.Units.Print(clear)}",
                "a wider stair, a smaller newel, or a regulation that measures in the middle"));
        }
        for (var i = 0; i < course.Turns.Length; i++) CheckTurn(job, course, i, findings);
        return findings.ToImmutable();
    }

    /// <summary>A turn that asks for more steps of its flights than they have, and a well that neither one newel nor two can stand at.</summary>
    private static void CheckTurn(Job job, Course course, int index, ImmutableArray<Finding>.Builder findings)
    {
        var turn = course.Turns[index];
        var from = index > 0 ? course.Turns[index - 1].SharedAfter : 0;
        if (turn.SharedBefore > course.Goings[index] - from || (index == course.Turns.Length - 1 && turn.SharedAfter > course.Goings[index + 1]))
        {
            findings.Add(new("RW2005", Severity.Error, "layout.sequence",
                $"turn {index + 1} shares its taper with {turn.SharedBefore} steps before it and {turn.SharedAfter} after it; the flights there have {course.Goings[index]} and {course.Goings[index + 1]}",
                "share fewer, or lengthen the flights"));
        }
        if (turn is not { Quarters: 2, Well: { } well }) return;
        var board = job.Practice.NewelString.Thickness;
        var newel = job.Practice.Newel;
        var most = newel - board - 2;
        var least = newel + newel / 4;
        if (well <= most || (well >= least && turn.Kind == TurnKind.Landing)) return;
        findings.Add(new("RW2006", Severity.Error, "layout.sequence",
            $"a well of {job.Units.Print(well)} between the strings' centre lines leaves no place for the newel of {job.Units.Print(newel)}: one newel serves up to {job.Units.Print(most)}"
                + (turn.Kind == TurnKind.Landing ? $", two from {job.Units.Print(least)} on" : ""),
            turn.Kind == TurnKind.Landing ? $"a well of {job.Units.Print(job.Units.Down(most))} or less, or of {job.Units.Print(job.Units.Up(least))} or more" : $"a well of {job.Units.Print(job.Units.Down(most))} or less, or two quarter turns with a flight between"));
    }

    /// <summary>The findings with what would free those asked for, tried: afterwards there is a plan.</summary>
    public static ImmutableArray<Finding> Advised(Job job, Regulation regulation, ImmutableArray<Finding> findings, Telling telling) =>
        [.. findings.Select(f => telling.Remedies(f.Code) ? f with { Remedies = Trial.Freeing(job, regulation, f.Code, Candidates(job, f.Code)) } : f)];

    /// <summary>The least change of each kind first.</summary>
    private static IEnumerable<Way> Candidates(Job job, string code)
    {
        var (layout, newel) = (job.Layout, job.Practice.Newel);
        var smaller = Enumerable.Range(1, 20).Select(i => Remedied.Newel(job.Units, job.Units.Down(newel) - job.Units.Nearby(5) * i)).Where(_ => job.HasNewels);
        var wider = Enumerable.Range(1, 60).Select(i => Remedied.Width(job.Units, job.Units.Up(job.Width) + job.Units.Nearby(10) * i));
        var turns = Enumerable.Range(0, Course.Of(layout).Turns.Length).ToList();
        var moved = Enumerable.Range(1, 20).SelectMany(i => turns.SelectMany(t => new[] { Remedied.TurnMoved(job, t, i), Remedied.TurnMoved(job, t, -i) }));
        var more = Enumerable.Range(1, 3).Select(i => Remedied.Risers(job, layout.Risers + i));
        var onNewel = Math.Max(0, job.Units.Down(newel / 2 - job.Practice.Cover));
        var onTheNewel = turns.Where(t => (Remedied.TurnOf(job, t)!.FirstRiser ?? Remedied.TurnOf(job, t)!.LastRiser) is not null).Select(t => (Remedy?)Remedied.TurnRisers(
            job, t, Math.Min(Remedied.TurnOf(job, t)!.FirstRiser ?? onNewel, onNewel), Math.Min(Remedied.TurnOf(job, t)!.LastRiser ?? onNewel, onNewel)));
        return code switch
        {
            "RW2001" or "RW2002" => [Way.Of(wider), Way.Of(smaller)],
            "RW2003" => [Way.Of(moved), Way.Of(more), Way.Of(smaller)],
            _ => [Way.Of(onTheNewel), Way.Of(moved)],
        };
    }

    /// <summary>Newels that leave no string between them, and risers past a newel with no string to carry them.</summary>
    public static ImmutableArray<Finding> CheckNewels(PlanShape shape)
    {
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var h = shape.HalfNewel;
        foreach (var side in new[] { Hand.Left, Hand.Right })
        {
            foreach (var leg in shape.Legs) Between(leg, side);
        }
        foreach (var turn in shape.Turns)
        {
            if (shape.Legs[turn.Index].Goings == 0 && turn.Index == 0 && turn.Found.FirstRiser > h) Past("firstRiser", turn.Found.FirstRiser, "before");
            if (shape.Legs[turn.Index + 1].Goings == 0 && turn.Index == shape.Turns.Length - 1 && turn.Found.LastRiser > h) Past("lastRiser", turn.Found.LastRiser, "after");
        }
        foreach (var turn in shape.Turns.Where(t => !t.IsLanding && shape.HasOuterNewel(t))) AtCorner(turn);
        RoundedRoom.Check(shape, findings);
        return findings.ToImmutable();

        // The newel at an outer corner takes strings, not risers: a riser's end, its nosing and its back keep clear of it.
        void AtCorner(TurnShape turn)
        {
            var reach = shape.OuterCentre(turn) - h - shape.Job.Practice.Cover;
            foreach (var line in RiserLines.Of(shape)[(turn.FirstLine - 1)..turn.LastLine])
            {
                var end = turn.Frame.Local(turn.Hand == Hand.Left ? line.Outer : line.Inner);
                if (turn.Quarters == 2) end = new(Math.Abs(end.X + turn.Between / 2) - turn.Between / 2, end.Y);
                if (end.X < reach || end.Y < reach) continue;
                findings.Add(new("RW2007", Severity.Error, "layout.sequence",
                    $"riser {line.Number} runs into the newel at the open outer corner of turn {turn.Index + 1}, which takes no risers",
                    "an odd number of tapered steps, so that the corner lies within one of them; or a wall at the outside of the turn"));
                return;
            }
        }

        void Between(Leg leg, Hand side)
        {
            var (before, after) = (leg.Index > 0 ? shape.Turns[leg.Index - 1] : null, leg.Index < shape.Turns.Length ? shape.Turns[leg.Index] : null);
            var lower = before is null ? shape.IsOpen(leg.Index, side) : before.Hand == side;
            var upper = after is null ? shape.IsOpen(leg.Index, side) : after.Hand == side;
            // A flight of no steps at an end of the stair has no string on the turn's own side; a wall string may end at a newel as short as it likes.
            if (!lower || !upper || (leg.Goings == 0 && ((before is null && upper) || (after is null && lower)))) return;
            var centres = (after is null ? leg.End : leg.End + after.Found.FirstRiser) - (before is null ? shape.Foot(side) : 0);
            var free = centres - 2 * h;
            if (free >= shape.Job.Practice.Newel / 4) return;
            findings.Add(new("RW2003", Severity.Error, shape.Legs.Length > 1 && leg.Index == 0 ? "layout.sequence[0].flight" : "layout.sequence",
                $"{leg.Goings} going{(leg.Goings == 1 ? "" : "s")} leave {shape.Job.Units.Print(free)} of string between two newels of {shape.Job.Units.Print(2 * h)}; at least {shape.Job.Units.Print(shape.Job.Practice.Newel / 4)} is needed for its shoulders",
                "one more going in this flight, a smaller newel, or none: let the flight begin with the turn"));
        }

        void Past(string field, double e, string side) => findings.Add(new("RW2004", Severity.Error, "layout.sequence.turn." + field,
            $"a riser {shape.Job.Units.Print(e)} outside the newel's centre lies past the newel, but there is no flight {side} the turn whose string could carry it",
            $"keep it within {shape.Job.Units.Print(h - shape.Job.Practice.Cover)}, or add a going {side} the turn"));
    }
}
