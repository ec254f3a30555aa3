using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Drawings.Tests.Samples;
using Rodwright.Geometry;
using Xunit;

namespace Rodwright.Drawings.Tests.Outside;

/// <summary>DXF files read and audited by ezdxf.</summary>
public sealed class DxfAuditTests
{
    private static readonly DxfLayer Cut = new("CUT 12.5/deep", 1, 0.5, Dash.None);
    private static readonly DxfLayer Words = new("WORDS", 7, 0.18, Dash.None);

    [Fact]
    public void The_sampler_sheets_pass_the_audit_with_no_error_and_no_fix()
    {
        var sheets = Sampler.Set().Sheets.Append(Tiling.Cut(Sampler.Template(), PaperSize.A4).Sheets[1]).ToList();
        var lines = Ezdxf.Read([.. sheets.Select(sheet => DxfWriter.Write(DxfDrawing.Of(sheet)))]);
        Assert.DoesNotContain(lines, l => l[0] is "error" or "fix");
        Assert.Equal(sheets.Count, lines.Count(l => l is ["units", "4", "AC1015"]));
        Assert.Equal(sheets.Count, lines.Count(l => l[0] == "extents"));
    }

    [Fact]
    public void Every_kind_of_mark_is_there_on_its_layer()
    {
        var lines = Ezdxf.Read(DxfWriter.Write(DxfDrawing.Of(Sampler.Board())));
        foreach (var (kind, layer) in new[]
        {
            ("LWPOLYLINE", "OUTLINE-TO-CUT"), ("CIRCLE", "BORE"), ("LINE", "WASTE"), ("HATCH", "HOUSING"), ("TEXT", "LETTERING"), ("LINE", "NOSING"),
        })
            Assert.Contains(lines, l => l[0] == kind && l[1] == layer);
        Assert.Contains(lines, l => l is ["layer", "OUTLINE-TO-CUT", "7", "50", "CONTINUOUS"]);
        Assert.Contains(lines, l => l is ["layer", "HIDDEN", "8", "25", "SHORT"]);
        Assert.Contains(lines, l => l is ["layer", "CENTRE", "4", "18", "LONG-DOT"]);
    }

    [Fact]
    public void Bulges_circles_and_lines_read_back_true()
    {
        var outline = new Path2([new(new(0, 0)), new(new(3800.125, 0), 0.25), new(new(3900, 280.5)), new(new(0, 280.5), -0.1)], true);
        var drawing = new DxfDrawing(
        [
            new DxfPath(Cut, outline), new DxfPath(Cut, Path2.Circle(new(100, 50.25), 16)), new DxfPath(Cut, Path2.Polyline(new Point2(1, 2), new Point2(-3, 4.5))),
        ]);
        var lines = Ezdxf.Read(DxfWriter.Write(drawing));
        Assert.DoesNotContain(lines, l => l[0] is "error" or "fix");
        Assert.Equal([1.0, 0, 0, 0, 3800.125, 0, 0.25, 3900, 280.5, 0, 0, 280.5, -0.1], Tail("LWPOLYLINE"));
        Assert.Equal([100, 50.25, 16], Tail("CIRCLE"));
        Assert.Equal([1, 2, -3, 4.5], Tail("LINE"));
        var extents = Ezdxf.Numbers(lines.Single(l => l[0] == "extents").Skip(1));
        Assert.Equal(outline.Bounds.MaxX, extents[2], 1); // the reader's own extents run along chords
        Assert.Equal(-3, extents[0], 6);

        // The layer's name has a space in it: two words.
        double[] Tail(string kind) => Ezdxf.Numbers(lines.Single(l => l[0] == kind).Skip(3));
    }

    [Fact]
    public void Lettering_keeps_every_letter()
    {
        const string text = "⌀32 ½° é – 木 100%% \\P ^J {x} \\U+0041";
        var lines = Ezdxf.Read(DxfWriter.Write(new([new DxfText(Words, new(new(10, 20), text, 3.5, Layer.Lettering, turn: Angle.FromDegrees(30)))])));
        Assert.DoesNotContain(lines, l => l[0] is "error" or "fix");
        var line = lines.Single(l => l[0] == "TEXT");
        Assert.Equal([3.5, 30, 10, 20], Ezdxf.Numbers(line[2..6]));
        Assert.Equal(@"'\u230032 \xbd\xb0 \xe9 \u2013 \u6728 100%% \\P ^J {x} \\U+0041'", string.Join(' ', line[6..]));
    }

    [Fact]
    public void An_empty_drawing_with_named_layers_passes()
    {
        var lines = Ezdxf.Read(DxfWriter.Write(new([], [Cut, Words])));
        Assert.DoesNotContain(lines, l => l[0] is "error" or "fix");
        Assert.Contains(lines, l => l is ["layer", "CUT", "12_5_deep", "1", "50", "CONTINUOUS"]);
    }

    [Fact]
    public void Two_layers_of_one_name_are_refused() =>
        Assert.Throws<ArgumentException>(() => new DxfDrawing([], [Cut, Cut with { Colour = 2 }]));

    [Fact]
    public void A_window_cuts_lines_and_arcs_and_arcs_stay_arcs()
    {
        var circle = Path2.Circle(new(0, 0), 10);
        var pieces = PathClip.Inside(circle, new(0, 0, 20, 20));
        var quarter = Assert.Single(pieces);
        Assert.Equal(Math.PI * 5, quarter.Length, 9);
        Assert.All(quarter.Vertices[..^1], v => Assert.NotEqual(0, v.Bulge));
        Assert.Equal(4, PathClip.Inside(circle, new(-8, -8, 8, 8)).Count);
        Assert.Empty(PathClip.Inside(circle, new(-1, -1, 1, 1)));
        Assert.Equal(2 * Math.PI * 10, PathClip.Inside(circle, new(-20, -20, 20, 20)).Sum(p => p.Length), 9);
        Assert.Equal(12, Assert.Single(PathClip.Inside(Path2.Rectangle(-3, -3, 30, 3), new(-10, -10, 0, 10))).Length, 9);
        Assert.Equal(100, PathClip.Filled(Path2.Rectangle(-10, -10, 10, 10), new(0, 0, 30, 30))!.Area, 9);
        Assert.Null(PathClip.Filled(circle, new(50, 50, 60, 60)));
    }
}
