using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Solids;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Pictorial;

/// <summary>Sheets of pictures with hidden lines removed: the whole stair, and its newels each from two sides.</summary>
public static class PictorialSheets
{
    private const double Beside = 8; // paper between two newels, mm
    private const int Together = 4; // newels on a sheet

    /// <summary>The stair, pictorial.</summary>
    public static IReadOnlyList<Sheet> Whole(RodJob rod)
    {
        var picture = Picture.Of(KitSolids.Of(rod.Stair.Kit, Picture.Chord), Eyes.Whole(rod.Stair));
        var start = SheetStart.For(rod, new("pictorial", "The stair, pictorial", "the whole stair, pictorial", Note: "Do not measure from this picture"),
            _ => new(picture.Bounds.Width, picture.Bounds.Height, 2, 2, 2, 2), finer: true);
        const string words = "The stair as it stands, seen over its open side with the bottom step towards you. All three main directions are shortened alike (isometric): it shows how the pieces stand, "
            + "sizes are on the other sheets. Heavy lines: where a piece turns out of sight.";
        return [start.Finish([.. picture.Draw(start.Place(picture.Bounds)), .. PiecePanel.Draw(start, rod.Stair, [], words)])];
    }

    /// <summary>The newels, every one turned to show two of its faces and then the other two; none when the stair has no newel.</summary>
    public static IReadOnlyList<Sheet> Newels(RodJob rod)
    {
        var solids = KitSolids.Of(rod.Stair.Kit with { Parts = [.. rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel)] }, Picture.Chord);
        return [.. solids.Chunk(Together).Select((some, i) => Newels(rod, some, i))];
    }

    private static Sheet Newels(RodJob rod, PlacedSolid[] newels, int page)
    {
        var pictures = newels.SelectMany(n => new[] { 0, 2 }.Select(face => (
            Newel: n.Part, Faces: $"{n.Part.Faces[face].Looks} {n.Part.Faces[face + 1].Looks}", Picture: Picture.Of([n], Eyes.Newel(n.Part, face))))).ToList();
        var (width, height) = (pictures.Max(p => p.Picture.Bounds.Width), pictures.Max(p => p.Picture.Bounds.Height));
        var number = page == 0 ? "" : $"-{Number.Print(page + 1, 0)}";
        var title = page == 0 ? "Newels, pictorial" : $"Newels, pictorial, {Number.Print(page + 1, 0)}";
        var start = SheetStart.For(rod, new($"newels-pictorial{number}", title, "newels, pictorial", Note: "Do not measure from this picture"),
            l => new(pictures.Count * width, height, 0, pictures.Count * Beside, 2, Foot(l)), finer: true);
        var (f, l) = (start.Scale.Factor, start.Lettering);
        var pitch = Math.Min(start.View.Width / pictures.Count, 3 * (width * f + Beside));
        var left = start.View.Centre.X - pitch * pictures.Count / 2;
        var marks = new List<Mark>();
        foreach (var (newel, faces, picture) in pictures)
        {
            var middle = left + pitch / 2;
            var box = picture.Bounds;
            marks.AddRange(picture.Draw(new(start.Scale, new(box.Centre.X, box.MinY), new(middle, start.View.MinY + Foot(l)))));
            var (mark, markHeight) = TextFit.Within(newel.Mark, pitch - 2, l.Mark, bold: true);
            marks.Add(new TextMark(new(middle, start.View.MinY + l.Figures + 4), mark, markHeight, Layer.Lettering, HorizontalAnchor.Middle, bold: true));
            var (looks, looksHeight) = TextFit.Within(faces, pitch - 2, l.Figures);
            marks.Add(new TextMark(new(middle, start.View.MinY + 1), looks, looksHeight, Layer.Lettering, HorizontalAnchor.Middle));
            left += pitch;
        }
        const string words = "Every newel twice: turned so that faces S and E are seen, then faces N and W. Feet stand on one line here, not as in the stair. Sizes are on the newels' own sheets.";
        return start.Finish([.. marks, .. PiecePanel.Draw(start, rod.Stair, [.. newels.Select(n => n.Part.Id)], words)]);

        static double Foot(SheetLettering lettering) => lettering.Mark + lettering.Figures + 8;
    }
}
