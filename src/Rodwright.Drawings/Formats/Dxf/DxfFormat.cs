using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>DXF of release 2000, one file a sheet, in millimetres of paper.</summary>
public sealed class DxfFormat : ISheetFormat
{
    /// <summary>As sent over a network.</summary>
    public const string MediaType = "image/vnd.dxf";

    /// <inheritdoc/>
    public string Id => "dxf";

    /// <inheritdoc/>
    public string Title => "DXF drawings";

    /// <inheritdoc/>
    public IReadOnlyList<WrittenFile> Write(SheetSet set) =>
        [.. set.Sheets.Select(sheet => new WrittenFile(sheet.Name + ".dxf", MediaType, DxfWriter.Write(DxfDrawing.Of(sheet))))];
}
