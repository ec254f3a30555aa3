using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>The pitch board, a right triangle of rise and going, with the strip that carries it the margin away from the string's upper edge.</summary>
internal static class PitchBoard
{
    /// <summary>The triangle, right angle below the pitch line: pitch points at (0, 0) and (going, rise).</summary>
    public static Path2 Triangle(RodJob rod) => Path2.Polygon(Point2.Origin, new(rod.Stair.Plan.Going, 0), new(rod.Stair.Plan.Going, rod.Stair.Plan.Rise));

    /// <summary>The margin strip along the triangle's long edge.</summary>
    public static Path2 Strip(RodJob rod)
    {
        var (a, b) = (Point2.Origin, new Point2(rod.Stair.Plan.Going, rod.Stair.Plan.Rise));
        var across = rod.Stair.Job.Practice.Margin * (b - a).Unit.Left;
        return Path2.Polygon(a, b, b + across, a + across);
    }

    public static Sheet Sheet(RodJob rod)
    {
        var (plan, margin) = (rod.Stair.Plan, rod.Stair.Job.Practice.Margin);
        var (a, b) = (Point2.Origin, new Point2(plan.Going, plan.Rise));
        var along = (b - a).Unit;
        var drawing = new TemplateDrawing(rod.Units);
        drawing.Tint(Strip(rod));
        drawing.Cut(Strip(rod));
        drawing.Cut(Triangle(rod));
        drawing.ChainBelow(0, a, new(plan.Going, 0));
        drawing.ChainRight(plan.Going, new Point2(plan.Going, 0), b);
        drawing.Add(AngleDimension.Draw(a, default, plan.Pitch, 42));
        var style = DimensionStyle.Usual with { Units = rod.Units };
        drawing.Add(ChainDimension.Between(b, b + margin * along.Left, -10, margin, style));
        drawing.Add(ChainDimension.Between(a + margin * along.Left, b + margin * along.Left, 10, (b - a).Length, style));
        var turn = Angle.FromRadians(along.Direction);
        var middle = a.Towards(b, 0.5);
        drawing.Words(middle + margin / 2 * along.Left, "margin strip: this edge to the string's upper edge", Math.Clamp(margin / 10, 2.5, 5), turn: turn);
        drawing.Words(new(plan.Going * 0.72, plan.Rise * 0.32), "pitch board", Math.Clamp(plan.Going / 45, 2.5, 5), bold: true);
        drawing.Notes("Pitch board",
            $"Rise {plan.Units.Print(plan.Rise, 2)}, going {plan.Units.Print(plan.Going, 2)}, pitch {Number.Print(plan.Pitch.Degrees, 2)}°. "
            + "Step it along the margin line: upright edge on the riser faces, level edge on the tread tops; its long edge joins the pitch points.",
            Math.Max(plan.Going + margin, 150));
        return TrueSheet.Of(rod, new("template-pitch-board", "Template, pitch board and margin strip", "pitch board and margin strip", "", "Full size"), drawing.Marks);
    }
}
