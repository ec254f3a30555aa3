namespace Rodwright.Drawings.Fonts;

/// <summary>
/// Measuring of lettering by the embedded face (DejaVu Sans Condensed, and its bold), never by the machine's fonts, so that every machine
/// lays a sheet out alike. No kerning: the writers set none either. Safe from any thread.
/// </summary>
public static class Lettering
{
    private static readonly FontFace Regular = Load("lettering-regular.ttf");
    private static readonly FontFace Heavy = Load("lettering-bold.ttf");

    /// <summary>The family name of the embedded face.</summary>
    public const string Family = "DejaVu Sans Condensed";

    /// <summary>Em size, mm, that gives capitals of the given height.</summary>
    public static double EmSize(double height, bool bold = false)
    {
        var face = Face(bold);
        return height * face.UnitsPerEm / face.CapHeight;
    }

    /// <summary>Length of one line of text, mm, for capitals of <paramref name="height"/> mm.</summary>
    public static double Width(ReadOnlySpan<char> text, double height, bool bold = false)
    {
        var face = Face(bold);
        var units = 0.0;
        foreach (var c in text) units += face.Advance(c);
        return units * height / face.CapHeight;
    }

    /// <summary>Lowest and highest ink about the baseline, mm; a blank text counts as high as its capitals.</summary>
    public static (double Bottom, double Top) InkRise(ReadOnlySpan<char> text, double height, bool bold = false)
    {
        var face = Face(bold);
        var (bottom, top) = (int.MaxValue, int.MinValue);
        foreach (var c in text)
        {
            var rise = face.Rise(c);
            if (rise.Top == rise.Bottom) continue;
            bottom = Math.Min(bottom, rise.Bottom);
            top = Math.Max(top, rise.Top);
        }
        return top == int.MinValue ? (0, height) : (bottom * height / face.CapHeight, top * height / face.CapHeight);
    }

    /// <summary>Whether the face letters this character; one that it has not prints as an empty box.</summary>
    public static bool Has(char c) => Regular.Glyph(c) != 0 && Heavy.Glyph(c) != 0;

    /// <summary>The bytes of the embedded TrueType file: read only.</summary>
    internal static byte[] File(bool bold) => Face(bold).File;

    private static FontFace Face(bool bold) => bold ? Heavy : Regular;

    private static FontFace Load(string name)
    {
        using var stream = typeof(Lettering).Assembly.GetManifestResourceStream(name)!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return new(bytes);
    }
}
