using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;

namespace Rodwright.Drawings.Formats.Models;

/// <summary>One piece of a model: it becomes one node of the file.</summary>
/// <param name="PartId">Stable id, written as the node's extra "part"; empty for what is no part, a wall for example: then neither id nor mark is written.</param>
/// <param name="Mark">The mark pencilled on it, written as the node's extra "mark".</param>
/// <param name="Name">The node's name.</param>
/// <param name="Shape">Its solid, millimetres, in the frame.</param>
/// <param name="Frame">Where that frame stands in the world.</param>
/// <param name="Material">What it is made of.</param>
public sealed record ModelPiece(string PartId, string Mark, string Name, Solid Shape, Frame3 Frame, ModelMaterial Material)
{
    /// <summary>An object whose properties are written as further extras of the node; null for none.</summary>
    public JsonElement? Extras { get; init; }

    /// <summary>Its way when the model is taken apart; empty for a piece that stays where it is.</summary>
    public ImmutableArray<ModelStretch> Apart { get; init; } = [];
}
