using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Box2Tests
{
    [Fact]
    public void An_empty_box_takes_in_the_first_point()
    {
        Assert.True(Box2.Empty.IsEmpty);
        Assert.Equal(new(2, 3, 2, 3), Box2.Empty.With(new Point2(2, 3)));
        Assert.Equal(new(0, 0, 1, 1), new Box2(0, 0, 1, 1).With(Box2.Empty));
        Assert.Equal(new(0, 0, 1, 1), Box2.Empty.With(new Box2(0, 0, 1, 1)));
        Assert.True(Box2.Of([]).IsEmpty);
    }

    [Fact]
    public void Boxes_that_only_touch_share_no_area()
    {
        var box = new Box2(0, 0, 10, 10);
        Assert.False(box.Overlaps(new(10, 0, 20, 10)));
        Assert.True(box.Overlaps(new(9, 9, 20, 20)));
        Assert.False(box.Overlaps(new(9, 9, 20, 20), 1));
        Assert.False(box.Overlaps(Box2.Empty));
    }

    [Fact]
    public void A_grown_box_holds_the_box_it_grew_from()
    {
        var box = new Box2(0, 0, 10, 20);
        Assert.True(box.Grown(2).Holds(box));
        Assert.False(box.Holds(box.Grown(2)));
        Assert.True(box.Holds(box.Grown(2), 2));
        Assert.Equal(new(5, 10), box.Grown(2).Centre);
        Assert.Equal(14, box.Grown(2).Width);
        Assert.Equal(24, box.Grown(2).Height);
    }

    [Fact]
    public void Boxes_overlap_whichever_is_asked() =>
        Gen.Select(Shapes.Points, Shapes.Points, Shapes.Points, Shapes.Points).Holds((a, b, c, d) =>
            Box2.Of([a, b]).Overlaps(Box2.Of([c, d])) == Box2.Of([c, d]).Overlaps(Box2.Of([a, b])));
}
