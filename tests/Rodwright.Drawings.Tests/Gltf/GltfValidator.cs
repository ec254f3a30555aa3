using System.Text.Json;
using Rodwright.Drawings.Tests.Outside;

namespace Rodwright.Drawings.Tests.Gltf;

/// <summary>The independent validator of glTF files (npm package gltf-validator).</summary>
internal static class GltfValidator
{
    private static readonly NodeTool Tool = new("Gltf/validator", "gltf-validator");

    /// <summary>The validator's report on a file.</summary>
    public static JsonElement Check(byte[] file) => Tool.Read("check.mjs", "model.glb", file);
}
