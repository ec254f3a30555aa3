using System.Text;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>
/// Text as DXF wants it: code page 1252, with every other character, and whatever the format would take for a code of its own, as \U+XXXX.
/// </summary>
internal static class DxfText1252
{
    /// <summary>Lettering for group 1.</summary>
    public static string Escaped(string value)
    {
        var text = new StringBuilder(value.Length);
        for (var i = 0; i < value.Length; i++)
        {
            var c = value[i];
            if ((c == '\\' && i + 2 < value.Length && value[i + 1] is 'U' or 'M' && value[i + 2] == '+') || (c == '%' && i > 0 && value[i - 1] == '%')) Code(c);
            else if (c == '^') text.Append("^ "); // a caret alone starts a control code
            else if (c is >= ' ' and <= '~' or >= '\u00A0' and <= '\u00FF') text.Append(c);
            else if (c >= ' ' && c != '\u007F') Code(c);
            else text.Append(' ');
        }
        return text.ToString();

        void Code(char c) => text.Append("\\U+").Append(((int)c).ToString("X4", System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>A layer name: what the format allows, the rest as underscores.</summary>
    public static string LayerName(string name) =>
        string.Concat(name.Select(c => char.IsAsciiLetterOrDigit(c) || c is ' ' or '-' or '_' or '$' ? c : '_'));

    /// <summary>The bytes. What is left above ASCII lies in A0 to FF, where code page 1252 and Latin-1 agree.</summary>
    public static byte[] Bytes(string text) => Encoding.Latin1.GetBytes(text);

    /// <summary>A real number: at most six decimals, always with a point.</summary>
    public static string Real(double value)
    {
        if (value == 0) return "0.0"; // half of what a file holds: every z
        var text = Number.Print(value, 6);
        return text.Contains('.', StringComparison.Ordinal) ? text : text + ".0";
    }
}
