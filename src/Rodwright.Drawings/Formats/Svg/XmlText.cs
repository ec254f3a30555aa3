using System.Text;

namespace Rodwright.Drawings.Formats.Svg;

/// <summary>The little XML that the SVG writer needs.</summary>
internal static class XmlText
{
    /// <summary>Writes an attribute; nothing for a null value.</summary>
    public static StringBuilder Attribute(this StringBuilder text, string name, string? value) =>
        value is null ? text : text.Append(' ').Append(name).Append("=\"").Escaped(value).Append('"');

    /// <summary>Writes text with what XML reserves escaped, and what XML forbids (control characters, lone surrogates) left out.</summary>
    public static StringBuilder Escaped(this StringBuilder text, string value)
    {
        for (var i = 0; i < value.Length; i++)
        {
            var c = value[i];
            switch (c)
            {
                case '&': text.Append("&amp;"); break;
                case '<': text.Append("&lt;"); break;
                case '>': text.Append("&gt;"); break;
                case '"': text.Append("&quot;"); break;
                default:
                    if (char.IsHighSurrogate(c) && i + 1 < value.Length && char.IsLowSurrogate(value[i + 1])) text.Append(c).Append(value[++i]);
                    else if (c >= ' ' && !char.IsSurrogate(c) && c < '\uFFFE') text.Append(c);
                    else if (c is '\t' or '\n' or '\r') text.Append(' ');
                    break;
            }
        }
        return text;
    }
}
