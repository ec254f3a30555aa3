using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Tests.Samples;

/// <summary>Sheets with every kind of mark, laid out as a real one would be.</summary>
internal static class Sampler
{
    public static TitleBlockText Words { get; } = new()
    {
        Job = "The Old Forge, Mill Lane", Piece = "Trial board, lower run", Mark = "S1", Date = "4 March", Revision = "B", Hand = "left hand",
        Note = "Face side up; datum is the bottom edge.",
    };

    /// <summary>An A3 sheet at 1:5 with a board, housings, waste, ordinates, a chain, an angle, leaders, a table and notes.</summary>
    public static Sheet Board()
    {
        var paper = PaperSize.A3.Landscape;
        var place = new Placement(Scale.OneTo(5), Point2.Origin, new(40, 190));
        var marks = new List<Mark>();
        var board = new Path2(
            [new(new(0, 0)), new(new(1500, 0), 0), new(new(1600, 100), 0.3), new(new(1500, 280)), new(new(0, 280))], true);
        var stops = new List<DimensionStop> { new(place.Map(new Point2(0, 0)), 0) };
        marks.AddRange(Hatch.Cross([place.Map(Path2.Polygon(new(0, 200), new(0, 280), new(160, 280)))], 2.2, Layer.Waste, of: "waste-1"));
        for (var i = 0; i < 5; i++)
        {
            var x = 180 + i * 250.5;
            var housing = new Path2([new(new(x, 40)), new(new(x + 220, 40), 1), new(new(x + 220, 70)), new(new(x, 78))], true);
            marks.Add(new GroupMark($"tread-{i + 1}", $"Tread {i + 1}",
            [
                new FillMark([place.Map(housing)], 0.1, Layer.Housing, $"tread-{i + 1}"),
                place.Stroke(housing, Pens.Visible, Layer.Housing, $"tread-{i + 1}"),
                place.Stroke(Path2.Polyline(new Point2(x + 235, 20), new Point2(x + 235, 110)), Pens.Nosing, Layer.Nosing),
                new TextMark(place.Map(new Point2(x + 100, 130)), $"T{i + 1}", 5, Layer.Lettering, HorizontalAnchor.Middle, bold: true, of: $"tread-{i + 1}"),
            ]));
            stops.Add(new(place.Map(new Point2(x, 0)), x, i == 2 ? "riser 3" : ""));
            if (i < 4) stops.Add(new(place.Map(new Point2(x + 12, 0)), x + 12));
        }
        marks.Add(place.Stroke(board, Pens.Outline, Layer.OutlineToCut, "board"));
        marks.Add(place.Stroke(Path2.Polyline(new Point2(-40, 230), new Point2(1660, 230)), Pens.Centre, Layer.Centre));
        marks.Add(place.Stroke(Path2.Rectangle(700, 170, 820, 215), Pens.Hidden, Layer.Hidden));
        marks.Add(place.Stroke(Path2.Polyline(new Point2(0, 20), new Point2(1580, 20)), Pens.Construction, Layer.Construction));
        marks.Add(place.Stroke(Path2.Circle(new(1420, 190), 16), Pens.Visible, Layer.Bore, "bore-1"));
        marks.AddRange(RunningDimension.Draw(stops, Line2.Between(new(40, 178), new(60, 178))));
        marks.AddRange(ChainDimension.Draw(
            [new(place.Map(new Point2(0, 280)), 0), new(place.Map(new Point2(180, 280)), 180), new(place.Map(new Point2(200, 280)), 200),
             new(place.Map(new Point2(225, 280)), 225), new(place.Map(new Point2(1500, 280)), 1500)],
            Line2.Between(new(40, 254), new(60, 254))));
        marks.AddRange(ChainDimension.Between(place.Map(new Point2(0, 0)), place.Map(new Point2(0, 280)), 8, 280));
        marks.AddRange(AngleDimension.Draw(place.Map(new Point2(1500, 0)), Angle.FromDegrees(0), Angle.FromDegrees(45), 22));
        marks.Add(StrokeMark.Line(place.Map(new Point2(1500, 0)), place.Map(new Point2(1640, 0)), Pens.Construction, Layer.Construction));
        marks.AddRange(Leader.Draw(place.Map(new Point2(1420, 206)), new(372, 234), ["⌀32 bore", "right through"], of: "bore-1"));
        marks.AddRange(DirectionArrow.Draw(new(290, 262), new(320, 262), "up the stair"));
        var table = new Table(
            [new("Mark", 16), new("Piece", 52), new("Length", 22, HorizontalAnchor.End), new("Note", 44)],
            [["T1", "Tread", "900", "nosing ½ round"], ["T2", "Tread with a long name that wraps onto two lines", "1 012.5", "±0.5"], ["R1", "Riser", "874", "∠ 90° √"]]);
        marks.AddRange(table.Draw(new(34, 112), 60).Marks);
        marks.AddRange(FlowText.Draw(
            new(180, 112), 62, "Housings 12 deep, wedge housings run out below. Mark from the datum only → errors do not add up. × ≤ ≥ △ ↑ – ’", 2.5).Marks);
        marks.Add(new ClipMark(new(256, 74, 300, 112),
        [
            new StrokeMark(Path2.Circle(new(256, 74), 30), Pens.Outline, Layer.OutlineToCut),
            new StrokeMark(Path2.Circle(new(256, 74), 44), Pens.Visible, Layer.Visible),
            .. Hatch.Lines([Path2.Circle(new(256, 74), 30)], 2, Angle.FromDegrees(45), Layer.Waste),
        ]));
        marks.Add(new StrokeMark(Path2.Rectangle(256, 74, 300, 112), Pens.Rule, Layer.Visible));
        marks.Add(StrokeMark.Line(new(310, 74), new(380, 110), Pens.Hidden, Layer.Hidden));
        marks.Add(new TextMark(
            new(345, 92), "knockout", 3.5, Layer.Lettering, HorizontalAnchor.Middle, VerticalAnchor.Middle, Angle.FromRadians(Angle.Atan(36.0 / 70)), knockout: true));
        marks.AddRange(ScaleBar.Draw(new(310, 62), Scale.OneTo(5), 60));
        return new()
        {
            Name = "trial-board", Title = "Trial board", Paper = paper, Scale = Scale.OneTo(5), Marks = [.. marks], Block = Words,
        };
    }

    /// <summary>A true-size sheet on a roll: a board 1500 long.</summary>
    public static Sheet Template()
    {
        var marks = new List<Mark>();
        var board = new Path2([new(new(60, 120)), new(new(1500, 120)), new(new(1560, 200), 0.3), new(new(1500, 420)), new(new(60, 420))], true);
        marks.Add(new StrokeMark(board, Pens.Outline, Layer.OutlineToCut, "board"));
        for (var i = 0; i < 5; i++)
        {
            var x = 140 + 260 * i;
            marks.Add(new StrokeMark(Path2.Rectangle(x, 200, x + 200, 240), Pens.Visible, Layer.Housing));
            marks.Add(new TextMark(new(x + 100, 300), $"T{i + 1}", 10, Layer.Lettering, HorizontalAnchor.Middle, bold: true));
        }
        return new()
        {
            Name = "template", Title = "Template", Paper = PaperStock.Roll610.PageFor(1640, 610), Marks = [.. marks], TrueSize = true, Block = Words,
        };
    }

    /// <summary>A bare A4 sheet with a compact block.</summary>
    public static Sheet Small() => new()
    {
        Name = "small", Title = "Small", Paper = PaperSize.A4, Block = Words, TrueSize = true,
        Marks = [new StrokeMark(Path2.Rectangle(60, 100, 160, 200), Pens.Outline, Layer.OutlineToCut)],
    };

    public static SheetSet Set() => new("sampler", "Sampler", [Board(), Template(), Small()]);
}
