using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Rod.Sheets;

/// <summary>The room as it was measured, with the stair in it.</summary>
public static class RoomSheets
{
    /// <summary>The room's sheet; none when nothing of the room was measured.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod)
    {
        var survey = rod.Stair.Job.Survey;
        if (survey.Walls.Count == 0 && !survey.HasOverhead) return [];
        var view = new RoomView(rod.Stair);
        var start = SheetStart.For(rod, new("room", "Room", "Room as measured", Note: "Edge of the well above broken"), l => Need(view, l), finer: true);
        var place = start.Place(Whole(view));
        var within = place.Map(view.Bounds).Grown(2);
        List<Mark> lines =
        [
            .. RoomMarks.Stair(view, place), .. RoomMarks.Walls(view, place), .. RoomMarks.Well(view, place), .. RoomMarks.Linings(view, place),
            .. RoomMarks.Slopes(view, place, view.Bounds), .. RoomMarks.Least(view, place), .. Lengths(view, place, start.Lettering),
        ];
        return [start.Finish([.. lines, .. Labels(view, place, start.Lettering, lines, start.View), .. PanelNotes.Draw(Notes(view), start.Panel, start.Lettering.Words)])];
    }

    private static ViewNeed Need(RoomView view, SheetLettering lettering)
    {
        var strip = 14 + 4 * lettering.Figures;
        var whole = Whole(view);
        return new(whole.Width, whole.Height, strip, strip, strip, strip);
    }

    /// <summary>The room with the leaves that swing out of it: the figures stand beyond them.</summary>
    private static Box2 Whole(RoomView view) => view.Bounds.Grown(view.Walls.Select(w => w.LeafOut).DefaultIfEmpty(0).Max());

    /// <summary>The length of every wall outside it.</summary>
    private static IEnumerable<Mark> Lengths(RoomView view, Placement place, SheetLettering lettering)
    {
        foreach (var wall in view.Walls)
        {
            var (a, b) = (place.Map(wall.From), place.Map(wall.To));
            var away = wall.Inward.Dot((b - a).Unit.Left) > 0 ? -1 : 1;
            // The figure stands on the far side of its line, away from the wall.
            var (from, to) = away > 0 ? (a, b) : (b, a);
            // A leaf that swings out stands between the wall and its figure.
            foreach (var mark in ChainDimension.Between(from, to, 7 + place.Map(wall.LeafOut), wall.Length, lettering.Dimensions)) yield return mark;
        }
    }

    private static IEnumerable<Mark> Labels(RoomView view, Placement place, SheetLettering lettering, IReadOnlyList<Mark> drawn, Box2 room)
    {
        var marks = new List<Mark>();
        var placer = new LabelPlacer(room);
        placer.Avoid(drawn);
        if (view.Report.Headroom?.Least is { } least) Say($"least headroom {view.Stair.Units.Print(least.Least, 0)} under {least.Under.Name}", least.At, 3);
        foreach (var wall in view.Walls)
        {
            Say(wall.Name, wall.At(wall.Length / 2), 1.5);
            var last = wall.Index == view.Walls.Length - 1;
            if (wall.Run.Corner is not null && view.Shape is { } shape)
            {
                var next = last ? shape.Walls[0] : shape.Walls[wall.Index + 1];
                var inside = 180 - Angle.FromRadians(Angle.Atan2(shape.Walls[wall.Index].Along.Cross(next.Along), shape.Walls[wall.Index].Along.Dot(next.Along))).Degrees;
                Say($"{Number.Print(inside, 2)}°", wall.To, 2);
            }
            else if (!last) Say("taken as square", wall.To, 2);
            foreach (var opening in wall.Run.Openings) Say(opening.Words, wall.At(opening.At + opening.Width / 2), 2);
        }
        foreach (var lining in view.Linings.Where(p => p.Kind == PartKind.Apron))
        {
            // The nosing on it has the same number.
            var box = Footprint.Of(lining).Bounds;
            Say($"{lining.Mark}, LN{lining.Mark[2..]}", box.Centre, 2);
        }
        if (view.Well is { } well) Say("edge of the well", Free(view, well), 1.5);
        foreach (var above in view.Report.Headroom?.Above ?? [])
            if (view.Contour(above, view.Report.HeadroomWanted ?? 2000, view.Bounds) is { } contour) Say($"{above.Name} {view.Stair.Units.Print(view.Report.HeadroomWanted ?? 2000, 0)} high", contour.A.Towards(contour.B, 0.3), 1.5);
        Say("up", view.Stair.Plan.Riser(1).Walking, 2);
        return marks;

        void Say(string words, Point2 near, double gap)
        {
            if (placer.Place(words, place.Map(near), lettering.Words, gap: gap) is { } label) marks.AddRange(label.Marks.Select(m => m is TextMark text ? text with { Knockout = true } : m));
        }
    }

    /// <summary>The middle of the edge that lies furthest from any wall.</summary>
    private static Point2 Free(RoomView view, Path2 well) => Enumerable.Range(0, well.EdgeCount).Select(i => well.Edge(i).From.Towards(well.Edge(i).To, 0.5))
        .MaxBy(p => view.Walls.Select(w => Path2.Polyline(w.From, w.To).DistanceTo(p)).DefaultIfEmpty(0).Min());

    private static IEnumerable<string> Notes(RoomView view)
    {
        var (survey, report) = (view.Stair.Job.Survey, view.Report);
        yield return $"Height {view.Stair.Units.Print(survey.Height)}: {Several(view.Stair.Units, survey.FloorToFloor)} measured"
            + (survey.UpperFinish == 0 && survey.LowerFinish == 0 ? "" : $", {view.Stair.Units.Print(survey.UpperFinish)} to come above, {view.Stair.Units.Print(survey.LowerFinish)} below");
        if (view.Frame.From is { } from) yield return $"First riser {view.Stair.Units.Print(from)} from the beginning of {view.Walls[survey.Place.Wall - 1].Name}";
        if (survey.Well is { } well)
            yield return (well.IsRectangle ? $"Well {view.Stair.Units.Print(well.Length.Mean)} × {view.Stair.Units.Print(well.Width.Mean)}" : $"Well of {Number.Print(well.Corners.Count, 0)} corners") + $", trimmer {view.Stair.Units.Print(well.Trimmer.Mean)} deep";
        foreach (var found in report.Headroom?.Under ?? []) yield return $"Headroom {view.Stair.Units.Print(found.Least, 0)}, {Stairs.Headroom.HeadroomWords.Where(view.Stair.Plan, found)}";
        foreach (var edge in report.WellLonger) yield return $"For {view.Stair.Units.Print(report.HeadroomWanted ?? 0, 0)}: well {view.Stair.Units.Print(edge.By)} longer {Stairs.Headroom.HeadroomWords.Towards(view.Stair.Plan, edge)}";
        foreach (var gap in report.Scribing) yield return $"{gap.String} to {gap.Name}: gap up to {view.Stair.Units.Print(gap.Widest)} at {view.Stair.Units.Print(gap.S, 0)} along, {view.Stair.Units.Print(gap.Z, 0)} up";
        foreach (var certain in report.Certainty(view.Stair.Kit).Where(c => c.Verdict != CutVerdict.Safe && c.Limit.Length > 0)) yield return Sentence.Begin($"{certain.What}: {certain.Words}");
    }

    private static string Several(Units units, IEnumerable<double> readings) => string.Join(", ", readings.Select(r => units.Print(r)));
}
