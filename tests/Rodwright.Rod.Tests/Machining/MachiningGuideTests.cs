using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Xunit;

namespace Rodwright.Rod.Tests.Machining;

/// <summary>docs/guide/machining.md tells every layer a part's file can have.</summary>
public sealed class MachiningGuideTests
{
    public static TheoryData<string> Rows =>
    [
        .. new[] { MachiningLayers.Outline, MachiningLayers.Blank, MachiningLayers.Jointed, MachiningLayers.TopEdge, MachiningLayers.Marking, MachiningLayers.ToolRadius, MachiningLayers.JigOpening, MachiningLayers.JigPlate, MachiningLayers.JigLines }.Select(l => $"| `{l.Name}` | "),
        .. Enum.GetValues<CutKind>().Select(k => MachiningLayers.Of(new("c", k, 0, Path2.Rectangle(0, 0, 1, 1), 12)).Name)
            .Select(n => $"| `{n[..^2]}` {(n.StartsWith("ROUND", StringComparison.Ordinal) ? "radius" : "depth")} | "),
    ];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Every_layer_has_its_row_in_the_guide(string row) =>
        Assert.Contains(row, File.ReadAllText(Path.Combine(Root(), "docs", "guide", "machining.md")), StringComparison.Ordinal);

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Rodwright.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
