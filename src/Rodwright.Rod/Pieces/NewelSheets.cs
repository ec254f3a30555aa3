using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Stairs.Findings;

namespace Rodwright.Rod.Pieces;

/// <summary>
/// A sheet for each newel: its four faces side by side in the order one turns it, S E N W; on small paper two and two. The scale is kept at 1:5 or larger
/// where the paper allows, by leaving plain lengths out.
/// </summary>
internal static class NewelSheets
{
    public static IEnumerable<Sheet> Make(RodJob rod) => rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.Newel).SelectMany(p => Of(rod, p));

    private static IEnumerable<Sheet> Of(RodJob rod, Part part)
    {
        var view = new NewelFaceView(rod.Stair.Kit, part, NewelStretches.Of(part));
        var (count, start) = Begin(rod, view);
        return Enumerable.Range(0, 4 / count).Select(i => Sheet(rod, view, start, [.. Enumerable.Range(i * count, count)], 4 / count > 1 ? i : null));
    }

    /// <summary>How many faces go on a sheet, and the sheet begun: four at 1:5 or better, else two, else smaller.</summary>
    private static (int Count, SheetStart Start) Begin(RodJob rod, NewelFaceView view)
    {
        foreach (var limit in (double[])[5, 10])
        {
            foreach (var count in (int[])[4, 2])
            {
                foreach (var scale in Scale.UsualIn(rod.Units).Where(s => s.Ratio >= Math.Max(2, rod.Style.Scale?.Ratio ?? 2) && s.Ratio <= Math.Max(limit, rod.Style.Scale?.Ratio ?? 0)))
                {
                    var start = SheetStart.At(rod, Words(view.Part), l => Need(new(rod.Stair, view, l), view, l, count), scale);
                    if (start.Fits) return (count, start);
                }
            }
        }
        return (2, SheetStart.For(rod, Words(view.Part), l => Need(new(rod.Stair, view, l), view, l, 2)));
    }

    private static SheetWords Words(Part part) => new(part.Id, $"{Sentence.Begin(part.Name)} {part.Mark}", part.Name + ", four faces", part.Mark, "Turned S E N W");

    private static ViewNeed Need(NewelFaces faces, NewelFaceView view, SheetLettering lettering, int count) => new(
        count * view.Part.Blank.Width, view.Stretches.Length, NewelFaces.Beside, count * faces.Column, lettering.Mark + 12, faces.Below + view.Stretches.Breaks);

    private static Sheet Sheet(RodJob rod, NewelFaceView view, SheetStart start, int[] faces, int? page)
    {
        var (part, f, lettering) = (view.Part, start.Scale.Factor, start.Lettering);
        var drawing = new NewelFaces(rod.Stair, view, lettering);
        var pitch = part.Blank.Width * f + drawing.Column;
        var used = NewelFaces.Beside + faces.Length * pitch;
        var left = start.View.MinX + (start.View.Width - used) / 2 + NewelFaces.Beside;
        var length = view.Stretches.Length * f + view.Stretches.Breaks;
        var room = start.View.Height - start.Need.Top - drawing.Below - length;
        var marks = new List<Mark>(drawing.Draw(faces, new(left, start.View.MinY + drawing.Below + room / 2), pitch, f));
        marks.AddRange(PiecePanel.Draw(start, rod.Stair, [part.Id], Notes(rod, part, drawing.FaceSide, drawing.FaceEdge), NewelPlan.Width));
        marks.AddRange(NewelPlan.Draw(rod.Stair.Kit, part, new(start.Panel.MinX + Math.Min(start.Panel.Height, 42) + 4, start.Panel.MinY), start.Panel.Height, start.Lettering));
        var sheet = start.Finish(marks);
        return page is not { } n ? sheet : sheet with
        {
            Name = $"{sheet.Name}-{Number.Print(n + 1, 0)}",
            Title = $"{sheet.Title}, faces {string.Join(' ', faces.Select(i => part.Faces[i].Looks))}",
            Block = sheet.Block! with { Piece = $"{Sentence.Begin(part.Name)}, faces {string.Join(" and ", faces.Select(i => part.Faces[i].Looks))}" },
        };
    }

    private static string Notes(RodJob rod, Part part, int faceSide, int faceEdge)
    {
        var depths = part.Cuts.GroupBy(c => (c.Kind, Depth: rod.Units.Print(c.Depth)))
            .Select(g => $"{WordOf(g.Key.Kind)} {g.Key.Depth} deep{(g.Key.Kind == CutKind.Bore ? $", ø{rod.Units.Print(g.First().Shape.Bounds.Width)}" : "")}");
        return $"Heights up from the foot, distances from the left arris of each face as looked at. {rod.Units.Print(part.Blank.Width)} square, {rod.Units.Print(part.Blank.Length)} long; "
            + $"{Foot(rod.Units, part.FaceSide.Frame.Origin.Z)}. {Sentence.Begin(string.Join("; ", depths.Distinct()))}. "
            + $"Face side {part.Faces[faceSide].Looks}, face edge {part.Faces[faceEdge].Looks}. Breaks leave out plain wood; FFL: finished floor.";
    }

    private static string Foot(Units units, double above) => Math.Abs(above) < Tolerance.Joint ? "foot on the lower finished floor"
        : $"foot {units.Print(Math.Abs(above))} {(above > 0 ? "above" : "below")} the lower finished floor";

    private static string WordOf(CutKind kind) => kind switch
    {
        CutKind.Housing => "housings", CutKind.Mortice => "mortices", CutKind.Haunch => "haunches", CutKind.Bore => "peg holes", CutKind.Notch => "notch", CutKind.Split => "the half split off",
        _ => "cuts",
    };
}
