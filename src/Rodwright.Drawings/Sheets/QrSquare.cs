using QRCoder;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Sheets;

/// <summary>A QR code (ISO/IEC 18004) as a mark, black on the bare paper, its quiet edge included in its box.</summary>
public static class QrSquare
{
    /// <summary>The code of a text.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="box">Where it stands: the largest square in the middle of it.</param>
    public static FillMark Draw(string text, Box2 box)
    {
        using var generator = new QRCodeGenerator();
        using var data = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.M);
        var rows = data.ModuleMatrix;
        var module = Math.Min(box.Width, box.Height) / rows.Count;
        var (left, top) = (box.Centre.X - module * rows.Count / 2, box.Centre.Y + module * rows.Count / 2);
        var runs = new List<Path2>();
        for (var r = 0; r < rows.Count; r++)
        {
            for (var c = 0; c < rows.Count; c++)
            {
                if (!rows[r][c]) continue;
                var from = c;
                while (c + 1 < rows.Count && rows[r][c + 1]) c++;
                runs.Add(Path2.Rectangle(left + from * module, top - (r + 1) * module, left + (c + 1) * module, top - r * module));
            }
        }
        return new(runs, 1, Layer.Lettering);
    }
}
