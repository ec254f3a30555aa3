using System.Globalization;
using System.Xml.Linq;
using CsCheck;
using Rodwright.Drawings.Formats.Svg;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests.Formats;

public sealed class SvgTests
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    [Fact]
    public void A_sheet_is_sized_in_millimetres_and_every_mark_is_there()
    {
        var root = XDocument.Parse(SvgWriter.Write(Sampler.Board())).Root!;
        Assert.Equal(("420mm", "297mm", "0 0 420 297"), ((string)root.Attribute("width")!, (string)root.Attribute("height")!, (string)root.Attribute("viewBox")!));
        Assert.Contains(root.Descendants(Ns + "g"), g => (string?)g.Attribute("class") == "outline-to-cut" && (string?)g.Attribute("data-of") == "board" && (string?)g.Attribute("stroke-width") == "0.5");
        Assert.Contains(root.Descendants(Ns + "g"), g => (string?)g.Attribute("data-id") == "tread-3" && g.Element(Ns + "title")!.Value == "Tread 3");
        Assert.Contains(root.Descendants(Ns + "g"), g => (string?)g.Attribute("stroke-dasharray") == "2.5 1");
        Assert.Contains(root.Descendants(Ns + "path"), p => (string?)p.Attribute("class") == "knockout");
        Assert.Contains(root.Descendants(Ns + "path"), p => (string?)p.Attribute("class") == "housing" && (string?)p.Attribute("fill") == "#e6e6e6");
        Assert.Contains(root.Descendants(Ns + "text"), t => t.Value == "⌀32 bore");
        var clip = Assert.Single(root.Descendants(Ns + "svg"), s => s != root);
        Assert.Equal("256 185 44 38", (string?)clip.Attribute("viewBox"));
        Assert.DoesNotContain(root.Descendants(), e => e.Attribute("id") is not null);
    }

    [Fact]
    public void Arcs_are_written_as_arcs_and_read_back_true()
    {
        var paths =
            from x in Gen.Double[0, 400]
            from y in Gen.Double[0, 290]
            from bulge in Gen.Double[-3, 3].Where(b => Math.Abs(b) > 0.02)
            select new Path2([new(new(200, 150), bulge), new(new(x, y))], false);
        paths.Where(p => p.Vertices[0].At.DistanceTo(p.Vertices[1].At) > 5).Holds(path =>
        {
            var svg = SvgWriter.Write("t", 420, 297, [new StrokeMark(path, Pens.Visible, Layer.Visible)]);
            var d = (string)XDocument.Parse(svg).Descendants(Ns + "path").Single().Attribute("d")!;
            var pieces = d.Split('A');
            var from = Numbers(pieces[0][1..]);
            var arc = Arc2.FromBulge(path.Vertices[0].At, path.Vertices[1].At, path.Vertices[0].Bulge);
            for (var i = 1; i < pieces.Length; i++)
            {
                var n = Numbers(pieces[i]);
                var middle = MiddleOfSvgArc(from[0], from[1], n[0], n[3] == 1, n[4] == 1, n[5], n[6]);
                var want = arc.At((i - 0.5) / (pieces.Length - 1));
                Assert.True(middle.DistanceTo(new(want.X, 297 - want.Y)) < Tolerance.Print / 10, $"piece {i} of {d}");
                from = n[5..];
            }
        });
    }

    [Fact]
    public void A_turned_text_turns_about_its_start()
    {
        var text = new TextMark(new(100, 100), "up", 3.5, Layer.Lettering, turn: Angle.FromDegrees(90));
        var element = XDocument.Parse(SvgWriter.Write("t", 420, 297, [text])).Descendants(Ns + "text").Single();
        Assert.Equal("translate(100 197)rotate(-90)", (string?)element.Attribute("transform"));
        Assert.Equal(Number.Print(text.Width, 3), (string?)element.Attribute("textLength"));
    }

    private static double[] Numbers(string text) => [.. text.Split(' ').Select(s => double.Parse(s, CultureInfo.InvariantCulture))];

    // The centre of an SVG arc, from the definition in SVG 2, appendix B.2.4, for a circle; the middle follows from it.
    private static Point2 MiddleOfSvgArc(double x1, double y1, double r, bool large, bool sweep, double x2, double y2)
    {
        var (a, b) = (new Point2(x1, y1), new Point2(x2, y2));
        var half = (b - a).Length / 2;
        r = Math.Max(r, half);
        var height = Math.Sqrt(r * r - half * half);
        var chord = (b - a).Unit;
        var normal = new Vector2(-chord.Y, chord.X);
        var centre = a.Towards(b, 0.5) + (large != sweep ? height : -height) * normal;
        // With y downwards, sweep 1 turns with growing angle: the middle lies on the side of -normal for it, beyond the centre when large.
        return centre + (sweep ? -r : r) * normal;
    }
}
