using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Formats.Pdf;
using Rodwright.Drawings.Formats.Svg;

namespace Rodwright.Drawings.Formats;

/// <summary>Every format sheets are written in. A new one is a folder and a line here.</summary>
public static class FormatCatalogue
{
    /// <summary>All formats, in the order they are offered.</summary>
    public static IReadOnlyList<ISheetFormat> All { get; } = [new PdfFormat(), new SvgFormat(), new DxfFormat()];

    /// <summary>The format with an id; null when there is none.</summary>
    public static ISheetFormat? Find(string id) => All.FirstOrDefault(f => string.Equals(f.Id, id, StringComparison.OrdinalIgnoreCase));
}
