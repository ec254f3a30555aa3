using System.Text.Json;
using Rodwright.Drawings.Tests.Outside;

namespace Rodwright.Drawings.Tests.Models;

/// <summary>Programs that are not ours and read models: an independent CAD kernel (npm package occt-import-js) and an independent reader of building models (npm package web-ifc).</summary>
internal static class ModelReaders
{
    private static readonly NodeTool Tool = new("Models/readers", "web-ifc");

    /// <summary>What the CAD kernel finds in a STEP file.</summary>
    public static JsonElement Step(ReadOnlySpan<byte> file) => Tool.Read("step.mjs", "model.step", file);

    /// <summary>What the building reader finds in an IFC file.</summary>
    public static JsonElement Ifc(ReadOnlySpan<byte> file) => Tool.Read("ifc.mjs", "model.ifc", file);
}
