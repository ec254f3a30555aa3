using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Pictorial;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Timber;

/// <summary>What a customer looks at: the stair as it stands, and beside it where it lies in plan; beneath it on upright paper.</summary>
internal static class QuotationPictures
{
    private const double Words = 5, Gap = 8;

    public static IEnumerable<Mark> Draw(Stair stair, Box2 box)
    {
        var isUpright = box.Height > box.Width;
        var (first, second) = isUpright
            ? (box with { MinY = box.MinY + 0.36 * box.Height + Gap }, box with { MaxY = box.MinY + 0.36 * box.Height })
            : (box with { MaxX = box.MaxX - 0.4 * box.Width - Gap }, box with { MinX = box.MaxX - 0.4 * box.Width });
        var picture = Picture.Of(KitSolids.Of(stair.Kit, Picture.Chord), Eyes.Whole(stair));
        // A picture is measured by nobody: it is as large as there is room for.
        var seen = new Placement(Scale.OneTo(Math.Max(picture.Bounds.Width / first.Width, picture.Bounds.Height / first.Height)), picture.Bounds.Centre, first.Centre);
        foreach (var mark in picture.Draw(seen)) yield return mark;
        var plan = new PlanView(stair);
        // Walls run on a little past what is set out.
        var lies = Fit(stair, plan.Bounds.Grown(60), second with { MinY = second.MinY + Words });
        foreach (var mark in PlanMarks.Draw(plan, lies)) yield return mark;
        var foot = lies.Map(new Point2(plan.Bounds.Centre.X, plan.Bounds.MinY));
        yield return new TextMark(new(second.Centre.X, Math.Max(second.MinY + 0.6, foot.Y - 2 * Words)), $"plan, {lies.Scale.Told(stair.Units)}", 2.5, Layer.Lettering, HorizontalAnchor.Middle);
    }

    /// <summary>At the largest usual scale that fits, in the middle.</summary>
    private static Placement Fit(Stair stair, Box2 bounds, Box2 room)
    {
        var scales = SheetScales.All(stair.Units);
        var scale = scales.FirstOrDefault(s => bounds.Width * s.Factor <= room.Width && bounds.Height * s.Factor <= room.Height, scales[^1]);
        return new(scale, bounds.Centre, room.Centre);
    }
}
