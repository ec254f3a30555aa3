using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>The templates a string's housings are marked from, made by the same shapes as the strings themselves.</summary>
internal static class HousingTemplates
{
    private static readonly HousingShapes.Reach Free = new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>Tread and wedge of a straight step: s = 0 at the riser face below, z = 0 at the tread's top.</summary>
    public static HousingShapes.Housing TreadShape(RodJob rod)
    {
        var (practice, going) = (rod.Stair.Job.Practice, rod.Stair.Plan.Going);
        var back = going + (practice.RiserOnTread ? practice.Riser : 0);
        return HousingShapes.Tread(-practice.Nosing, back, new(-practice.Nosing, 1), 0, (Math.Max(going - practice.TreadWedge.Length, practice.Riser), going + practice.Riser + practice.TreadWedge.RunOn), Free, practice);
    }

    /// <summary>Riser and wedge of a straight step: s = 0 at the riser's face, z = 0 at the top of the tread it rises from.</summary>
    public static HousingShapes.Housing RiserShape(RodJob rod)
    {
        var (practice, rise) = (rod.Stair.Job.Practice, rod.Stair.Plan.Rise);
        return HousingShapes.Riser(0, practice.Riser, practice.RiserOnTread ? 0 : -practice.Tread, rise - practice.Tread,
            practice.RiserOnTread ? 0 : practice.RiserWedge.RunOn, true, Free, practice);
    }

    internal static Sheet Tread(RodJob rod)
    {
        var practice = rod.Stair.Job.Practice;
        var going = rod.Stair.Plan.Going;
        var shape = TreadShape(rod);
        var drawing = new TemplateDrawing(rod.Units);
        drawing.Tint(shape.Shape);
        var box = shape.Shape.Bounds;
        drawing.Line(Pens.Construction, Layer.Construction, new(-practice.Nosing - 10, 0), new(box.MaxX + 10, 0));
        foreach (var s in (double[])[0, going])
            drawing.Line(Pens.Centre, Layer.Centre, new(s, box.MinY - 6), new(s, 16));
        drawing.Path(shape.Seat, Pens.Hidden, Layer.Hidden);
        drawing.Cut(shape.Shape);
        drawing.Words(new(going * 0.45, -practice.Tread / 2), "tread", Math.Min(5, practice.Tread * 0.4));
        var wedge = shape.Shape.Vertices.Select(v => v.At).Where(p => p.Y < -practice.Tread - Tolerance.Same).OrderBy(p => p.X).ToList();
        drawing.ChainAbove(16, new Point2(-practice.Nosing, 0), new(0, 16), new(going, 16));
        drawing.ChainLeft(box.MinX, new Point2(-practice.Nosing + practice.Tread / 2, 0), new(-practice.Nosing + practice.Tread / 2, -practice.Tread));
        if (wedge.Count >= 2)
        {
            drawing.ChainBelow(box.MinY, new Point2(0, box.MinY - 6), wedge[0], new(going, box.MinY - 6), wedge[^1]);
            drawing.ChainRight(box.MaxX, new Point2(wedge[^1].X, -practice.Tread), wedge[^1]);
        }
        drawing.Notes("Tread and wedge",
            $"Housing {rod.Units.Print(practice.Housing)} deep for straight treads, nosing to the left (turn over for a string that climbs to the left). "
            + "The chain lines are riser faces: lay them on the riser lines, the top edge on the going line. "
            + $"Wedge 1 in {Number.Print(practice.TreadWedge.Taper)}, {rod.Units.Print(practice.TreadWedge.Thin)} at its thin end.", Math.Max(box.Width, 140));
        return TrueSheet.Of(rod, new("template-tread", "Template, tread and wedge", "template, tread and wedge", "", "Full size"), drawing.Marks);
    }

    internal static Sheet Riser(RodJob rod)
    {
        var practice = rod.Stair.Job.Practice;
        var rise = rod.Stair.Plan.Rise;
        var shape = RiserShape(rod);
        var box = shape.Shape.Bounds;
        var drawing = new TemplateDrawing(rod.Units);
        drawing.Tint(shape.Shape);
        foreach (var z in (double[])[0, rise]) drawing.Line(Pens.Centre, Layer.Centre, new(-14, z), new(box.MaxX + 14, z));
        drawing.Line(Pens.Construction, Layer.Construction, new(0, box.MinY - 8), new(0, rise + 8));
        drawing.Path(shape.Seat, Pens.Hidden, Layer.Hidden);
        drawing.Cut(shape.Shape);
        drawing.ChainLeft(-14, new Point2(0, box.MinY), new(0, -practice.Tread), new(-14, 0), new(0, rise - practice.Tread), new(-14, rise));
        var wedge = shape.Shape.Vertices.Select(v => v.At).Where(p => p.X > practice.Riser + Tolerance.Same).OrderBy(p => p.Y).ToList();
        drawing.ChainBelow(box.MinY - 8, new Point2(0, box.MinY), new(practice.Riser, box.MinY), new(box.MaxX, box.MinY));
        if (wedge.Count >= 2) drawing.ChainRight(box.MaxX + 14, wedge[0], wedge[^1]);
        drawing.Notes("Riser and wedge",
            $"Housing {rod.Units.Print(practice.Housing)} deep for straight risers, face to the left (turn over for a string that climbs to the left). "
            + "The chain lines are going lines: lay them on the tread tops, the left edge on the riser line. "
            + $"Wedge 1 in {Number.Print(practice.RiserWedge.Taper)}, {rod.Units.Print(practice.RiserWedge.Thin)} at its thin end.", 140);
        return TrueSheet.Of(rod, new("template-riser", "Template, riser and wedge", "template, riser and wedge", "", "Full size"), drawing.Marks);
    }
}
