using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Sheets.Dimensions;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class DimensionTests
{
    private static readonly Gen<double[]> Stations = Gen.Double[0, 300].Array[2, 25].Select(a => a.Order().ToArray());

    [Fact]
    public void Ordinates_print_each_value_from_the_datum()
    {
        var marks = RunningDimension.Draw([new(new(10, 0), 0), new(new(60, 0), 250.04), new(new(110, 0), 500.25, "riser 2")], Line2.Between(new(0, -10), new(1, -10)));
        Assert.Equal(["0", "250", "riser 2  500.3"], marks.OfType<TextMark>().Select(t => t.Text));
        Assert.Single(marks.OfType<StrokeMark>(), s => s.Path.Closed);
    }

    [Fact]
    public void A_chain_prints_differences()
    {
        var marks = ChainDimension.Draw([new(new(0, 0), 5), new(new(40, 0), 205), new(new(100, 0), 505)], Line2.Between(new(0, 10), new(1, 10)));
        Assert.Equal(["200", "300"], marks.OfType<TextMark>().Select(t => t.Text));
        Assert.Throws<ArgumentException>(() => ChainDimension.Draw([new(new(0, 0), 0)], Line2.Between(new(0, 0), new(1, 0))));
    }

    [Fact]
    public void No_figure_ever_meets_another_or_a_line_however_crowded()
    {
        Stations.Select(Gen.Int[0, 7], Gen.Bool, Gen.Bool).Holds((stations, eighth, below, running) =>
        {
            var along = Vector2.At(eighth * Math.PI / 4);
            var side = below ? -1 : 1;
            var origin = new Point2(500, 500);
            var stops = stations.Select(s => new DimensionStop(origin + s * along, s * 5));
            var line = new Line2(origin + side * 12 * along.Left, along);
            var marks = running ? RunningDimension.Draw(stops, line) : ChainDimension.Draw(stops, line);
            var heavy = marks.Select(m => m is StrokeMark s ? s with { Pen = Pens.Outline } : m);
            var sheet = new Sheet { Name = "s", Title = "s", Paper = new("big", 1000, 1000), Marks = [.. heavy] };
            Assert.Equal([], SheetCheck.Overlaps(sheet).Select(f => f.Message));
        }, iter: 500);
    }

    [Fact]
    public void Crowded_places_move_apart_as_little_as_can_be()
    {
        Assert.Equal([0, 10, 30], Spread.Apart([0, 10, 30], 5));
        Assert.Equal([-2.5, 2.5, 30], Spread.Apart([0, 0, 30], 5));
        Stations.Holds(wished =>
        {
            var places = Spread.Apart(wished, 5);
            for (var i = 1; i < places.Length; i++) Assert.True(places[i] - places[i - 1] >= 5 - 1e-9);
            Assert.Equal(wished.Sum(), places.Sum(), 6);
        });
    }

    [Fact]
    public void Figures_read_from_the_bottom_or_the_right()
    {
        Gen.Double[-10, 10].Holds(radians => Assert.InRange(Reading.TurnOf(Vector2.At(radians)).Degrees, -90, 90.0001));
        Assert.Equal(90, Reading.TurnOf(new(0, 1)).Degrees, 9);
        Assert.Equal(90, Reading.TurnOf(new(0, -1)).Degrees, 9);
        Assert.Equal(0, Reading.TurnOf(new(-1, 0)).Degrees, 9);
    }

    [Fact]
    public void An_angle_prints_degrees_outside_its_arc()
    {
        var marks = AngleDimension.Draw(new(0, 0), default, Angle.FromDegrees(42.25), 20);
        var text = Assert.Single(marks.OfType<TextMark>());
        Assert.Equal("42.3°", text.Text);
        Assert.All(text.Corners, c => Assert.True(c.DistanceTo(new(0, 0)) > 20.5));
        var arc = marks.OfType<StrokeMark>().Single(s => s.Path.Vertices[0].Bulge != 0);
        Assert.Equal(20 * Angle.FromDegrees(42.25).Radians, arc.Path.Length, 9);
    }

    [Fact]
    public void A_scale_bar_measures_round_lengths_of_timber()
    {
        var marks = ScaleBar.Draw(new(0, 0), Scale.OneTo(20), 80);
        Assert.Equal(["0", "250", "1250 mm"], marks.OfType<TextMark>().Select(t => t.Text));
        Assert.Equal(1250.0 / 20, marks.OfType<StrokeMark>().Single(s => s.Path.Closed).Bounds.Width, 9);
    }
}
