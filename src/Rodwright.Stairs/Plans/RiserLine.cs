using Rodwright.Geometry;

namespace Rodwright.Stairs.Plans;

/// <summary>The face of a riser in plan, from the inner to the outer boundary.</summary>
/// <param name="Number">1 at the bottom.</param>
/// <param name="Inner">On the inner boundary.</param>
/// <param name="Walking">On the walking line.</param>
/// <param name="Outer">On the outer boundary.</param>
/// <param name="Up">Unit direction square to the line, up the stair.</param>
public sealed record RiserLine(int Number, Point2 Inner, Point2 Walking, Point2 Outer, Vector2 Up)
{
    /// <summary>The unbounded line, directed from inner to outer.</summary>
    public Line2 Line => Line2.Between(Inner, Outer);

    /// <summary>Mirrored in the y axis.</summary>
    public RiserLine Mirrored() => new(Number, Inner.Mirrored, Walking.Mirrored, Outer.Mirrored, new(-Up.X, Up.Y));
}
