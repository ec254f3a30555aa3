using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Sheets;

/// <summary>The stair in plan.</summary>
public static class PlanSheets
{
    private const double Detail = 40; // width of a detail, mm of paper
    private const double Large = 110; // on a sheet of their own
    private const double Between = 6;

    /// <summary>The plan's sheet.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var view = new PlanView(rod.Stair);
        var start = SheetStart.For(rod, new("plan", "Plan", "Plan", Note: "Riser faces solid, nosings broken"), l => PlanFigures.Need(view, l));
        var panel = Panel(view, start, out var whole);
        // What stands larger on the turns' own sheet is not crowded in here as well.
        if (!whole) panel = PanelNotes.Draw(Notes(view.Stair), start.Panel, start.Lettering.Words);
        var sheet = start.Finish([.. On(view, start.Place(view.Bounds), start.Lettering, start.View), .. panel]);
        return whole ? [sheet] : [sheet, Turns(rod, view, start.Scale)];
    }

    /// <summary>The turns' newels and the tapered steps in figures, where the plan's own sheet has no room for all of them.</summary>
    private static Sheet Turns(RodJob rod, PlanView view, Drawings.Paper.Scale scale)
    {
        var start = SheetStart.Written(rod, new("turns", "Turns", "Turns: newels and tapered steps"), scale.IsFull ? Drawings.Paper.Scale.OneTo(2) : scale);
        var (room, height) = (start.View, start.Lettering.Words);
        var marks = new List<Mark>();
        var y = room.MaxY;
        if (TaperTable.Of(view.Stair.Plan, height) is { } table)
        {
            var drawn = table.Draw(new(room.MinX, y), room.Height);
            marks.AddRange(drawn.Marks);
            y -= drawn.Height + 6;
        }
        // As large as lets them all stand in rows below the table.
        var count = TurnDetail.Count(view.Stair.Plan);
        var side = new[] { Large, 80, 60, Detail }.First(d => d == Detail || Math.Floor((room.Width + Between) / (d + Between)) * Math.Floor((y - room.MinY + Between) / (d + Between)) >= count);
        var x = room.MinX;
        for (var i = 0; i < count; i++)
        {
            if (x + side > room.MaxX) (x, y) = (room.MinX, y - side - Between);
            if (y - side < room.MinY) break;
            marks.AddRange(TurnDetail.Draw(view, new(x, y - side, x + side, y), i));
            x += side + Between;
        }
        marks.AddRange(PanelNotes.Draw(Notes(view.Stair), start.Panel, height));
        return start.Finish(marks);
    }

    /// <summary>The drawing with its figures and words.</summary>
    internal static IReadOnlyList<Mark> On(PlanView view, Placement place, SheetLettering lettering, Box2 room)
    {
        var lines = PlanMarks.Draw(view, place);
        var figures = PlanFigures.Draw(view, place, lettering);
        // What lies above is drawn as far as the plan goes; the room has a sheet of its own.
        if (view.Stair.Job.Survey.HasOverhead && new RoomView(view.Stair) is var inRoom)
            lines = [.. lines, new ClipMark(place.Map(view.Bounds), [.. RoomMarks.Well(inRoom, place), .. RoomMarks.Slopes(inRoom, place, view.Bounds)])];
        return [.. lines, .. figures, .. PlanLabels.Draw(view, place, lettering, [.. lines, .. figures], room)];
    }

    /// <summary>The turns' newels, the tapered steps in figures, and notes, as far as the panel has room.</summary>
    internal static IReadOnlyList<Mark> Panel(PlanView view, SheetStart start, out bool whole)
    {
        var panel = start.Panel;
        var plan = view.Stair.Plan;
        var marks = new List<Mark>();
        var left = panel.MinX;
        // The table before further details: a detail shows again what stands in it.
        var table = TaperTable.Draw(plan, panel with { MinX = left + (plan.Turns.IsEmpty ? 0 : Detail + 3) }, start.Lettering.Words);
        var details = 0;
        while (details < TurnDetail.Count(plan) && left + Detail + (table.Width > 0 ? table.Width + 3 : 0) <= panel.MaxX)
        {
            var detail = TurnDetail.Draw(view, panel with { MinX = left, MaxX = left + Detail }, details, start.Scale);
            if (detail.Count == 0) break;
            marks.AddRange(detail);
            details++;
            left += Detail + 3;
        }
        var below = Box2.Empty;
        if (table.Width > 0)
        {
            var drawn = TaperTable.Draw(plan, panel with { MinX = left }, start.Lettering.Words).Marks;
            marks.AddRange(drawn);
            below = panel with { MinX = left, MaxY = drawn.Min(m => m.Bounds.MinY) - 3 };
            left += table.Width + 5;
        }
        whole = details == TurnDetail.Count(plan) && (table.Width > 0 || !plan.TaperedSteps.Any());
        // Under a wide table when there is no room beside it.
        if (panel.MaxX - left < 40 && !below.IsEmpty && below.Height > 0) marks.AddRange(PanelNotes.Draw(Notes(view.Stair), below, start.Lettering.Words));
        else if (panel.MaxX - left >= 40) marks.AddRange(PanelNotes.Draw(Notes(view.Stair), panel with { MinX = left }, start.Lettering.Words));
        return marks;
    }

    private static IEnumerable<string> Notes(Stair stair)
    {
        var (plan, job) = (stair.Plan, stair.Job);
        yield return $"{Number.Print(plan.Risers, 0)} risers of {plan.Units.Print(plan.Rise, 2)}. Going {plan.Units.Print(plan.Going)}, pitch {Number.Print(plan.Pitch.Degrees, 2)}°";
        yield return $"Width over strings {plan.Units.Print(job.Width)}, clear {plan.Units.Print(plan.ClearWidth)}";
        foreach (var turn in plan.Turns)
            yield return turn.FirstRiser == 0 && turn.LastRiser == 0 ? $"First and last riser of {TurnWords.The(plan, turn)} on the newel's centre" : $"First riser of {TurnWords.The(plan, turn)} {plan.Units.Print(turn.FirstRiser)} outside the newel's centre, last {plan.Units.Print(turn.LastRiser)}. {Sentence.Begin(turn.DecidedBy)}";
        yield return $"Walking line {plan.Units.Print(plan.WalkingRadius - plan.InnerThickness / 2)} from the inner string's face";
        yield return $"Nosing {plan.Units.Print(job.Practice.Nosing)}. All ordinates to riser faces";
    }
}
