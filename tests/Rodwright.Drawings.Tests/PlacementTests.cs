using CsCheck;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Drawings.Tests;

public sealed class PlacementTests
{
    private static readonly Gen<Placement> Any =
        from ratio in Gen.Double[1, 100]
        from turn in Gen.Double[-7, 7]
        from mx in Gen.Double[-5000, 5000]
        from px in Gen.Double[-500, 500]
        select new Placement(Scale.OneTo(ratio), new(mx, -mx / 3), new(px, px / 2), Angle.FromRadians(turn));

    [Fact]
    public void Back_from_paper_is_where_it_came_from()
    {
        Any.Select(Gen.Double[-5000, 5000], Gen.Double[-5000, 5000]).Holds((place, x, y) =>
            Assert.True(place.Back(place.Map(new Point2(x, y))).DistanceTo(new(x, y)) < 1e-8));
    }

    [Fact]
    public void Lengths_shrink_by_the_scale_and_arcs_stay_arcs()
    {
        Any.Select(Gen.Double[-2, 2]).Holds((place, bulge) =>
        {
            var path = new Path2([new(new(0, 0), bulge), new(new(300, 40))], true);
            var mapped = place.Map(path);
            Assert.Equal(path.Length / place.Scale.Ratio, mapped.Length, 8);
            Assert.Equal(path.Vertices[0].Bulge, mapped.Vertices[0].Bulge);
        });
    }

    [Fact]
    public void Lettering_turns_with_the_drawing_and_keeps_its_height()
    {
        var place = new Placement(Scale.OneTo(10), new(0, 0), new(5, 5), Angle.FromDegrees(90));
        var text = (TextMark)place.Map(new TextMark(new(100, 0), "x", 3.5, Layer.Lettering));
        Assert.Equal(3.5, text.Height);
        Assert.Equal(90, text.Turn.Degrees, 9);
        Assert.True(text.At.DistanceTo(new(5, 15)) < 1e-9);
    }

    [Fact]
    public void A_window_is_carried_by_quarter_turns_only()
    {
        var clip = new ClipMark(new(0, 0, 10, 20), [StrokeMark.Line(new(0, 0), new(10, 20), Pens.Visible, Layer.Visible)]);
        var turned = (ClipMark)new Placement(Scale.Full, default, default, Angle.FromDegrees(90)).Map(clip);
        Assert.Equal(20, turned.Window.Width, 9);
        Assert.Throws<ArgumentException>(() => new Placement(Scale.Full, default, default, Angle.FromDegrees(30)).Map(clip));
    }

    [Fact]
    public void A_group_is_carried_with_its_name_and_holes_stay_holes()
    {
        var group = new GroupMark("t1", "Tread 1", [new FillMark([Path2.Rectangle(0, 0, 10, 10), Path2.Rectangle(2, 2, 4, 4)], 0.2, Layer.Tint, "t1")]);
        var carried = (GroupMark)Placement.Shift(new(100, 0)).Map(group);
        Assert.Equal(("t1", "Tread 1"), (carried.Id, carried.Title));
        Assert.Equal(2, ((FillMark)carried.Marks[0]).Outlines.Length);
        Assert.Equal(new Box2(100, 0, 110, 10), carried.Bounds);
    }
}
