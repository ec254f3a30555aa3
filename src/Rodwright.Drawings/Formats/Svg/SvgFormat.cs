using System.Text;
using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats.Svg;

/// <summary>SVG, one file a sheet.</summary>
public sealed class SvgFormat : ISheetFormat
{
    /// <inheritdoc/>
    public string Id => "svg";

    /// <inheritdoc/>
    public string Title => "SVG pictures";

    /// <inheritdoc/>
    public IReadOnlyList<WrittenFile> Write(SheetSet set) =>
        [.. set.Sheets.Select(sheet => new WrittenFile(sheet.Name + ".svg", "image/svg+xml", Encoding.UTF8.GetBytes(SvgWriter.Write(sheet))))];
}
