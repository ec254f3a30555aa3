using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Pieces;
using Rodwright.Rod.Stages;

namespace Rodwright.Rod.Booklet;

/// <summary>A newel as it lies on the bench, its four faces one below another, the foot to the left, plain lengths left out at breaks.</summary>
internal sealed class BookletNewel
{
    private const double Apart = 6; // between faces, mm of paper
    private const double Beside = 10; // for the faces' letters, mm
    private const double Words = 9;
    private readonly Units units;
    private readonly Part part;
    private readonly RodStageList list;
    private readonly Stage stage;
    private readonly IReadOnlyList<BookletRow> rows;
    private readonly NewelStretches stretches;
    private readonly Scale scale;

    public BookletNewel(Units units, Part part, RodStageList list, Stage stage, IReadOnlyList<BookletRow> rows, double width, double share)
    {
        (this.units, this.part, this.list, this.stage, this.rows) = (units, part, list, stage, rows);
        stretches = NewelStretches.Of(part);
        scale = BookletPictures.ScaleFor(new(0, 0, stretches.Length, part.Blank.Width), width - Beside - stretches.Breaks, 19 * share, units);
    }

    private double Side => part.Blank.Width * scale.Factor;

    public BookletPicture Picture() => new(4 * Side + 5 * Apart + Words, scale, Draw);

    private List<Mark> Draw(Box2 paper)
    {
        var left = paper.MinX + Beside + (paper.Width - Beside - stretches.Length * scale.Factor - stretches.Breaks) / 2;
        var top = paper.MaxY - Apart;
        var marks = new List<Mark>();
        var placer = new LabelPlacer(paper with { MinY = paper.MinY + Words });
        for (var i = 0; i < 4; i++)
            marks.Add(new TextMark(new(left - 4, FaceTop(i) - Side / 2), part.Faces[i].Looks, 3.5, Layer.Lettering, HorizontalAnchor.End, VerticalAnchor.Middle, bold: true));
        placer.Avoid(marks);
        foreach (var line in list.Before(stage)) marks.AddRange(Strokes(line, false));
        var fresh = stage.Lines.SelectMany(l => Strokes(l, true)).ToList();
        placer.Avoid(fresh);
        marks.AddRange(fresh);
        marks.AddRange(BookletLabels.Place(rows, placer, (line, p) => new(left + stretches.OnPaper(p.Y, scale.Factor), FaceTop(line.Face) - p.X * scale.Factor), paper));
        marks.Add(BookletPictures.Caption(paper, stage, scale, units));
        return marks;

        double FaceTop(int face) => top - face * (Side + Apart);

        // Lying with its foot to the left, a face's left arris is uppermost: a quarter turn clockwise.
        IEnumerable<Mark> Strokes(StageLine line, bool isNew)
        {
            foreach (var path in line.Paths)
            {
                var bounds = path.Bounds;
                foreach (var (from, to) in stretches.Kept)
                {
                    if (bounds.MaxY < from || bounds.MinY > to) continue;
                    var start = left + stretches.OnPaper(from, scale.Factor);
                    var window = new Box2(start - 0.3, FaceTop(line.Face) - Side - 0.5, start + (to - from) * scale.Factor + 0.3, FaceTop(line.Face) + 0.5);
                    var placed = path.Moved(p => new(start + (p.Y - from) * scale.Factor, FaceTop(line.Face) - p.X * scale.Factor));
                    yield return new ClipMark(window, [new StrokeMark(placed, BookletPens.Of(line, isNew), BookletPens.LayerOf(line), part.Id)]);
                }
            }
        }
    }
}
