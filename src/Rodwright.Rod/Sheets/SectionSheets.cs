using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Headroom;

namespace Rodwright.Rod.Sheets;

/// <summary>The section along the walking line, unrolled: stair, floors, trimmer, ceilings and the least headroom on it.</summary>
public static class SectionSheets
{
    /// <summary>The section's sheet; none when nothing above the stair was measured.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        if (!rod.Stair.Job.Survey.HasOverhead) return [];
        var view = new SectionView(rod.Stair);
        var start = SheetStart.For(rod, new("section", "Section", "Section along the walking line, unrolled", Note: "Pitch line through the nosings"), l => Need(view, l), finer: true);
        var place = start.Place(view.Bounds);
        List<Mark> lines = [.. SectionMarks.Stair(view, place), .. SectionMarks.Floors(view, place), .. SectionMarks.Above(view, place)];
        var figures = Figures(view, place, start.Lettering);
        return [start.Finish([.. lines, .. figures, .. Labels(view, place, start.Lettering, [.. lines, .. figures], start.View), .. Panel(view, start)])];
    }

    private static ViewNeed Need(SectionView view, SheetLettering lettering)
    {
        var (heights, stations) = (RowStop.Strip(lettering, Heights(view)), RowStop.Strip(lettering, Stations(view)));
        return new(view.Bounds.Width, view.Bounds.Height, 10, 8 + heights, 8, 8 + stations);
    }

    private static IReadOnlyList<Mark> Figures(SectionView view, Placement place, SheetLettering lettering)
    {
        var box = place.Map(view.Bounds);
        var heights = RunningDimension.Draw(
            Heights(view).Select(h => new DimensionStop(new(box.MaxX, place.Map(new Point2(0, h.Value)).Y), h.Value, h.Note, h.Of)), new(new(box.MaxX + 6, 0), new(0, 1)), lettering.Dimensions);
        var stations = FigureRows.Apart(heights, more => RunningDimension.Draw(
            Stations(view).Select(h => new DimensionStop(new(place.Map(new Point2(h.Value, 0)).X, box.MinY), h.Value, h.Note, h.Of)), new(new(0, box.MinY - 6 - more), new(1, 0)), lettering.Dimensions));
        List<Mark> marks = [.. heights, .. stations];
        if (view.Least is not { } least || least.High - least.Low < 1) return marks;
        var (from, to) = (place.Map(new Point2(least.S, least.Low)), place.Map(new Point2(least.S, least.High)));
        if (to.Y > box.MaxY) return marks;
        marks.AddRange(ChainDimension.Between(from, to, 0, least.High - least.Low, lettering.Dimensions with { Decimals = 0 }).Select(m => m is TextMark text ? text with { Knockout = true } : m));
        return marks;
    }

    private static IEnumerable<Mark> Labels(SectionView view, Placement place, SheetLettering lettering, IReadOnlyList<Mark> drawn, Box2 room)
    {
        var marks = new List<Mark>();
        var box = place.Map(view.Bounds);
        var placer = new LabelPlacer(room with { MaxX = box.MaxX, MinY = box.MinY });
        placer.Avoid(drawn);
        foreach (var (above, points) in view.Above.GroupBy(x => x.Of).Select(g => (g.Key, g.MaxBy(x => x.Points[^1].X - x.Points[0].X).Points)))
        {
            var at = points[points.Length / 2];
            if (view.Bounds.MaxY < at.Y) continue;
            Say(above.IsTrimmer ? "floor and ceiling" : above.Name, new(at.X, above.IsTrimmer ? at.Y : at.Y));
        }
        Say("upper floor", new((view.Arrival + view.Bounds.MaxX) / 2, view.Stair.Job.Survey.Height));
        Say("floor", new(view.Bounds.MinX + 200, 0));
        var middle = view.Stair.Plan.Risers / 2;
        Say($"step {Number.Print(middle, 0)}", new(view.Risers[middle - 1] + view.Stair.Plan.Going / 2, middle * view.Stair.Plan.Rise));
        return marks;

        void Say(string words, Point2 near)
        {
            if (placer.Place(words, place.Map(near), lettering.Words, gap: 1.5) is { } label) marks.AddRange(label.Marks);
        }
    }

    private static IReadOnlyList<Mark> Panel(SectionView view, SheetStart start)
    {
        var key = start.Panel with { MaxX = start.Panel.MinX + start.Panel.Height };
        return [.. KeyPlan.Draw(view.Stair, [], key), .. PanelNotes.Draw(Notes(view), start.Panel with { MinX = key.MaxX + 5 }, start.Lettering.Words)];
    }

    private static IEnumerable<string> Notes(SectionView view)
    {
        if (view.Least is { } least) yield return $"Least headroom on the walking line {view.Stair.Units.Print(least.High - least.Low, 0)}, plumb above the pitch line";
        foreach (var found in view.Headroom?.Under ?? []) yield return $"Over the whole width: {view.Stair.Units.Print(found.Least, 0)}, {HeadroomWords.Where(view.Stair.Plan, found)}";
        yield return "Stations run along the walking line from the first riser's face; heights from the lower finished floor";
    }

    private static List<RowStop> Heights(SectionView view)
    {
        var height = view.Stair.Job.Survey.Height;
        List<RowStop> stops = [new(0, "floor", ThingId.Floor), new(height, "upper floor", ThingId.UpperFloor)];
        if (view.Stair.Job.Survey.Well is { } well) stops.Add(new(height - well.Trimmer.Mean, "under the trimmer", ThingId.Well));
        if (view.Least is { } least && least.High < view.Bounds.MaxY && !stops.Exists(x => Math.Abs(x.Value - least.Low) < 1)) stops.Add(new(least.Low, "pitch line there", ThingId.WalkingLine));
        return stops;
    }

    private static List<RowStop> Stations(SectionView view)
    {
        List<RowStop> stops = [new(0, "riser 1", ThingId.Riser(1)), new(view.Risers[^1], $"riser {Number.Print(view.Stair.Plan.Risers, 0)}", ThingId.Riser(view.Stair.Plan.Risers))];
        foreach (var (_, points) in view.Above.Where(x => x.Of.IsTrimmer))
            foreach (var s in new[] { points[0].X, points[^1].X })
                if (s > view.Bounds.MinX + 1 && s < view.Arrival - 1) stops.Add(new(s, "edge of the well", ThingId.Well));
        if (view.Least is { } least && !stops.Exists(x => Math.Abs(x.Value - least.S) < 1)) stops.Add(new(least.S, "least headroom", ThingId.WalkingLine));
        return stops;
    }
}
