using System.Xml.Linq;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Xunit;

namespace Rodwright.Drawings.Tests.Formats;

public sealed class SvgFragmentTests
{
    private static XElement Read(params Mark[] marks) => XElement.Parse(SvgWriter.Fragment(marks, 100));

    private static List<XElement> Paths(XElement group) => [.. group.Descendants("path")];

    private static string? Value(XElement element, string name) => (string?)element.Attribute(name);

    [Fact]
    public void A_sheet_as_a_fragment_carries_no_colour_of_its_own_no_ids_and_no_styles()
    {
        var group = Read([.. Sampler.Board().Marks]);
        Assert.Equal(("g", "none", "currentColor"), (group.Name.LocalName, Value(group, "fill")!, Value(group, "stroke")!));
        foreach (var element in group.DescendantsAndSelf())
        {
            Assert.Null(element.Attribute("style"));
            Assert.Null(element.Attribute("id"));
            Assert.Contains(Value(element, "fill"), (string?[])[null, "none", "currentColor", "#fff"]);
            if (Value(element, "fill") == "#fff") Assert.Contains("knockout", Value(element, "class"), StringComparison.Ordinal);
            Assert.Contains(element.Name.LocalName, (string[])["g", "path", "text"]);
        }
    }

    [Fact]
    public void Lines_of_one_layer_pen_and_thing_are_one_path_wherever_they_come()
    {
        StrokeMark Line(double y, string? of, Pen pen) => StrokeMark.Line(new(0, y), new(10, y), pen, Layer.Visible, of);
        var group = Read(Line(1, "a", Pens.Visible), Line(2, "b", Pens.Visible), Line(3, "a", Pens.Visible), Line(4, "a", Pens.Hidden), Line(5, null, Pens.Visible));
        Assert.Equal(["M0 99L10 99M0 97L10 97", "M0 98L10 98", "M0 95L10 95", "M0 96L10 96"], Paths(group).Select(p => Value(p, "d")));
        Assert.Equal(["a", "b", null, "a"], Paths(group).Select(p => Value(p, "data-of")));
        var hidden = Paths(group)[3];
        Assert.Equal(("visible", "0.25", "2.5 1", "butt"), (Value(hidden, "class"), Value(hidden, "stroke-width"), Value(hidden, "stroke-dasharray"), Value(hidden, "stroke-linecap")));
        Assert.Equal("0.35", Value(Paths(group)[0].Parent!, "stroke-width"));
    }

    [Fact]
    public void What_covers_stays_over_what_came_before_it_and_under_what_comes_after()
    {
        var box = Path2.Rectangle(0, 0, 5, 5);
        var group = Read(
            new StrokeMark(box, Pens.Visible, Layer.Visible, "under"), new FillMark([box], 0, Layer.Visible, "cover"), new StrokeMark(box, Pens.Visible, Layer.Visible, "over"));
        Assert.Equal(["under", "cover", "over"], Paths(group).Select(p => Value(p, "data-of")));
        Assert.Equal("visible knockout", Value(Paths(group)[1], "class"));
        // A figure's box covers the lines, whichever was told first.
        group = Read(new TextMark(new(1, 1), "12", 3.5, Layer.Dimension, knockout: true), new StrokeMark(box, Pens.Visible, Layer.Visible));
        Assert.Equal(["path visible", "path knockout", "g dimension"], group.Elements().Select(e => $"{e.Name.LocalName} {Value(e, "class")}"));
    }

    [Fact]
    public void Ink_and_tints_are_opacities_and_areas_to_pick_are_not_seen()
    {
        var box = Path2.Rectangle(0, 0, 5, 5);
        var group = Read(
            new FillMark([box], 0, Layer.Hit, "tread-1"), new FillMark([box], 0.1, Layer.Housing, "h"), new FillMark([box], 1, Layer.Construction),
            new StrokeMark(box, Pens.Construction, Layer.Construction));
        var paths = Paths(group);
        Assert.Equal(("hit", "all", "none", null), (Value(paths[0], "class"), Value(paths[0], "pointer-events"), Value(paths[0], "stroke"), Value(paths[0], "fill")));
        Assert.Equal(("housing", "currentColor", "0.1"), (Value(paths[1], "class"), Value(paths[1], "fill"), Value(paths[1], "fill-opacity")));
        Assert.Null(Value(paths[2], "fill-opacity"));
        Assert.Equal("0.5", Value(paths[3], "stroke-opacity"));
    }

    [Fact]
    public void Windows_are_cut_not_nested()
    {
        var group = Read(new ClipMark(new(0, 0, 10, 10),
        [
            StrokeMark.Line(new(-5, 5), new(15, 5), Pens.Visible, Layer.Visible), StrokeMark.Line(new(-5, 50), new(15, 50), Pens.Visible, Layer.Visible),
            new FillMark([Path2.Rectangle(5, 5, 20, 20)], 0.2, Layer.Tint), new TextMark(new(50, 50), "outside", 3.5, Layer.Lettering),
            new ClipMark(new(8, 0, 20, 20), [StrokeMark.Line(new(0, 2), new(20, 2), Pens.Visible, Layer.Visible)]),
        ]));
        Assert.Equal(["M5 95L10 95L10 90L5 90Z", "M0 95L10 95M8 98L10 98"], Paths(group).Select(p => Value(p, "d")));
        Assert.Empty(group.Descendants("text"));
    }

    [Fact]
    public void Words_keep_their_measured_length_their_spaces_and_what_markup_would_make_of_them()
    {
        var text = new TextMark(new(10, 20), "929.2  <b>&\"riser\" 4", 3.5, Layer.Dimension, of: "a\"b<c");
        var element = Read(text).Descendants("text").Single();
        Assert.Equal("929.2 \u00A0<b>&\"riser\" 4", element.Value);
        Assert.Equal(Number.Print(text.Width, 2), Value(element, "textLength"));
        Assert.Equal(("10", "80", "a\"b<c"), (Value(element, "x"), Value(element, "y"), Value(element, "data-of")));
        Assert.Equal("dimension", Value(element.Parent!, "class"));
        var turned = Read(text with { Turn = Angle.FromDegrees(90) }).Descendants("text").Single();
        Assert.Equal("translate(10 80)rotate(-90)", Value(turned, "transform"));
    }

    [Fact]
    public void Half_turns_are_written_in_quarters()
    {
        var d = Value(Paths(Read(new StrokeMark(Path2.Circle(new(50, 50), 10), Pens.Visible, Layer.Visible)))[0], "d")!;
        Assert.Equal("M60 50A10 10 0 0 0 50 40A10 10 0 0 0 40 50A10 10 0 0 0 50 60A10 10 0 0 0 60 50Z", d);
    }
}
