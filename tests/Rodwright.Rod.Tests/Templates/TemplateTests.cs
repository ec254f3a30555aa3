using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Templates;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using Xunit;

namespace Rodwright.Rod.Tests.Templates;

public sealed class TemplateTests
{
    private const double Millimetre = 25.4 / 72;

    public static TheoryData<string, string> All => RodJobs.Everything("A4", "A3", "A1");

    [Theory]
    [MemberData(nameof(All))]
    public void Nothing_on_a_template_overlaps_or_leaves_the_frame(string sample, string paper)
    {
        var sheets = TemplateSheets.Make(RodJobs.Of(sample, paper));
        Assert.All(sheets, s => Assert.True(s.TrueSize && s.Scale.IsFull));
        var faults = sheets.SelectMany(s => SheetCheck.Overlaps(s).Select(f => $"{s.Name}: {f.Message} at {f.Where}")).ToList();
        Assert.True(faults.Count == 0, $"{faults.Count} faults\n" + string.Join('\n', faults.Take(40)));
    }

    [Fact]
    public void The_pitch_board_reads_back_from_paper_as_rise_going_and_hypotenuse()
    {
        var rod = RodJobs.Of("left-kite-low", "A4");
        var lines = LinesOf(TemplateSheets.Make(rod).Single(s => s.Name == "template-pitch-board"));
        var (rise, going) = (rod.Stair.Plan.Rise, rod.Stair.Plan.Going);
        Assert.Contains(lines, l => Math.Abs(l.A.Y - l.B.Y) < 0.05 && Math.Abs(l.A.DistanceTo(l.B) - going) < Tolerance.Print);
        Assert.Contains(lines, l => Math.Abs(l.A.X - l.B.X) < 0.05 && Math.Abs(l.A.DistanceTo(l.B) - rise) < Tolerance.Print);
        Assert.Contains(lines, l => Math.Abs(l.A.DistanceTo(l.B) - Math.Sqrt(rise * rise + going * going)) < Tolerance.Print);
        Assert.Contains(lines, l => Math.Abs(l.A.DistanceTo(l.B) - rod.Stair.Job.Practice.Margin) < Tolerance.Print);
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("half-scale-teaching")]
    [InlineData("right-kite-top")]
    public void Housing_templates_read_back_from_paper_edge_by_edge(string sample)
    {
        var rod = RodJobs.Of(sample, "A3");
        var sheets = TemplateSheets.Make(rod);
        AssertEdges(LinesOf(sheets.Single(s => s.Name == "template-tread")), HousingTemplates.TreadShape(rod).Shape);
        AssertEdges(LinesOf(sheets.Single(s => s.Name == "template-riser")), HousingTemplates.RiserShape(rod).Shape);
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    public void Tapered_treads_read_back_from_paper_edge_by_edge(string sample)
    {
        var rod = RodJobs.Of(sample, "A1");
        var sheets = TemplateSheets.Make(rod);
        foreach (var part in rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread))
            AssertEdges(LinesOf(sheets.Single(s => s.Name == "template-" + part.Id)), part.FaceSide.Outline);
    }

    [Fact]
    public void The_tread_template_is_the_straight_housing_of_the_strings()
    {
        var rod = RodJobs.Of("straight-flight");
        var template = HousingTemplates.TreadShape(rod).Shape;
        var board = rod.Stair.Kit.Strings.First(s => s.Site.IsWall);
        var housing = board.Housings.Single(h => h.Piece == "tread-5");
        var origin = board.PitchPoints.Single(p => p.Riser == 5).At;
        foreach (var v in template.Vertices) Assert.True(housing.Shape.DistanceTo(origin + (v.At - Point2.Origin)) < Tolerance.Joint);
    }

    /// <summary>Every straight edge of a shape is on the paper, with its length and direction, all moved by one displacement.</summary>
    private static void AssertEdges(List<(Point2 A, Point2 B)> lines, Path2 shape)
    {
        var edges = Enumerable.Range(0, shape.EdgeCount).Select(shape.Edge).Where(e => e.Bulge == 0).ToList();
        var longest = edges.MaxBy(e => e.From.DistanceTo(e.To));
        var moves = lines.Where(l => ((l.B - l.A) - (longest.To - longest.From)).Length < Tolerance.Print).Select(l => l.A - longest.From).ToList();
        Assert.NotEmpty(moves);
        Assert.Contains(moves, move => edges.TrueForAll(e => lines.Exists(l =>
            l.A.DistanceTo(e.From + move) < Tolerance.Print && l.B.DistanceTo(e.To + move) < Tolerance.Print)));
    }

    private static List<(Point2 A, Point2 B)> LinesOf(Sheet sheet)
    {
        var file = new PdfFormat().Write(new("templates", "templates", [sheet]))[0];
        using var pdf = PdfDocument.Open(file.Bytes.ToArray());
        var lines = new List<(Point2 A, Point2 B)>();
        foreach (var sub in pdf.GetPage(1).Paths.SelectMany(p => p))
        {
            foreach (var line in sub.Commands.OfType<PdfSubpath.Line>()) lines.Add((Point(line.From), Point(line.To)));
            // A closing stroke has no command of its own.
            var points = sub.Commands.OfType<PdfSubpath.Line>().ToList();
            if (sub.IsClosed() && points.Count > 1) lines.Add((Point(points[^1].To), Point(sub.Commands.OfType<PdfSubpath.Move>().First().Location)));
        }
        return lines;
    }

    private static Point2 Point(PdfPoint p) => new(p.X * Millimetre, p.Y * Millimetre);
}
