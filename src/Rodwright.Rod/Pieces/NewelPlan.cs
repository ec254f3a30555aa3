using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pieces;

/// <summary>A newel seen from above, as it stands in the stair's plan: its faces named, and at each what enters it.</summary>
internal static class NewelPlan
{
    /// <summary>Room it takes, mm of paper.</summary>
    public const double Width = 52;

    private const double Half = 7;

    /// <summary>The marks; the lower left corner of its room, and the room's height.</summary>
    public static IEnumerable<Mark> Draw(Kit kit, Part part, Point2 corner, double height, SheetLettering lettering)
    {
        var middle = corner + new Vector2(Width / 2 - 2, height / 2);
        yield return new StrokeMark(Path2.Rectangle(middle.X - Half, middle.Y - Half, middle.X + Half, middle.Y + Half), Pens.Visible, Layer.Visible, part.Id);
        for (var i = 0; i < part.Faces.Length; i++)
        {
            var w = part.Faces[i].Frame.W;
            var way = new Vector2(w.X, w.Y);
            yield return new TextMark(middle + (Half - 2.4) * way, part.Faces[i].Looks, 2.5, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, bold: true);
            var words = ShortMarks.Joined(part.Cuts.Where(c => c.Face == i && c.Kind is CutKind.Housing or CutKind.Mortice && c.Face == i).Select(c => ShortMarks.Of(c, kit)));
            if (part.Cuts.Any(c => c.Face == i && c.Kind == CutKind.Notch)) words = "trimmer";
            if (part.Cuts.Any(c => c.Face == i && c.Kind == CutKind.Split)) words = "wall";
            if (words.Length == 0) continue;
            var sideways = Math.Abs(way.X) > 0.5;
            var lines = FlowText.Wrap(words, sideways ? Width / 2 - Half - 4 : Width - 6, lettering.Words > 2.5 ? 2.5 : lettering.Words);
            for (var n = 0; n < lines.Count; n++)
            {
                var at = middle + (Half + 2) * way;
                var y = sideways ? at.Y + ((lines.Count - 1) / 2.0 - n) * 4.2 : way.Y > 0 ? at.Y + 1.2 + (lines.Count - 1 - n) * 4.2 : at.Y - 1.2 - n * 4.2;
                yield return new TextMark(new(at.X, y), lines[n], 2.5, Layer.Lettering,
                    !sideways ? HorizontalAnchor.Middle : way.X > 0 ? HorizontalAnchor.Start : HorizontalAnchor.End, VerticalAnchor.Middle);
            }
        }
    }
}
