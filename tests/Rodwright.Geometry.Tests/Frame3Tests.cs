using CsCheck;
using Rodwright.Properties;
using Xunit;

namespace Rodwright.Geometry.Tests;

public class Frame3Tests
{
    private static Gen<Frame3> Frames { get; } =
        from origin in Shapes.Points3
        from direction in Shapes.Directions
        from tilt in Shapes.Directions
        let u = Vector3.Level(Vector2.At(direction))
        let across = Vector3.Level(Vector2.At(direction).Left)
        select new Frame3(origin, u, Angle.Cos(tilt) * across + Angle.Sin(tilt) * Vector3.Up);

    [Fact]
    public void The_face_of_a_wall_seen_from_the_south_looks_south()
    {
        var frame = new Frame3(new(0, 0, 0), new(1, 0, 0), Vector3.Up);
        Assert.Equal(new(0, -1, 0), frame.W);
        Assert.Equal(new(5, -2, 7), frame.ToWorld(new(5, 7), 2));
    }

    [Fact]
    public void There_and_back_is_the_same_place() =>
        Gen.Select(Frames, Shapes.Points, Shapes.Coordinates).Holds((frame, p, w) =>
        {
            var (face, depth) = frame.ToLocal(frame.ToWorld(p, w));
            return face.DistanceTo(p) < 1e-7 && Math.Abs(depth - w) < 1e-7;
        });

    [Fact]
    public void A_mirrored_frame_is_right_handed_with_axes_square_and_of_length_one() =>
        Frames.Holds(frame =>
        {
            var m = frame.Mirrored;
            return m.U.Cross(m.V).Dot(m.W) > 1 - 1e-12 && Math.Abs(m.U.Dot(m.V)) < 1e-12 && Math.Abs(m.U.Length - 1) < 1e-12 && Math.Abs(m.V.Length - 1) < 1e-12;
        });

    [Fact]
    public void What_lay_at_u_lies_at_minus_u_in_the_mirror() =>
        Gen.Select(Frames, Shapes.Points, Shapes.Coordinates).Holds((frame, p, w) =>
            frame.ToWorld(p, w).Mirrored.DistanceTo(frame.Mirrored.ToWorld(p.Mirrored, w)) < 1e-7);

    [Fact]
    public void Mirrored_twice_it_is_the_same_frame() =>
        Frames.Holds(frame => frame.Mirrored.Mirrored == frame);
}
