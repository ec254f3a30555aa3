using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class SheetTests
{
    private static Sheet Bare(params Mark[] marks) => new() { Name = "s", Title = "s", Paper = PaperSize.A3.Landscape, Marks = [.. marks] };

    private static TextMark Text(double x, double y, string text, bool knockout = false) => new(new(x, y), text, 3.5, Layer.Lettering, knockout: knockout);

    [Fact]
    public void The_sampler_sheets_read_clean()
    {
        foreach (var sheet in Sampler.Set().Sheets) Assert.Equal([], SheetCheck.Overlaps(sheet).Select(f => f.Message));
    }

    [Fact]
    public void Planted_overlaps_are_found()
    {
        var heavy = StrokeMark.Line(new(100, 101), new(200, 101), Pens.Visible, Layer.Visible);
        Assert.Equal(SheetFaultKind.TextOverText, Only(Text(50, 50, "riser 7"), Text(55, 51, "riser 8")));
        Assert.Equal(SheetFaultKind.TextOverLine, Only(Text(110, 100, "crossed"), heavy));
        Assert.Equal(SheetFaultKind.TextOverLine, Only(Text(110, 100, "under", knockout: true), heavy));
        Assert.Equal(SheetFaultKind.MissingLetter, Only(Text(50, 50, "\uE123")));
        Assert.Equal(SheetFaultKind.OutsideFrame, Only(StrokeMark.Line(new(100, 100), new(430, 100), Pens.Hidden, Layer.Hidden)));
        var circle = new StrokeMark(Path2.Circle(new(100, 100), 30), Pens.Outline, Layer.OutlineToCut);
        Assert.Equal(SheetFaultKind.TextOverLine, Only(Text(125, 100, "over an arc"), circle));

        static SheetFaultKind Only(params Mark[] marks) => Assert.Single(SheetCheck.Overlaps(Bare(marks))).Kind;
    }

    [Fact]
    public void What_does_not_overlap_is_left_in_peace()
    {
        var heavy = StrokeMark.Line(new(100, 101), new(200, 101), Pens.Visible, Layer.Visible);
        Mark[][] clean =
        [
            [Text(50, 50, "riser 7"), Text(50, 45, "riser 8")],
            [heavy, Text(110, 100, "over it", knockout: true)],
            [Text(110, 102, "on the line"), heavy],
            [Text(110, 100, "light"), StrokeMark.Line(new(100, 101), new(200, 101), Pens.Dimension, Layer.Dimension)],
            [Text(110, 100, "x"), new ClipMark(new(150, 0, 400, 200), [heavy])],
            [new TextMark(new(100, 100), "diagonal text", 5, Layer.Lettering, turn: Angle.FromDegrees(45)), Text(118, 103, "beside")],
            [new ClipMark(new(50, 50, 60, 60), [StrokeMark.Line(new(-500, 55), new(900, 55), Pens.Outline, Layer.OutlineToCut)])],
        ];
        foreach (var marks in clean) Assert.Equal([], SheetCheck.Overlaps(Bare(marks)).Select(f => f.Message));
    }

    [Fact]
    public void Placed_labels_never_overlap_one_another_or_a_line()
    {
        var asked =
            from places in (from x in Gen.Double[40, 380] from y in Gen.Double[30, 270] select new Point2(x, y)).Array[1, 60]
            from lines in (from x in Gen.Double[40, 380] from y in Gen.Double[30, 270] select new Point2(x, y)).Array[2, 12]
            select (places, lines);
        asked.Holds(a =>
        {
            var line = new StrokeMark(Path2.Polyline(a.lines), Pens.Outline, Layer.OutlineToCut);
            var placer = new LabelPlacer(new(20, 10, 410, 287));
            placer.Avoid([line]);
            var labels = a.places.Select((p, i) => placer.Place($"label {i}", p)).OfType<PlacedLabel>().ToList();
            // Leads must clear lettering too: they are made heavy here so that the check judges them.
            var leads = labels.Select(l => l.Lead).OfType<StrokeMark>().Select(l => l with { Pen = Pens.Outline });
            Assert.Equal([], SheetCheck.Overlaps(Bare([line, .. leads, .. labels.Select(l => l.Text)])).Select(f => f.Message));
            Assert.NotEmpty(labels);
        }, iter: 300);
    }

    [Fact]
    public void A_full_place_gives_no_label_rather_than_an_overlap()
    {
        var placer = new LabelPlacer(new(0, 0, 400, 280));
        placer.Avoid(new Box2(0, 0, 400, 280));
        Assert.Null(placer.Place("nowhere", new(200, 140)));
    }

    [Fact]
    public void A_set_numbers_its_sheets_and_refuses_one_name_twice()
    {
        var set = Sampler.Set();
        Assert.Equal([(1, 3), (2, 3), (3, 3)], set.Sheets.Select(s => (s.Number, s.Count)));
        Assert.Contains(set.Sheets[1].Furniture.OfType<TextMark>(), t => t.Text == "2 of 3");
        Assert.Throws<ArgumentException>(() => new SheetSet("s", "s", [Sampler.Small(), Sampler.Small()]));
    }

    [Fact]
    public void Every_paper_holds_its_furniture_without_overlap()
    {
        foreach (var size in PaperSize.Series.SelectMany(s => new[] { s, s.Landscape }))
        {
            foreach (var trueSize in new[] { false, true })
            {
                var words = Sampler.Words with { Job = new string('W', 150), Piece = new string('W', 90), Note = new string('n', 200), Hand = "right hand" };
                var sheet = new Sheet { Name = "s", Title = "s", Paper = size, Marks = [], Block = words, TrueSize = trueSize, Number = 28, Count = 31 };
                Assert.Equal([], SheetCheck.Overlaps(sheet).Select(f => f.Message));
                Assert.All(sheet.Reserved, box => Assert.True(sheet.Frame.Holds(box)));
                Assert.DoesNotContain(sheet.Reserved, box => box.Overlaps(sheet.Room));
                Assert.True(sheet.Reserved[0].Width <= 180);
                Assert.True(new Box2(0, 0, size.Width, size.Height).Holds(Mark.BoundsOf(sheet.Furniture)));
                if (sheet.Reserved.Length > 1) Assert.False(sheet.Reserved[0].Overlaps(sheet.Reserved[1]));
            }
        }
    }

    [Fact]
    public void A_table_over_several_places_draws_every_row_once()
    {
        var rows = Enumerable.Range(1, 40).Select(i => new[] { $"T{i}", i % 3 == 0 ? "words that go on for more than one line of it" : "short", $"{i}" }).ToList();
        var table = new Table([new("Mark", 14), new("Piece", 40), new("No", 12, HorizontalAnchor.End)], rows);
        var (next, seen, pieces) = (0, new List<string>(), 0);
        while (next < table.RowCount)
        {
            var piece = table.Draw(new(30, 200), 60, next);
            Assert.True(piece.NextRow > next);
            Assert.True(piece.Height <= 60);
            Assert.Equal([], SheetCheck.Overlaps(Bare([.. piece.Marks])).Select(f => f.Message));
            var texts = piece.Marks.OfType<TextMark>().Select(t => t.Text).ToList();
            Assert.Equal("Mark", texts[0]);
            seen.AddRange(texts.Where(t => t.StartsWith('T')));
            next = piece.NextRow;
            pieces++;
        }
        Assert.Equal(rows.Select(r => r[0]), seen);
        Assert.True(pieces > 3);
        Assert.Empty(table.Draw(new(30, 200), 6).Marks);
        Assert.Throws<ArgumentException>(() => new Table([new("a", 10)], [["1", "2"]]));
    }

    [Fact]
    public void Hatching_stays_inside_its_shape_and_out_of_its_hole()
    {
        var (outer, hole) = (Path2.Circle(new(50, 50), 30), Path2.Rectangle(45, 45, 60, 55));
        var lines = Hatch.Cross([outer, hole], 2, Layer.Waste);
        Assert.True(lines.Count > 60);
        foreach (var line in lines)
        {
            var (a, b, _) = line.Path.Edge(0);
            for (var k = 1; k < 10; k++)
            {
                var p = a.Towards(b, k / 10.0);
                Assert.True(p.DistanceTo(new(50, 50)) <= 30.001);
                Assert.False(hole.Holds(p) && hole.DistanceTo(p) > 0.001);
            }
        }
    }
}
