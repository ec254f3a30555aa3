using Rodwright.Drawings.Marks;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>A line of lettering.</summary>
public sealed record DxfText : DxfEntity
{
    /// <summary>Lettering; its layer of meaning is not used, that of the file is.</summary>
    public DxfText(DxfLayer layer, TextMark text) : base(layer) => Text = text;

    /// <summary>The lettering, mm.</summary>
    public TextMark Text { get; }
}
