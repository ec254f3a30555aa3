using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Joinery.Parts;

namespace Rodwright.Joinery.Solids;

/// <summary>A part's solid and where it stands.</summary>
/// <param name="Part">The part.</param>
/// <param name="Shape">Its solid in the frame of its first face.</param>
public sealed record PlacedSolid(Part Part, Solid Shape)
{
    /// <summary>The frame the shape is drawn in, in the world of the stair.</summary>
    public Frame3 Frame => Part.FaceSide.Frame;

    /// <summary>The solid as it stands in the world.</summary>
    public Solid InWorld => Shape.Placed(Frame);
}
