using System.Buffers.Binary;
using System.Text;

namespace Rodwright.Drawings.Fonts;

/// <summary>
/// The few tables of a TrueType file that measuring needs: which glyph a character has (cmap, format 4), how far it advances (hmtx) and
/// how high and low its ink goes (glyf). Everything is read once into arrays by UTF-16 code unit; characters beyond those are not lettered.
/// </summary>
internal sealed class FontFace
{
    private readonly byte[] file;
    private readonly Dictionary<string, (int Start, int Length)> tables = [];
    private readonly ushort[] glyphs = new ushort[char.MaxValue + 1];
    private readonly float[] advances = new float[char.MaxValue + 1];
    private readonly (short Bottom, short Top)[] rises = new (short, short)[char.MaxValue + 1];

    /// <summary>Reads a face.</summary>
    /// <exception cref="InvalidDataException">The file lacks a table or the kind of map this reader knows.</exception>
    public FontFace(byte[] file)
    {
        this.file = file;
        var count = U16(4);
        for (var i = 0; i < count; i++)
        {
            var entry = 12 + 16 * i;
            tables[Encoding.ASCII.GetString(file, entry, 4)] = (I32(entry + 8), I32(entry + 12));
        }
        UnitsPerEm = U16(Table("head") + 18);
        ReadMap(FindMap());
        ReadMetrics();
        CapHeight = rises['H'].Top;
    }

    /// <summary>The whole file, for a writer that embeds it.</summary>
    public byte[] File => file;

    /// <summary>Design units to the em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Height of the capital H, design units.</summary>
    public int CapHeight { get; }

    /// <summary>The glyph of a character; 0 when the face has none.</summary>
    public int Glyph(char c) => glyphs[c];

    /// <summary>Advance of a character, design units.</summary>
    public float Advance(char c) => advances[c];

    /// <summary>Lowest and highest ink of a character about the baseline, design units; both 0 for a space.</summary>
    public (int Bottom, int Top) Rise(char c) => rises[c];

    private int FindMap()
    {
        var cmap = Table("cmap");
        var count = U16(cmap + 2);
        for (var i = 0; i < count; i++)
        {
            var (platform, encoding, at) = (U16(cmap + 4 + 8 * i), U16(cmap + 6 + 8 * i), cmap + I32(cmap + 8 + 8 * i));
            if (platform == 3 && encoding == 1 && U16(at) == 4) return at;
        }
        throw new InvalidDataException("the face has no Unicode map of format 4");
    }

    private void ReadMap(int at)
    {
        var segments = U16(at + 6) / 2;
        var (ends, starts) = (at + 14, at + 16 + 2 * segments);
        var (deltas, offsets) = (starts + 2 * segments, starts + 4 * segments);
        for (var s = 0; s < segments; s++)
        {
            var (first, last, delta, offset) = (U16(starts + 2 * s), U16(ends + 2 * s), U16(deltas + 2 * s), U16(offsets + 2 * s));
            for (var c = first; c <= last && c < 0xFFFF; c++)
            {
                if (offset == 0) glyphs[c] = (ushort)(c + delta);
                else
                {
                    var glyph = U16(offsets + 2 * s + offset + 2 * (c - first));
                    glyphs[c] = (ushort)(glyph == 0 ? 0 : glyph + delta);
                }
            }
        }
    }

    private void ReadMetrics()
    {
        var measured = U16(Table("hhea") + 34);
        var (hmtx, loca, glyf) = (Table("hmtx"), Table("loca"), Table("glyf"));
        var wide = U16(Table("head") + 50) == 1;
        for (var c = 0; c <= char.MaxValue; c++)
        {
            int glyph = glyphs[c];
            advances[c] = U16(hmtx + 4 * Math.Min(glyph, measured - 1));
            var from = wide ? I32(loca + 4 * glyph) : 2 * U16(loca + 2 * glyph);
            var to = wide ? I32(loca + 4 * glyph + 4) : 2 * U16(loca + 2 * glyph + 2);
            if (to > from) rises[c] = ((short)U16(glyf + from + 4), (short)U16(glyf + from + 8));
        }
    }

    private int Table(string tag) =>
        tables.TryGetValue(tag, out var table) ? table.Start : throw new InvalidDataException($"the face has no {tag} table");

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(at));

    private int I32(int at) => BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(at));
}
