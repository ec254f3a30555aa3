using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Vector2Tests
{
    [Fact]
    public void Left_is_a_quarter_turn_anticlockwise_and_right_the_other_way() =>
        Shapes.Points.Holds(p =>
        {
            var v = p - Point2.Origin;
            return v.Left.Dot(v) == 0 && v.Cross(v.Left) >= 0 && v.Left == -v.Right && v.Left.Left == -v;
        });

    [Fact]
    public void Direction_and_length_make_the_vector_again() =>
        Shapes.Points.Holds(p =>
        {
            var v = p - Point2.Origin;
            return (v.Length * Vector2.At(v.Direction) - v).Length < 1e-8;
        });

    [Fact]
    public void A_three_four_five_triangle()
    {
        var v = new Vector2(3, 4);
        Assert.Equal(5, v.Length, 12);
        Assert.Equal(new(0.6, 0.8), v.Unit);
        Assert.Equal(11, v.Dot(new(1, 2)));
        Assert.Equal(2, v.Cross(new(1, 2)));
    }
}
