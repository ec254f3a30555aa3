using Rodwright.Drawings.Sheets;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>PDF, one file for the whole set; its pages may differ in size.</summary>
public sealed class PdfFormat : ISheetFormat
{
    private readonly IPdfWriter writer;

    /// <summary>The format, written by the usual writer.</summary>
    public PdfFormat() : this(new PdfSharpWriter())
    {
    }

    /// <summary>The format, written by a given writer.</summary>
    public PdfFormat(IPdfWriter writer) => this.writer = writer;

    /// <inheritdoc/>
    public string Id => "pdf";

    /// <inheritdoc/>
    public string Title => "PDF to print";

    /// <inheritdoc/>
    public IReadOnlyList<WrittenFile> Write(SheetSet set)
    {
        using var stream = new MemoryStream();
        writer.Write(set, stream);
        return [new(set.Name + ".pdf", "application/pdf", stream.ToArray())];
    }
}
