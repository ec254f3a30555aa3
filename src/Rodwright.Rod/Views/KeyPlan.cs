using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;

namespace Rodwright.Rod.Views;

/// <summary>The stair in small with one piece, or several, filled: where a sheet's piece sits, and which way is up.</summary>
public static class KeyPlan
{
    private const double WordHeight = 2.5;
    private const double WordStrip = 5;
    private static readonly Pen Thin = new(0.18, Dash.None, 0.7);

    /// <summary>The marks of a key plan.</summary>
    /// <param name="stair">The stair.</param>
    /// <param name="partIds">Ids of the pieces to fill; none for the stair alone.</param>
    /// <param name="box">Where it goes, mm of paper.</param>
    public static IReadOnlyList<Mark> Draw(Stair stair, IReadOnlyCollection<string> partIds, Box2 box)
    {
        var plan = stair.Plan;
        var pieces = stair.Kit.Parts.Select(p => (Part: p, Outline: Footprint.Of(p))).ToList();
        // Over a landing there are no pieces, but the line up the stair crosses it.
        var model = plan.WalkingLine.Bounds;
        foreach (var (_, outline) in pieces) model = model.With(outline.Bounds);
        foreach (var riser in plan.RiserLines) model = model.With(plan.FaceOf(riser).Bounds);
        var inner = new Box2(box.MinX + 1, box.MinY + WordStrip, box.MaxX - 1, box.MaxY - 1);
        var ratio = Math.Max(model.Width / inner.Width, model.Height / inner.Height);
        var place = Placement.Centred(model, inner, Scale.OneTo(Math.Clamp(ratio, 1, 1000)));
        var marks = new List<Mark>();
        foreach (var riser in plan.RiserLines)
            marks.Add(new StrokeMark(place.Map(plan.FaceOf(riser)), Thin, Layer.Frame));
        foreach (var (part, outline) in pieces)
        {
            if (part.Kind is not (PartKind.WallString or PartKind.NewelString or PartKind.Newel)) continue;
            marks.Add(new FillMark([place.Map(outline)], 0, Layer.Frame));
            marks.Add(new StrokeMark(place.Map(outline), Thin, Layer.Frame));
        }
        foreach (var (part, outline) in pieces)
        {
            if (!partIds.Contains(part.Id)) continue;
            var path = place.Map(outline);
            marks.Add(new FillMark([path], 0.85, Layer.Frame, part.Id));
            marks.Add(new StrokeMark(path, Thin with { Width = 0.25, Ink = 1 }, Layer.Frame, part.Id)); // a thin piece still shows
        }
        marks.AddRange(Up(place.Map(plan.WalkingLine), place.Map(model)));
        return marks;
    }

    private static IEnumerable<Mark> Up(Path2 line, Box2 drawn)
    {
        var start = line.Vertices[0].At;
        var (tip, along) = PathEnd.Of(line);
        var (back, wing) = (tip - 2.4 * along, 0.8 * along.Left);
        var pen = Thin with { Ink = 1 };
        yield return new StrokeMark(line, pen, Layer.Frame);
        yield return new StrokeMark(Path2.Circle(start, 0.7), pen, Layer.Frame);
        yield return new StrokeMark(Path2.Polyline(back + wing, tip, back - wing), pen with { Width = 0.25 }, Layer.Frame);
        yield return new TextMark(new(start.X, drawn.MinY - WordHeight - 1.2), "up", WordHeight, Layer.Frame, HorizontalAnchor.Middle);
    }
}
