using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Stairs.Balustrades;

namespace Rodwright.Joinery.Balustrades;

/// <summary>
/// The vertical plane through the middle of a rail, in which it and its balusters are set out as (s, z). Faces look at the stair: along a string on the left of somebody climbing s runs to the right, along one on the
/// right to the left.
/// </summary>
/// <param name="Centre">The rail's middle in plan.</param>
/// <param name="Flips">Whether s runs to the left as one looks at the faces.</param>
internal readonly record struct Upright(Line2 Centre, bool Flips)
{
    /// <summary>The plane of a rail.</summary>
    public static Upright Of(RailRun rail) => new(rail.Centre, rail.String is { Inner: false });

    /// <summary>Unit direction from the middle to the face side.</summary>
    public Vector2 Front => Flips ? Centre.Along.Left : Centre.Along.Right;

    /// <summary>The frame of the face side of a piece as wide as given, in the middle of the plane; its origin at s = z = 0.</summary>
    public Frame3 Frame(double width) => FrameAt(width / 2);

    /// <summary>The frame of a face that stands so far before the middle.</summary>
    public Frame3 FrameAt(double before)
    {
        var origin = Centre.Through + before * Front;
        return new(new(origin.X, origin.Y, 0), Vector3.Level(Flips ? -Centre.Along : Centre.Along), Vector3.Up);
    }

    /// <summary>An outline in (s, z) as it lies on the faces.</summary>
    public Path2 On(Path2 path) => Flips ? path.Mirrored() : path;

    /// <summary>The smallest blank round an outline in (s, z), its grain along a direction, as it lies on the faces.</summary>
    public Blank Around(Path2 outline, Vector2 grain, double thickness)
    {
        var box = Box2.Of(outline.Flattened().Select(p => new Point2(grain.Dot(p - Point2.Origin), grain.Left.Dot(p - Point2.Origin))));
        var blank = new Blank(box.Width, box.Height, thickness, Point2.Origin + box.MinX * grain + box.MinY * grain.Left, grain, []);
        return Flips ? blank.Mirrored(0) : blank;
    }
}
