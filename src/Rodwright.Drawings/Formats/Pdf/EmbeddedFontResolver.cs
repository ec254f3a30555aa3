using PdfSharp.Fonts;
using Rodwright.Drawings.Fonts;

namespace Rodwright.Drawings.Formats.Pdf;

/// <summary>Gives PDFsharp the embedded face and no other. PDFsharp keeps one resolver for the whole process: it is set once, here.</summary>
internal sealed class EmbeddedFontResolver : IFontResolver
{
    /// <summary>The family name asked for; ours alone, so that it cannot meet another resolver's.</summary>
    public const string Family = "Rodwright Lettering";

    private static readonly Lock Gate = new();
    private static bool isSet;

    /// <summary>Sets the resolver for this process, if nobody has yet. Safe from any thread.</summary>
    /// <exception cref="InvalidOperationException">Something else in the process has set another resolver.</exception>
    public static void Ensure()
    {
        lock (Gate)
        {
            if (isSet) return;
            if (GlobalFontSettings.FontResolver is not null and not EmbeddedFontResolver)
                throw new InvalidOperationException("another font resolver is already set in this process");
            GlobalFontSettings.FontResolver = new EmbeddedFontResolver();
            isSet = true;
        }
    }

    /// <inheritdoc/>
    public byte[]? GetFont(string faceName) => faceName switch
    {
        "regular" => Lettering.File(bold: false),
        "bold" => Lettering.File(bold: true),
        _ => null,
    };

    /// <inheritdoc/>
    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == Family ? new(bold ? "bold" : "regular") : null;
}
