using Rodwright.Geometry;
using Rodwright.Geometry.Solids;

namespace Rodwright.Rod.Scenes;

/// <summary>A plain piece of the room the stair stands in. It is no part: it has no id, no mark, and cannot be picked.</summary>
/// <param name="Kind">floor, landing, upper floor or wall.</param>
/// <param name="Name">Name of its node.</param>
/// <param name="Shape">Its solid, in the world of the stair.</param>
/// <param name="Looks">Unit direction its seen face looks: up for floors, into the room for walls. From behind it would hide the stair.</param>
internal sealed record RoomPiece(string Kind, string Name, Solid Shape, Vector3 Looks);
