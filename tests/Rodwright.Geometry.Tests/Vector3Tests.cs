using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Vector3Tests
{
    [Fact]
    public void The_axes_make_one_another_right_handed()
    {
        Assert.Equal(Vector3.Up, new Vector3(1, 0, 0).Cross(new(0, 1, 0)));
        Assert.Equal(7, new Vector3(2, 3, 6).Length, 12);
    }

    [Fact]
    public void A_vector_product_is_square_to_both() =>
        Gen.Select(Shapes.Points3, Shapes.Points3).Holds((p, q) =>
        {
            var (a, b) = (p - new Point3(), q - new Point3());
            var c = a.Cross(b);
            var size = 1e-12 * (1 + a.Length * b.Length) * (1 + a.Length + b.Length);
            return Math.Abs(c.Dot(a)) <= size && Math.Abs(c.Dot(b)) <= size && (b.Cross(a) + c).Length == 0;
        });

    [Fact]
    public void The_mirror_turns_a_vector_product_about() =>
        Gen.Select(Shapes.Points3, Shapes.Points3).Holds((p, q) =>
        {
            var (a, b) = (p - new Point3(), q - new Point3());
            return (a.Mirrored.Cross(b.Mirrored) + a.Cross(b).Mirrored).Length < 1e-6;
        });
}
