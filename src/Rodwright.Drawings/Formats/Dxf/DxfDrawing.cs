using System.Collections.Immutable;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;

namespace Rodwright.Drawings.Formats.Dxf;

/// <summary>What a DXF file holds, whether a sheet or the cuts of one board: layers, and entities on them, in millimetres. Immutable.</summary>
public sealed record DxfDrawing
{
    /// <summary>A drawing. Layers are listed as first used, after any that are named up front.</summary>
    /// <param name="entities">In drawing order.</param>
    /// <param name="layers">Layers to list even when empty, so that a machine's template finds them.</param>
    /// <exception cref="ArgumentException">Two different layers share a name.</exception>
    public DxfDrawing(IEnumerable<DxfEntity> entities, IEnumerable<DxfLayer>? layers = null)
    {
        Entities = [.. entities];
        Layers = [.. (layers ?? []).Concat(Entities.Select(e => e.Layer)).Distinct()];
        var twice = Layers.GroupBy(l => DxfText1252.LayerName(l.Name), StringComparer.OrdinalIgnoreCase).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null) throw new ArgumentException($"two layers are named {twice.Key}");
    }

    /// <summary>The entities, in drawing order.</summary>
    public ImmutableArray<DxfEntity> Entities { get; }

    /// <summary>The layers, in the order they are listed.</summary>
    public ImmutableArray<DxfLayer> Layers { get; }

    /// <summary>The box round all entities; a unit box for an empty drawing.</summary>
    public Box2 Bounds
    {
        get
        {
            var box = Box2.Empty;
            foreach (var entity in Entities)
            {
                box = box.With(entity switch
                {
                    DxfPath path => path.Path.Bounds,
                    DxfText text => text.Text.Bounds,
                    DxfFill fill => fill.Outlines.Aggregate(Box2.Empty, (b, o) => b.With(o.Bounds)),
                    _ => throw new System.Diagnostics.UnreachableException(),
                });
            }
            return box.IsEmpty ? new(0, 0, 1, 1) : box;
        }
    }

    /// <summary>
    /// The drawing of a sheet, in millimetres of paper, a layer for each layer of meaning. Windows are cut into the lines themselves, arcs
    /// still arcs; white fills, which only cover, are left out since a line drawing covers nothing.
    /// </summary>
    public static DxfDrawing Of(Sheet sheet) => new(SheetToDxf.Entities(sheet.AllMarks));
}
