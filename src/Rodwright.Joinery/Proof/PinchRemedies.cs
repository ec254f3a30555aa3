using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Changes;
using Rodwright.Stairs.Plans;
using Rodwright.Stairs.Turns;

namespace Rodwright.Joinery.Proof;

/// <summary>What may free pieces that are in one another's way, by growing amounts; whoever offers one tries it first.</summary>
internal static class PinchRemedies
{
    /// <summary>Every turn up or down the stair, by up to six steps, the number of risers kept.</summary>
    public static IEnumerable<Remedy> Turns(StairPlan plan)
    {
        var course = Course.Of(plan.Job.Layout);
        for (var count = 1; count <= 6; count++)
        {
            foreach (var turn in plan.Turns)
            {
                foreach (var steps in new[] { count, -count })
                {
                    var (before, after) = (course.Goings[turn.Index] + steps, course.Goings[turn.Index + 1] - steps);
                    if (before < 0 || after < 0) continue;
                    var words = $"{(plan.Turns.Length > 1 ? $"turn {turn.Index + 1}" : "the turn")} {(count == 1 ? "one step" : $"{count} steps")} {(steps > 0 ? "up" : "down")}";
                    yield return Remedy.Of(words, ChangesOfSteps.Sequence(course with { Goings = course.Goings.SetItem(turn.Index, before).SetItem(turn.Index + 1, after) }));
                }
            }
        }
    }

    /// <summary>Half turns round a well, so that the flights pass one another side by side: as wide as needs be for the strings, or for two newels.</summary>
    public static IEnumerable<Remedy> Wells(StairPlan plan)
    {
        var (course, practice, units) = (Course.Of(plan.Job.Layout), plan.Job.Practice, plan.Units);
        foreach (var turn in plan.Turns.Where(t => t.Turn is { Quarters: 2, Kind: TurnKind.Landing }))
            foreach (var well in new[] { 1.25, 1.5, 2, 3 }.Select(f => units.Up(f * practice.Newel, 10)))
                yield return Remedy.Of($"a well of {units.Print(well)} at the turn", ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(turn.Index, turn.Turn with { Well = well }) }));
    }

    /// <summary>Newels up to 40 mm larger or smaller, every 2 mm, the nearest first.</summary>
    public static IEnumerable<Remedy> Newels(StairPlan plan)
    {
        var (units, side) = (plan.Units, plan.Job.Practice.Newel);
        for (var i = 1; i <= 20; i++)
            foreach (var newel in new[] { units.Up(side) + units.Nearby(2) * i, units.Down(side) - units.Nearby(2) * i })
                if (newel > 0) yield return Remedy.Of($"a newel of {units.Print(newel)}", FieldChange.To("practice.newel", newel));
    }

    /// <summary>The first and last riser of a turn elsewhere, up to a quarter of a metre off, the nearest first; where flights share the taper they are not the job's to say.</summary>
    public static IEnumerable<Remedy> Risers(StairPlan plan, TurnPlan turn)
    {
        if (turn.Turn is { SharedBefore: > 0 } or { SharedAfter: > 0 }) yield break;
        var units = plan.Units;
        foreach (var off in new[] { 2, 4, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 65, 80, 100, 125, 150, 200, 250 })
        {
            foreach (var by in new[] { units.Nearby(off), -units.Nearby(off) })
            {
                var (first, last) = (units.Up(turn.FirstRiser + by), units.Up(turn.LastRiser + by));
                if (first < 0 || last < 0) continue;
                yield return With(plan, turn, turn.Turn with { FirstRiser = first, LastRiser = last },
                    first == last ? $"the turn's risers {units.Print(first)} outside the newel's centre" : $"the turn's risers {units.Print(first)} and {units.Print(last)} outside the newel's centre");
            }
        }
    }

    /// <summary>The taper shared with other numbers of steps, those nearest to what is shared now first.</summary>
    public static IEnumerable<Remedy> Shares(StairPlan plan, TurnPlan turn)
    {
        if (TurnCatalogue.Find(turn.Method) is not { Shares: true }) return [];
        var course = Course.Of(plan.Job.Layout);
        var (before, after) = (turn.Turn.SharedBefore, turn.Turn.SharedAfter);
        return Enumerable.Range(0, Math.Min(4, course.Goings[turn.Index]) + 1)
            .SelectMany(b => Enumerable.Range(0, Math.Min(4, course.Goings[turn.Index + 1]) + 1).Select(a => (Before: b, After: a)))
            .Where(s => (s.Before, s.After) != (before, after) && s.Before + s.After > 0).OrderBy(s => Math.Abs(s.Before - before) + Math.Abs(s.After - after))
            .Select(s => With(plan, turn, turn.Turn with { SharedBefore = s.Before, SharedAfter = s.After }, $"the taper shared with {s.Before} steps before the turn and {s.After} after it"));
    }

    /// <summary>Every other method that shares the taper.</summary>
    public static IEnumerable<Remedy> Methods(StairPlan plan, TurnPlan turn) => TurnCatalogue.Winders.Where(m => m.Shares && m.Id != turn.Method)
        .Select(m => With(plan, turn, turn.Turn with { Method = m.Id }, $"the turn set out {m.Id}"));

    private static Remedy With(StairPlan plan, TurnPlan turn, Turn changed, string words)
    {
        var course = Course.Of(plan.Job.Layout);
        return Remedy.Of(words, ChangesOfSteps.Sequence(course with { Turns = course.Turns.SetItem(turn.Index, changed) }));
    }
}
