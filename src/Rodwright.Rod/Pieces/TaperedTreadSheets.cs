using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>A sheet for each tapered tread: its true shape on the square of board it is set out on, coordinates, glue-up, and what was measured on it.</summary>
internal static class TaperedTreadSheets
{
    private const double Step = 50; // boards to set out on come in these steps
    private const double Margin = 20; // of board left all round

    public static IEnumerable<Sheet> Make(RodJob rod) =>
        rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread).Select(p => Sheet(rod, p));

    /// <summary>The smallest board in steps of 50 that holds the outline with 20 all round, nosing along one edge: length and width.</summary>
    public static (double Length, double Width) SetOutOn(Part part) => (Up(part.Blank.Length), Up(part.Blank.Width));

    /// <summary>That board, measured as <see cref="TreadView"/> measures.</summary>
    public static Box2 Square(Part part)
    {
        var (length, width) = SetOutOn(part);
        return new(-Margin, part.Blank.Corner.Y - Margin, length - Margin, part.Blank.Corner.Y - Margin + width);
    }

    private static double Up(double size) => Math.Ceiling((size + 2 * Margin - Tolerance.Joint) / Step) * Step;

    private static Sheet Sheet(RodJob rod, Part part)
    {
        var view = new TreadView(rod.Stair, part);
        var (length, width) = SetOutOn(part);
        var square = Square(part);
        var start = SheetStart.For(rod,
            new($"tread-{Number.Print(part.Step, 0)}", $"Tapered tread {part.Mark}", part.Name + ", tapered", part.Mark, "Face side up"),
            l => new(length, width, l.OrdinateStrip(10), 3, TableStrip(l, view.Corners.Length), l.OrdinateStrip(10)));
        // Low in its view, so that what paper is left lies together above it.
        var place = new Placement(start.Scale, new(square.Centre.X, square.MinY), new((start.View.MinX + start.Need.Left + start.View.MaxX - start.Need.Right) / 2, start.View.MinY + start.Need.Bottom));
        var marks = new List<Mark> { place.Stroke(Path2.Rectangle(square.MinX, square.MinY, square.MaxX, square.MaxY), Pens.Rule, Layer.Construction) };
        var figures = view.Ordinates(place, place.Map(square), start.Lettering, letters: true);
        var y = start.View.MaxY;
        foreach (var table in PiecePanel.Across(start.View.Width, start.Lettering.Words, ["Corner", "along", "up"],
            [.. view.Corners.Select((p, i) => new[] { TreadView.Letter(i), rod.Units.Print(p.X), rod.Units.Print(p.Y) })]))
        {
            var piece = table.Draw(new(start.View.MinX, y), y - start.View.MinY);
            marks.AddRange(piece.Marks);
            y -= piece.Height + 2;
        }
        var narrow = new NarrowEnd(rod.Stair, part, view, place.Map(square), Above(place.Map(square), y), start.Scale, start.Lettering);
        marks.AddRange(view.Draw(place, start.Lettering, letters: true, figures, i => !narrow.Corners.Contains(i)));
        marks.AddRange(figures);
        marks.AddRange(narrow.Draw(start.Lettering));
        marks.AddRange(PiecePanel.Draw(start, rod.Stair, [part.Id], Words(rod, part, length, width)));
        return start.Finish(marks);
    }

    private static Box2 Above(Box2 square, double below) => new(square.MinX, square.MaxY + 8, square.MaxX, Math.Max(square.MaxY + 8, below - 3));

    /// <summary>Paper for the table of corners above the view: three rows, or six where small paper breaks it.</summary>
    private static double TableStrip(SheetLettering lettering, int corners)
    {
        var tables = lettering.Figures < 3 && corners > 8 ? 2 : 1;
        return tables * (3 * (lettering.Words + 2.6) + 3) + 3;
    }

    private static string Words(RodJob rod, Part part, double length, double width)
    {
        var practice = rod.Stair.Job.Practice;
        var blank = part.Blank;
        var glue = GlueUp.Of(part, practice);
        var onNewel = rod.Stair.Kit.Joints.Any(j => j.Male == part.Id && rod.Stair.Kit.Find(j.Female).Kind == PartKind.Newel);
        var words = $"Set out on a board {rod.Units.Print(length, 0)} by {rod.Units.Print(width, 0)}: nosing {rod.Units.Print(Margin - part.Blank.Corner.Y)} up, left end {rod.Units.Print(Margin, 0)} in. "
            + $"Smallest board {rod.Units.Print(blank.Length)} by {rod.Units.Print(blank.Width)} by {rod.Units.Print(blank.Thickness)}, grain along the nosing"
            + (glue.Strips > 1 ? $", {glue.InWords(rod.Units)}. " : ". ")
            + $"Housed {rod.Units.Print(practice.Housing)} in strings" + (onNewel ? $", {rod.Units.Print(practice.NewelHousing)} in the newel. " : ". ")
            + $"Riser face {rod.Units.Print(practice.Nosing)} behind the nosing, edge rounded {rod.Units.Print(practice.Tread / 2)}. ";
        if (rod.Stair.Plan.TaperedSteps.FirstOrDefault(s => s.Number == part.Step) is not { } step) return words;
        return words
            + $"Going on the walking line {rod.Units.Print(step.GoingChord)} straight, {rod.Units.Print(step.GoingArc)} along it. "
            + $"Narrow end {rod.Units.Print(step.NarrowAlongFaces)} along the faces, {rod.Units.Print(step.NarrowStraight)} straight, {rod.Units.Print(step.NarrowTreadWidth)} with the nosing. "
            + $"Wide end {rod.Units.Print(step.Wide)}. Taper {Number.Print(step.Taper.Degrees, 2)}°.";
    }
}
