using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>The one door to whatever library or code makes PDF files.</summary>
public interface IPdfWriter
{
    /// <summary>
    /// Writes a set, one page a sheet at exactly its paper's size, with the face embedded and the viewer told not to scale when printing.
    /// A set without sheets gives one blank A4 page, since a PDF cannot be empty.
    /// </summary>
    /// <param name="set">The sheets.</param>
    /// <param name="stream">Written to and left open.</param>
    void Write(SheetSet set, Stream stream);
}
