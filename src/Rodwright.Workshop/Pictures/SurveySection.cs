using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Rod.Views;

namespace Rodwright.Workshop.Pictures;

/// <summary>The section along the walking line for the screen: the heights that were measured, what hangs over the stair, and where the headroom is least over its whole width.</summary>
public static class SurveySection
{
    private const double Width = 120;
    private const double Left = 13; // paper for the height from floor to floor, mm
    private const double Edge = 3.5;
    private const string Floors = "survey.floorToFloor";

    /// <summary>The section, drawn as on its sheet, with the tape of the height at hand and what was refused where it was read.</summary>
    public static Picture Of(RoomView room, SectionView view, SurveyAsk ask)
    {
        var ratio = Math.Clamp(Math.Max(view.Bounds.Width / (Width - Left - Edge), view.Bounds.Height / (108 - 2 * Edge)), 1, 1000);
        var height = Math.Max(56, view.Bounds.Height / ratio + 2 * Edge);
        var place = Placement.Centred(view.Bounds, new(Left, Edge, Width - Edge, height - Edge), Scale.OneTo(ratio));
        List<Mark> marks = [.. SectionMarks.Stair(view, place), .. SectionMarks.Floors(view, place), .. SectionMarks.Above(view, place), .. FloorToFloor(view, place, ask), .. Least(view, place), .. AtHand(room, view, place, ask)];
        marks.AddRange(Labels(room, view, place, ask, marks, new(1, 1, Width - 1, height - 1)));
        return new(Width, height, [.. marks, .. Areas(view, place)]);
    }

    private static IEnumerable<Mark> FloorToFloor(SectionView view, Placement place, SurveyAsk ask)
    {
        var survey = view.Stair.Job.Survey;
        var x = place.Map(new Point2(view.Bounds.MinX, 0)).X - 3;
        var (a, b) = (new Point2(x, place.Map(Point2.Origin).Y), new Point2(x, place.Map(new Point2(0, survey.Height)).Y));
        var refused = ask.At(Floors);
        var of = refused is not null ? TapeMarks.Disagrees : ask.Reading == Floors ? TapeMarks.AtHand : null;
        foreach (var mark in TapeMarks.Draw(a, b, of)) yield return mark;
        foreach (var mark in TapeMarks.Ticks(a, new(0, 1), (refused?.Values ?? []).Select(place.Map))) yield return mark;
        var to = b.Y - a.Y;
        // Feet and inches are long: beside the finished height there is no room for the spread.
        var isFinished = survey.LowerFinish != 0 || survey.UpperFinish != 0;
        var figure = refused?.Words(view.Stair.Units) ?? view.Stair.Units.Print(survey.FloorToFloor.Average(), 1) + (survey.FloorToFloor.Length > 1 && !(isFinished && view.Stair.Units.IsInches) ? $" ({view.Stair.Units.Print(survey.Spread)} apart)" : "");
        if (isFinished) figure += $", finished {view.Stair.Units.Print(survey.Height, 1)}";
        foreach (var word in TapeMarks.Along(a, a + new Vector2(0, to), new(-1, 0), ("floor to floor", figure), refused is null ? null : TapeMarks.Disagrees)) yield return word;
    }

    /// <summary>Plumb between the pitch line and what is above, with a ring at either end.</summary>
    private static IEnumerable<Mark> Least(SectionView view, Placement place)
    {
        if (view.LeastAcross is not { } least || least.High > view.Bounds.MaxY) yield break;
        var (foot, head) = (place.Map(new Point2(least.S, least.Low)), place.Map(new Point2(least.S, least.High)));
        yield return StrokeMark.Line(foot, head, PicturePens.Measured, Layer.Dimension, "least");
        foreach (var end in new[] { foot, head }) yield return new StrokeMark(Path2.Circle(end, 1.1), PicturePens.Measured, Layer.Dimension, "least");
        // Beside the walking line the underside lies higher or lower than on it: a piece of it is drawn where it counts.
        yield return StrokeMark.Line(head - new Vector2(4, 0), head + new Vector2(4, 0), PicturePens.Measured, Layer.Site, "least");
    }

    private static IEnumerable<Mark> AtHand(RoomView room, SectionView view, Placement place, SurveyAsk ask)
    {
        foreach (var refused in ask.Refused.Where(r => r.Path != Floors))
        {
            if (SurveyTapes.Upright(room, view, refused.Path) is not { } tape) continue;
            var (from, to) = (place.Map(tape.From), place.Map(tape.To));
            foreach (var mark in TapeMarks.Draw(from, to, TapeMarks.Disagrees)) yield return mark;
            foreach (var mark in TapeMarks.Ticks(from, (to - from).Unit, refused.Values.Select(place.Map))) yield return mark;
        }
        if (ask.Reading is { } path && path != Floors && ask.At(path) is null && SurveyTapes.Upright(room, view, path) is { } hand)
            foreach (var mark in TapeMarks.Draw(place.Map(hand.From), place.Map(hand.To), TapeMarks.AtHand)) yield return mark;
    }

    private static List<Mark> Labels(RoomView room, SectionView view, Placement place, SurveyAsk ask, List<Mark> drawn, Box2 paper)
    {
        var marks = new List<Mark>();
        var survey = view.Stair.Job.Survey;
        var placer = new LabelPlacer(paper);
        placer.Avoid(drawn);
        foreach (var refused in ask.Refused.Where(r => r.Path != Floors))
            if (SurveyTapes.Upright(room, view, refused.Path) is { } tape) Say(refused.Words(view.Stair.Units), tape.From.Towards(tape.To, 0.5), TapeMarks.Disagrees);
        if (view.LeastAcross is { } least && least.High <= view.Bounds.MaxY)
            Say(least.High < least.Low ? $"✗ {view.Stair.Units.Print(least.Low - least.High, 0)} in {view.Headroom!.Least!.Under.Name}" : $"least headroom {view.Stair.Units.Print(least.High - least.Low, 0)}{(IsBeside(view) ? ", beside the line" : "")}", new(least.S, (least.Low + least.High) / 2), "least");
        if (survey.Well is { } well) Say($"trimmer {view.Stair.Units.Print(well.Trimmer.Mean, 0)}", new((view.Arrival + view.Bounds.MaxX) / 2, survey.Height - well.Trimmer.Mean));
        Say("upper floor", new((view.Arrival + view.Bounds.MaxX) / 2, survey.Height));
        Say("floor", new(view.Bounds.MinX + 200, 0));
        foreach (var (above, points) in view.Above.Where(x => !x.Of.IsTrimmer).GroupBy(x => x.Of).Select(g => (g.Key, g.MaxBy(x => x.Points[^1].X - x.Points[0].X).Points)))
            if (points[points.Length / 2].Y < view.Bounds.MaxY) Say(above.Name, points[points.Length / 2]);
        return marks;

        void Say(string words, Point2 near, string? of = null)
        {
            if (placer.Place(words, place.Map(near), TapeMarks.Letters, gap: 2, of: of) is { } label) marks.AddRange(label.Marks.Select(m => m is TextMark text ? text with { Knockout = true } : m));
        }
    }

    /// <summary>Whether it is least away from the line the section is cut along.</summary>
    private static bool IsBeside(SectionView view) => view.Least is { } on && view.LeastAcross is { } least && on.High - on.Low > least.High - least.Low + 2;

    private static IEnumerable<Mark> Areas(SectionView view, Placement place)
    {
        var survey = view.Stair.Job.Survey;
        var (low, high) = (place.Map(new Point2(view.Bounds.MinX, 0)), place.Map(new Point2(view.Bounds.MinX, survey.Height)));
        yield return new FillMark([Path2.Rectangle(0, low.Y, low.X, high.Y)], 1, Layer.Hit, Floors);
        if (survey.Well is not { } well) yield break;
        var (floor, under) = (place.Map(new Point2(view.Arrival, survey.Height)), place.Map(new Point2(view.Bounds.MaxX, survey.Height - well.Trimmer.Mean)));
        yield return new FillMark([Path2.Rectangle(floor.X, under.Y - 3, under.X, floor.Y + 3)], 1, Layer.Hit, "survey.well.trimmer");
    }
}
