using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Templates;
using Rodwright.Testing;
using Xunit;

namespace Rodwright.Rod.Tests.Templates;

public sealed class TemplateTests
{
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
        var lines = PdfLines.Of(TemplateSheets.Make(rod).Single(s => s.Name == "template-pitch-board"));
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
        AssertEdges(PdfLines.Of(sheets.Single(s => s.Name == "template-tread")), HousingTemplates.TreadShape(rod).Shape);
        AssertEdges(PdfLines.Of(sheets.Single(s => s.Name == "template-riser")), HousingTemplates.RiserShape(rod).Shape);
    }

    [Theory]
    [InlineData("left-kite-low")]
    [InlineData("right-kite-top")]
    public void Tapered_treads_read_back_from_paper_edge_by_edge(string sample)
    {
        var rod = RodJobs.Of(sample, "A1");
        var sheets = TemplateSheets.Make(rod);
        foreach (var part in rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.TaperedTread))
            AssertEdges(PdfLines.Of(sheets.Single(s => s.Name == "template-" + part.Id)), part.FaceSide.Outline);
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

    private static void AssertEdges(List<(Point2 A, Point2 B)> lines, Path2 shape) => Assert.True(PdfLines.Hold(lines, shape));
}
