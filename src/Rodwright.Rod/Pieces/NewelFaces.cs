using Rodwright.Drawings.Fonts;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Things;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Plans;

namespace Rodwright.Rod.Pieces;

/// <summary>Faces of a newel side by side, lettered, with bench marks and the floors they pass.</summary>
internal sealed class NewelFaces
{
    /// <summary>Paper left of the first face for the floors' levels, mm.</summary>
    public const double Beside = 20;

    private readonly Stair stair;
    private readonly NewelFaceView view;
    private readonly SheetLettering lettering;

    public NewelFaces(Stair stair, NewelFaceView view, SheetLettering lettering)
    {
        (this.stair, this.view, this.lettering) = (stair, view, lettering);
        (FaceSide, FaceEdge) = BenchFaces.OfNewel(view.Part);
        Column = 16 + Enumerable.Range(0, 4).SelectMany(f => view.HeightStops(f, _ => Point2.Origin)).Max(s => Width(s.Value, s.Note));
        MostAcross = Enumerable.Range(0, 4).Max(f => view.AcrossStops(f, _ => Point2.Origin).Count());
        Below = 14 + Enumerable.Range(0, 4).SelectMany(f => view.AcrossStops(f, _ => Point2.Origin)).Max(s => Width(s.Value, s.Note));
    }

    /// <summary>The face that takes a string; it carries the face mark.</summary>
    public int FaceSide { get; }

    /// <summary>The face next to it that takes treads.</summary>
    public int FaceEdge { get; }

    /// <summary>Paper right of each face for its heights, mm.</summary>
    public double Column { get; }

    /// <summary>Most distances across any of the faces.</summary>
    public int MostAcross { get; }

    /// <summary>Paper below the faces for the distances across, mm.</summary>
    public double Below { get; }

    /// <summary>Some faces from left to right.</summary>
    /// <param name="faces">Their indices.</param>
    /// <param name="foot">Lower left corner of the first, mm of paper.</param>
    /// <param name="pitch">From one to the next, mm of paper.</param>
    /// <param name="factor">Timber to paper.</param>
    public IReadOnlyList<Mark> Draw(IReadOnlyList<int> faces, Point2 foot, double pitch, double factor)
    {
        var part = view.Part;
        var side = part.Blank.Width * factor;
        var top = foot.Y + view.Stretches.Length * factor + view.Stretches.Breaks;
        var marks = new List<Mark>();
        for (var i = 0; i < faces.Count; i++)
        {
            var face = faces[i];
            var at = new Point2(foot.X + i * pitch, foot.Y);
            marks.AddRange(view.Draw(face, at, factor, lettering));
            marks.Add(new TextMark(new(at.X + side / 2, top + 8), part.Faces[face].Looks, lettering.Mark, Layer.Lettering, HorizontalAnchor.Middle, bold: true, of: part.Id));
            if (face == FaceSide) marks.Add(BenchMarks.FaceSide(new(at.X + side / 2 - 1, top + 1), 5, part.Id));
            if (face == FaceEdge) marks.Add(BenchMarks.FaceEdge(new(at.X + side / 2, top + 1.5), new(0, -1), 4, part.Id));
            marks.AddRange(Floors(at, factor, i == 0));
        }
        return marks;
    }

    private double Width(double value, string note) => lettering.WidthOf(value, note);

    /// <summary>Finished floors, where they cross what is drawn.</summary>
    private IEnumerable<Mark> Floors(Point2 at, double factor, bool isFirst)
    {
        var plan = stair.Plan;
        var bottom = view.Part.FaceSide.Frame.Origin.Z;
        var levels = Enumerable.Range(1, plan.Risers).Where(k => plan.Steps[k - 1] is StepKind.Landing or StepKind.Floor)
            .Select(k => (Level: k * plan.Rise, Of: ThingId.Level(plan, k))).Prepend((0, ThingId.Floor));
        foreach (var (level, of) in levels)
        {
            var v = level - bottom;
            if (v < -Tolerance.Same || !view.Stretches.Holds(v)) continue;
            var y = at.Y + view.Stretches.OnPaper(v, factor);
            yield return StrokeMark.Line(new(at.X - 3, y), new(at.X + view.Part.Blank.Width * factor + 2, y), Pens.Centre, Layer.Site, of);
            if (isFirst) yield return new TextMark(new(at.X - 4, y), "FFL " + plan.Units.Print(level), lettering.Words, Layer.Lettering, HorizontalAnchor.End, VerticalAnchor.Middle, of: of);
        }
    }
}
