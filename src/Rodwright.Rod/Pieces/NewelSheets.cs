using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Pieces;

/// <summary>
/// A sheet for each newel: its four faces side by side in the order one turns it, S E N W; on small paper two and two. The scale is kept at 1:5 or larger
/// where the paper allows, by leaving plain lengths out.
/// </summary>
internal static class NewelSheets
{
    private const double Beside = 20; // paper left of the first face for the floors' levels, mm

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
                foreach (var scale in Scale.Usual.Where(s => s.Ratio >= Math.Max(2, rod.Style.Scale?.Ratio ?? 2) && s.Ratio <= Math.Max(limit, rod.Style.Scale?.Ratio ?? 0)))
                {
                    var start = SheetStart.At(rod, Words(view.Part), l => Need(view, l, count), scale);
                    if (start.Fits) return (count, start);
                }
            }
        }
        return (2, SheetStart.For(rod, Words(view.Part), l => Need(view, l, 2)));
    }

    private static SheetWords Words(Part part) => new(part.Id, $"{Upper(part.Name)} {part.Mark}", part.Name + ", four faces", part.Mark, "Turned S E N W");

    private static ViewNeed Need(NewelFaceView view, SheetLettering lettering, int count) => new(
        count * view.Part.Blank.Width, view.Stretches.Length, Beside, count * Column(view, lettering),
        lettering.Mark + 12, Below(view, lettering) + view.Stretches.Breaks);

    /// <summary>Paper right of each face for its heights, mm.</summary>
    private static double Column(NewelFaceView view, SheetLettering lettering) => 16 + Enumerable.Range(0, 4)
        .SelectMany(f => view.HeightStops(f, _ => Point2.Origin)).Max(s => Width(s.Value, s.Note, lettering.Figures));

    /// <summary>Paper below the faces for the distances across, mm.</summary>
    private static double Below(NewelFaceView view, SheetLettering lettering) => 14 + Enumerable.Range(0, 4)
        .SelectMany(f => view.AcrossStops(f, _ => Point2.Origin)).Max(s => Width(s.Value, s.Note, lettering.Figures));

    private static double Width(double value, string note, double height) => Lettering.Width($"{Number.Print(value)}  {note}", height);

    private static Sheet Sheet(RodJob rod, NewelFaceView view, SheetStart start, int[] faces, int? page)
    {
        var (part, f, lettering) = (view.Part, start.Scale.Factor, start.Lettering);
        var side = part.Blank.Width * f;
        var pitch = side + Column(view, lettering);
        var used = Beside + faces.Length * pitch;
        var left = start.View.MinX + (start.View.Width - used) / 2 + Beside;
        var length = view.Stretches.Length * f + view.Stretches.Breaks;
        var room = start.View.Height - start.Need.Top - Below(view, lettering) - length;
        var foot = start.View.MinY + Below(view, lettering) + room / 2;
        var marks = new List<Mark>();
        var (faceSide, faceEdge) = BenchFaces.OfNewel(part);
        for (var i = 0; i < faces.Length; i++)
        {
            var face = faces[i];
            var at = new Point2(left + i * pitch, foot);
            marks.AddRange(view.Draw(face, at, f, lettering));
            var top = foot + length;
            marks.Add(new TextMark(new(at.X + side / 2, top + 8), part.Faces[face].Looks, lettering.Mark, Layer.Lettering, HorizontalAnchor.Middle, bold: true));
            if (face == faceSide) marks.Add(BenchMarks.FaceSide(new(at.X + side / 2 - 1, top + 1), 5, part.Id));
            if (face == faceEdge) marks.Add(BenchMarks.FaceEdge(new(at.X + side / 2, top + 1.5), new(0, -1), 4, part.Id));
            marks.AddRange(Floors(rod.Stair.Plan, view, at, f, lettering, i == 0));
        }
        marks.AddRange(PiecePanel.Draw(start, rod.Stair, [part.Id], Notes(rod, part, faceSide, faceEdge), NewelPlan.Width));
        marks.AddRange(NewelPlan.Draw(rod.Stair.Kit, part, new(start.Panel.MinX + Math.Min(start.Panel.Height, 42) + 4, start.Panel.MinY), start.Panel.Height, start.Lettering));
        var sheet = start.Finish(marks);
        return page is not { } n ? sheet : sheet with
        {
            Name = $"{sheet.Name}-{Number.Print(n + 1, 0)}",
            Title = $"{sheet.Title}, faces {string.Join(' ', faces.Select(i => part.Faces[i].Looks))}",
            Block = sheet.Block! with { Piece = $"{part.Name}, faces {string.Join(" and ", faces.Select(i => part.Faces[i].Looks))}" },
        };
    }

    /// <summary>Finished floors, where they cross what is drawn.</summary>
    private static IEnumerable<Mark> Floors(StairPlan plan, NewelFaceView view, Point2 at, double factor, SheetLettering lettering, bool isFirst)
    {
        var bottom = view.Part.FaceSide.Frame.Origin.Z;
        var levels = Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] is StepKind.Landing or StepKind.Floor).Select(k => k * plan.Rise).Prepend(0);
        foreach (var level in levels)
        {
            var v = level - bottom;
            if (v < -Tolerance.Same || !view.Stretches.Holds(v)) continue;
            var y = at.Y + view.Stretches.OnPaper(v, factor);
            yield return StrokeMark.Line(new(at.X - 3, y), new(at.X + view.Part.Blank.Width * factor + 2, y), Pens.Centre, Layer.Site);
            if (isFirst) yield return new TextMark(new(at.X - 4, y), "FFL " + Number.Print(level), lettering.Words, Layer.Lettering, HorizontalAnchor.End, VerticalAnchor.Middle);
        }
    }

    private static string Notes(RodJob rod, Part part, int faceSide, int faceEdge)
    {
        var depths = part.Cuts.GroupBy(c => (c.Kind, Depth: Number.Print(c.Depth)))
            .Select(g => $"{WordOf(g.Key.Kind)} {g.Key.Depth} deep{(g.Key.Kind == CutKind.Bore ? $", ø{Number.Print(g.First().Shape.Bounds.Width)}" : "")}");
        return $"Heights up from the foot, distances from the left arris of each face as looked at. {Number.Print(part.Blank.Width)} square, {Number.Print(part.Blank.Length)} long; "
            + $"foot {Number.Print(part.FaceSide.Frame.Origin.Z)} above the lower floor. {Upper(string.Join("; ", depths.Distinct()))}. "
            + $"Face side {part.Faces[faceSide].Looks}, face edge {part.Faces[faceEdge].Looks}. Breaks leave out plain wood; FFL: finished floor.";
    }

    private static string WordOf(CutKind kind) => kind switch
    {
        CutKind.Housing => "housings", CutKind.Mortice => "mortices", CutKind.Haunch => "haunches", CutKind.Bore => "peg holes", CutKind.Notch => "notch",
        _ => "cuts",
    };

    private static string Upper(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
