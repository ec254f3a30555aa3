using System.Collections.Immutable;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Pieces;

/// <summary>One face of a newel: its cuts, what is hidden from the neighbouring faces, heights above the foot at its right, distances from its left arris below.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Part">The newel.</param>
/// <param name="Stretches">What of its length is drawn.</param>
internal sealed record NewelFaceView(Kit Kit, Part Part, NewelStretches Stretches)
{
    private readonly ImmutableArray<ImmutableArray<RowStop>> heights = [.. Part.Faces.Select((_, face) => HeightsOf(Kit, Part, face))];
    private readonly ImmutableArray<ImmutableArray<RowStop>> across = [.. Part.Faces.Select((_, face) => AcrossOf(Kit, Part, face))];

    private double Side => Part.Blank.Width;

    /// <summary>The face with its lower left corner at a point of paper.</summary>
    public IEnumerable<Mark> Draw(int face, Point2 at, double factor, SheetLettering lettering)
    {
        var marks = new List<Mark>();
        foreach (var cut in Part.Cuts.Where(c => c.Face == face)) marks.AddRange(DrawCut(cut, at, factor));
        marks.AddRange(Hidden((face + 1) % 4, fromRight: true, at, factor));
        marks.AddRange(Hidden((face + 3) % 4, fromRight: false, at, factor));
        marks.AddRange(Outline(at, factor));
        return marks.Concat(Heights(face, at, factor, lettering)).Concat(Across(face, at, factor, lettering));
    }

    /// <summary>Figures of heights, with the pieces they belong to; tops carry the mark.</summary>
    public IEnumerable<DimensionStop> HeightStops(int face, Func<double, Point2> place) => Placed(heights[face], place);

    /// <summary>Figures across, from the left arris.</summary>
    public IEnumerable<DimensionStop> AcrossStops(int face, Func<double, Point2> place) => Placed(across[face], place);

    private static IEnumerable<DimensionStop> Placed(ImmutableArray<RowStop> stops, Func<double, Point2> place) =>
        stops.Select(s => new DimensionStop(place(s.Value), s.Value, s.Note, s.Of));

    private static ImmutableArray<RowStop> HeightsOf(Kit kit, Part part, int face)
    {
        var stops = new List<RowStop> { new(0, "", part.Id), new(part.Blank.Length, "head", part.Id) };
        foreach (var cut in part.Cuts.Where(c => c.Face == face))
        {
            var (box, mark, of) = (cut.Filled.Bounds, ShortMarks.Of(cut, kit), ThingId.Of(part, cut));
            if (cut.Kind == CutKind.Bore) stops.Add(new(box.Centre.Y, "peg", of));
            else if (cut.Kind == CutKind.Haunch) continue; // its ends are those of the mortices
            else if (cut.Kind == CutKind.Split) continue;
            else if (cut.Kind == CutKind.Notch) stops.Add(new(box.MaxY, "notch", of));
            else
            {
                stops.Add(new(box.MinY, "", of));
                stops.Add(new(box.MaxY, mark, of));
            }
        }
        return Merged(stops);
    }

    private static ImmutableArray<RowStop> AcrossOf(Kit kit, Part part, int face)
    {
        var side = part.Blank.Width;
        var stops = new List<RowStop> { new(0, "", part.Id), new(side, "", part.Id) };
        foreach (var cut in part.Cuts.Where(c => c.Face == face && c.Kind is not (CutKind.Notch or CutKind.Split)))
        {
            var (box, mark, of) = (cut.Filled.Bounds, ShortMarks.Of(cut, kit), ThingId.Of(part, cut));
            if (cut.Kind == CutKind.Bore) stops.Add(new(box.Centre.X, "peg", of));
            else if (cut.Kind != CutKind.Haunch)
            {
                stops.Add(new(box.MinX, mark, of));
                stops.Add(new(box.MaxX, mark, of));
            }
        }
        return Merged([.. stops.Where(s => s.Value >= -Tolerance.Joint && s.Value <= side + Tolerance.Joint)]);
    }

    private static ImmutableArray<RowStop> Merged(List<RowStop> stops)
    {
        var groups = new List<List<RowStop>>();
        foreach (var stop in stops.OrderBy(s => s.Value))
        {
            if (groups.Count > 0 && stop.Value - groups[^1][0].Value < 0.05) groups[^1].Add(stop);
            else groups.Add([stop]);
        }
        return [.. groups.Select(g => new RowStop(g[0].Value, Notes(g.Select(s => s.Note).Where(n => n.Length > 0)), g.Find(s => s.Note.Length > 0).Of ?? g[0].Of))];

        static string Notes(IEnumerable<string> notes)
        {
            var all = notes.Distinct().ToList();
            var marks = ShortMarks.Joined(all.Where(n => char.IsDigit(n[^1])));
            return string.Join(", ", all.Where(n => !char.IsDigit(n[^1])).Append(marks).Where(n => n.Length > 0));
        }
    }

    private IEnumerable<Mark> DrawCut(Cut cut, Point2 at, double factor)
    {
        var (shape, of) = (Placed(cut.Shape, at, factor), ThingId.Of(Part, cut));
        switch (cut.Kind)
        {
            case CutKind.Notch or CutKind.Split:
                foreach (var line in Hatch.Cross([shape], 2.2, Layer.Waste, of: of)) yield return line;
                break;
            case CutKind.Mortice:
                var b = shape.Bounds;
                yield return StrokeMark.Line(new(b.MinX, b.MinY), new(b.MaxX, b.MaxY), Pens.Dimension, Layer.Mortice, of);
                yield return StrokeMark.Line(new(b.MinX, b.MaxY), new(b.MaxX, b.MinY), Pens.Dimension, Layer.Mortice, of);
                break;
            case CutKind.Bore:
                var c = shape.Bounds.Centre;
                yield return StrokeMark.Line(c - new Vector2(2.5, 0), c + new Vector2(2.5, 0), Pens.Dimension, Layer.Bore, of);
                yield return StrokeMark.Line(c - new Vector2(0, 2.5), c + new Vector2(0, 2.5), Pens.Dimension, Layer.Bore, of);
                break;
            default:
                yield return new FillMark([shape], 0.12, Layer.Tint, of);
                break;
        }
        yield return new StrokeMark(shape, Pens.Visible, cut.Kind == CutKind.Mortice ? Layer.Mortice : cut.Kind == CutKind.Bore ? Layer.Bore : Layer.Housing, of);
        if (cut.Seat is { } seat) yield return new StrokeMark(Placed(seat, at, factor), Pens.Dimension, Layer.Housing, of);
    }

    /// <summary>Cuts of a neighbouring face, as they lie behind this one: as deep from the arris as they are cut.</summary>
    private IEnumerable<Mark> Hidden(int neighbour, bool fromRight, Point2 at, double factor)
    {
        foreach (var cut in Part.Cuts.Where(c => c.Face == neighbour))
        {
            var box = cut.Shape.Bounds;
            var (depth, of) = (Math.Min(cut.Depth, Side), ThingId.Of(Part, cut));
            var shape = Placed(fromRight ? Path2.Rectangle(Side - depth, box.MinY, Side, box.MaxY) : Path2.Rectangle(0, box.MinY, depth, box.MaxY), at, factor);
            if (cut.Kind is CutKind.Notch or CutKind.Split)
            {
                foreach (var line in Hatch.Cross([shape], 2.2, Layer.Waste, of: of)) yield return line;
                yield return new StrokeMark(shape, Pens.Visible, Layer.Waste, of);
            }
            else yield return new StrokeMark(shape, Pens.Hidden with { Width = 0.18 }, Layer.Hidden, of);
        }
    }

    private IEnumerable<Mark> Outline(Point2 at, double factor)
    {
        for (var i = 0; i < Stretches.Kept.Length; i++)
        {
            var (from, to) = Stretches.Kept[i];
            var (low, high) = (at.Y + Stretches.OnPaper(from, factor), at.Y + Stretches.OnPaper(to, factor));
            var (left, right) = (at.X, at.X + Side * factor);
            yield return StrokeMark.Line(new(left, low), new(left, high), Pens.Outline, Layer.OutlineToCut, Part.Id);
            yield return StrokeMark.Line(new(right, low), new(right, high), Pens.Outline, Layer.OutlineToCut, Part.Id);
            yield return i == 0 ? StrokeMark.Line(new(left, low), new(right, low), Pens.Outline, Layer.OutlineToCut, Part.Id) : Broken(left, right, low);
            yield return i == Stretches.Kept.Length - 1 ? StrokeMark.Line(new(left, high), new(right, high), Pens.Outline, Layer.OutlineToCut, Part.Id) : Broken(left, right, high);
        }
    }

    private static StrokeMark Broken(double left, double right, double y)
    {
        var middle = (left + right) / 2;
        return new(Path2.Polyline(new(left - 1.5, y), new(middle - 1.5, y), new(middle - 0.7, y + 1.6), new(middle + 0.7, y - 1.6), new(middle + 1.5, y), new(right + 1.5, y)),
            Pens.Dimension, Layer.Visible);
    }

    private IEnumerable<Mark> Heights(int face, Point2 at, double factor, SheetLettering lettering)
    {
        var x = at.X + Side * factor;
        return RunningDimension.Draw(HeightStops(face, v => new(x, at.Y + Stretches.OnPaper(v, factor))), new(new(x + 4, 0), new(0, 1)), lettering.Dimensions);
    }

    private IEnumerable<Mark> Across(int face, Point2 at, double factor, SheetLettering lettering) =>
        RunningDimension.Draw(AcrossStops(face, u => new(at.X + u * factor, at.Y)), new(new(0, at.Y - 4), new(1, 0)), lettering.Dimensions);

    private Path2 Placed(Path2 path, Point2 at, double factor)
    {
        // Every cut lies within one stretch, so one motion carries it.
        var y = at.Y + Stretches.OnPaper(path.Bounds.MinY, factor) - path.Bounds.MinY * factor;
        return path.Moved(p => new(at.X + p.X * factor, y + p.Y * factor));
    }
}
