using System.Globalization;
using System.Text;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>Writes group codes and values, and deals out handles.</summary>
internal sealed class DxfTags
{
    private readonly StringBuilder text = new(1 << 16);
    private int lastHandle;

    /// <summary>The next handle never yet dealt out.</summary>
    public string NextUnused => Hex(lastHandle + 1);

    public string Text => text.ToString();

    public string Handle() => Hex(++lastHandle);

    public DxfTags Add(int code, string value)
    {
        text.Append(code).Append('\n').Append(value).Append('\n');
        return this;
    }

    public DxfTags Add(int code, int value) => Add(code, value.ToString(CultureInfo.InvariantCulture));

    public DxfTags Real(int code, double value) => Add(code, DxfText1252.Real(value));

    /// <summary>x and y under codes n and n + 10.</summary>
    public DxfTags Point(int code, Point2 p) => Real(code, p.X).Real(code + 10, p.Y);

    /// <summary>x, y and z = 0 under codes n, n + 10 and n + 20.</summary>
    public DxfTags Point3(int code, Point2 p) => Point(code, p).Real(code + 20, 0);

    private static string Hex(int value) => value.ToString("X", CultureInfo.InvariantCulture);
}
