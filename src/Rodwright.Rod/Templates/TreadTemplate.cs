using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>A tapered tread at full size.</summary>
internal static class TreadTemplate
{
    public static Sheet Sheet(RodJob rod, Part part)
    {
        var drawing = new TemplateDrawing(rod.Units);
        var view = new TreadView(rod.Stair, part);
        var place = new Placement(Scale.Full, Point2.Origin, Point2.Origin);
        drawing.Add(view.Draw(place, new SheetLettering(3.5, 3.5, 10, 7) { Units = rod.Units }, letters: false));
        var glue = GlueUp.Of(part, rod.Stair.Job.Practice);
        drawing.Notes($"{part.Mark}  {part.Name}",
            $"Face side up, up the stair is up the sheet. Board {rod.Units.Print(part.Blank.Length)} by {rod.Units.Print(part.Blank.Width)} by {rod.Units.Print(part.Blank.Thickness)}, grain along the nosing"
            + (glue.Strips > 1 ? $", glued up from {glue.InWords(rod.Units)}" : "") + ". Hidden lines: riser face below, faces of strings and newel.", Math.Max(part.Blank.Length, 150));
        return TrueSheet.Of(rod, new($"template-{part.Id}", $"Template, tapered tread {part.Mark}", "tapered tread", part.Mark, "Full size"), drawing.Marks);
    }
}
