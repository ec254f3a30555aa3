using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats;

/// <summary>A way of writing sheets to files.</summary>
public interface ISheetFormat
{
    /// <summary>Stable short name, as typed: "svg".</summary>
    string Id { get; }

    /// <summary>The name for people.</summary>
    string Title { get; }

    /// <summary>The files of a set: one a sheet, or one for all where the format holds many pages. Names derive from the set's and the sheets'.</summary>
    IReadOnlyList<WrittenFile> Write(SheetSet set);
}
