using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Sheets;

/// <summary>The stair in plan.</summary>
public static class PlanSheets
{
    /// <summary>The plan's sheet.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var view = new PlanView(rod.Stair);
        var start = SheetStart.For(rod, new("plan", "Plan", "Plan", Note: "Riser faces solid, nosings broken"), l => PlanFigures.Need(view, l));
        return [start.Finish([.. On(view, start.Place(view.Bounds), start.Lettering, start.View), .. Panel(view, start)])];
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

    /// <summary>The turn's newel, the tapered steps in figures, and notes, as far as the panel has room.</summary>
    internal static IReadOnlyList<Mark> Panel(PlanView view, SheetStart start)
    {
        var panel = start.Panel;
        var marks = new List<Mark>();
        var left = panel.MinX;
        if (view.Stair.Plan.Turn is not null)
        {
            marks.AddRange(TurnDetail.Draw(view, panel with { MaxX = left + 40 }));
            left += 43;
        }
        var table = TaperTable.Draw(view.Stair.Plan, panel with { MinX = left }, start.Lettering.Words);
        marks.AddRange(table.Marks);
        if (table.Width > 0) left += table.Width + 5;
        if (panel.MaxX - left >= 40) marks.AddRange(PanelNotes.Draw(Notes(view.Stair), panel with { MinX = left }, start.Lettering.Words));
        return marks;
    }

    private static IEnumerable<string> Notes(Stair stair)
    {
        var (plan, job) = (stair.Plan, stair.Job);
        yield return $"{Number.Print(plan.Risers, 0)} risers of {Number.Print(plan.Rise, 2)}. Going {Number.Print(plan.Going)}, pitch {Number.Print(plan.Pitch.Degrees, 2)}°";
        yield return $"Width over strings {Number.Print(job.Width)}, clear {Number.Print(plan.ClearWidth)}";
        if (plan.Turn is { } turn)
            yield return $"First riser of the turn {Number.Print(turn.FirstRiser)} outside the newel's centre, last {Number.Print(turn.LastRiser)}: {turn.DecidedBy}";
        yield return $"Walking line {Number.Print(plan.WalkingRadius - plan.InnerThickness / 2)} from the inner string's face";
        yield return $"Nosing {Number.Print(job.Practice.Nosing)}. All ordinates to riser faces";
    }
}
