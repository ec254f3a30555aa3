namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>One thing in a DXF file. The set of kinds is closed.</summary>
public abstract record DxfEntity
{
    private protected DxfEntity(DxfLayer layer) => Layer = layer;

    /// <summary>Its layer.</summary>
    public DxfLayer Layer { get; }
}
