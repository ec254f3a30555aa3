using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Sheets;

/// <summary>The stair at a glance: plan and a string in development, side by side at one usual scale.</summary>
internal sealed class CoverPictures
{
    private const double Gap = 8;
    private const double Words = 9; // the words below, and how far walls run on
    private readonly PlanView plan;
    private readonly StringView? strings;

    public CoverPictures(Stair stair, double width, double height)
    {
        plan = new(stair);
        strings = StringView.All(stair, wall: true).Concat(StringView.All(stair, wall: false)).FirstOrDefault();
        var (p, s) = (plan.Bounds, strings?.Bounds ?? new(0, 0, 0, 0));
        Scale = SheetScales.All(stair.Units).FirstOrDefault(
            x => (p.Width + s.Width) * x.Factor <= width - Gap - 24 && Math.Max(p.Height, s.Height) * x.Factor <= height - Words - 8, SheetScales.All(stair.Units)[^1]);
        Height = Math.Max(p.Height, s.Height) * Scale.Factor + Words + 8;
    }

    public Scale Scale { get; }

    /// <summary>Height of the pictures with their words, mm of paper.</summary>
    public double Height { get; }

    public IEnumerable<Mark> Draw(Box2 box)
    {
        var (p, s) = (plan.Bounds.Width * Scale.Factor, (strings?.Bounds.Width ?? 0) * Scale.Factor);
        var spare = (box.Width - p - s) / 3;
        var floor = box.MinY + Words;
        var planAt = new Placement(Scale, new(plan.Bounds.MinX, plan.Bounds.MinY), new(box.MinX + spare, floor));
        foreach (var mark in PlanMarks.Draw(plan, planAt)) yield return mark;
        yield return new TextMark(new(box.MinX + spare + p / 2, box.MinY + 0.6), $"plan, {Scale.Told(plan.Stair.Units)}", 2.5, Layer.Lettering, HorizontalAnchor.Middle);
        if (strings is null) yield break;
        var stringsAt = new Placement(Scale, new(strings.Bounds.MinX, strings.Bounds.MinY), new(box.MinX + 2 * spare + p, floor));
        foreach (var mark in StringMarks.Draw(strings, stringsAt)) yield return mark;
        var name = strings.Title;
        yield return new TextMark(new(box.MinX + 2 * spare + p + s / 2, box.MinY + 0.6), $"{name}, {Scale.Told(plan.Stair.Units)}", 2.5, Layer.Lettering, HorizontalAnchor.Middle);
    }
}
