using System.Collections.Immutable;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Stairs.Shops;
using Rodwright.Workshop.Picks;
using Rodwright.Workshop.Pictures;

namespace Rodwright.Workshop.Machining;

/// <summary>A piece's drawing for the machine as a page shows it: what its file holds, layer by layer. Immutable.</summary>
/// <param name="Part">The piece; equal ones that share its mark are cut from the same file.</param>
/// <param name="Layers">The layers, as the file lists them.</param>
/// <param name="Drawing">The file's drawing.</param>
public sealed record MachinedPiece(Part Part, ImmutableArray<MachinedLayer> Layers, DxfDrawing Drawing)
{
    /// <summary>What the machine's cutter leaves in it, place by place.</summary>
    public ImmutableArray<LeftByCutter> Left { get; init; } = [];

    private static readonly Box2 Paper = new(0, 0, 150, 96);
    private const double Edge = 3;
    private const double Readable = 1.5; // letters lower than this are fog on a screen, mm of paper
    private static readonly Pen Heavy = new(0.5, Dash.None);
    private static readonly Pen Line = new(0.25, Dash.None);
    private static readonly Pen Thin = new(0.18, Dash.Short);
    private static readonly Pen Chosen = new(0.45, Dash.None);
    private static readonly Pen Faint = new(0.13, Dash.None, 0.5);

    /// <summary>The drawing of a piece.</summary>
    /// <param name="part">The piece.</param>
    /// <param name="kit">The kit it belongs to.</param>
    /// <param name="router">What recesses are cut with.</param>
    public static MachinedPiece Of(Part part, Kit kit, ShopRouter router)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(router);
        var left = CutterCorners.Of(part, router.Cutter);
        var drawing = PartDxf.Of(part, kit, left);
        return new(part, [.. drawing.Layers.Select(l => Layer(part, kit, l, drawing.Entities.Count(e => e.Layer == l)))], drawing) { Left = [.. left] };
    }

    /// <summary>Whether the picture lies though the file's drawing stands, so that more of it is seen: its head to the right.</summary>
    public bool IsLaid => Part.Kind.IsPost();

    /// <summary>The drawing small enough for a screen: the deeper a cut, the heavier its tint.</summary>
    /// <param name="layer">Name of a layer that stands out from the others; null for none.</param>
    public Picture Picture(string? layer = null)
    {
        // Lettering that is too small to read is left out, and takes no room either.
        var shapes = Drawing.Entities.OfType<DxfPath>().Aggregate(Box2.Empty, (box, p) => box.With(p.Path.Bounds));
        var room = Paper.Grown(-Edge);
        var (wide, high) = IsLaid ? (shapes.Height, shapes.Width) : (shapes.Width, shapes.Height);
        var scale = Scale.OneTo(Math.Max(1, Math.Max(wide / room.Width, high / room.Height)));
        var height = high * scale.Factor + 2 * Edge;
        var turn = Angle.FromDegrees(IsLaid ? -90 : 0);
        var place = Placement.Centred(shapes, new(0, 0, Paper.Width, height), scale, turn);
        var named = Layers.ToDictionary(l => l.Name);
        return new(Paper.Width, height, [.. Drawing.Entities.OrderBy(e => e.Layer.Name == layer ? 1 : 0).SelectMany(Marks)]);

        IEnumerable<Mark> Marks(DxfEntity entity)
        {
            var (known, chosen) = (named[entity.Layer.Name], entity.Layer.Name == layer);
            if (entity is DxfPath { Path: var path })
            {
                var drawn = place.Map(path);
                if (path.Closed && known.Depth > 0 && (layer is null || chosen)) yield return new FillMark([drawn], Math.Clamp(0.08 + 0.4 * known.Depth / Part.Blank.Thickness, 0, 0.6), Drawings.Marks.Layer.Tint);
                yield return new StrokeMark(drawn, chosen ? Chosen : layer is not null ? Faint : known.Depth > 0 ? Line : entity.Layer.Dash == Dash.None && entity.Layer.LineWidth >= 0.5 ? Heavy : Thin, Drawings.Marks.Layer.Visible);
            }
            else if (entity is DxfText { Text: var text } && text.Height * scale.Factor >= Readable)
                yield return new TextMark(place.Map(text.At), text.Text, text.Height * scale.Factor, Drawings.Marks.Layer.Lettering, text.Horizontal, text.Vertical, turn);
        }
    }

    private static MachinedLayer Layer(Part part, Kit kit, DxfLayer layer, int count)
    {
        var units = kit.Plan.Units;
        foreach (var cut in part.Cuts)
        {
            var own = MachiningLayers.Of(cut);
            if (layer.Name != (part.Kind.IsPost() ? MachiningLayers.OnFace(own, part.Faces[cut.Face].Looks) : own).Name) continue;
            var face = part.Kind.IsPost() ? $", face {part.Faces[cut.Face].Looks}" : "";
            var depth = cut.Kind == CutKind.RoundedEdge ? $"{units.With(cut.Depth)} radius" : cut.Beneath > 0 ? $"from {units.With(cut.Beneath)} to {units.With(cut.Depth)} behind the face" : $"{units.With(cut.Depth)} deep";
            return new(layer.Name, (count == 1 ? CutWords.One(cut.Kind) : CutWords.Many(cut.Kind)) + face, depth, cut.Kind == CutKind.RoundedEdge ? 0 : cut.Depth, count);
        }
        return new(layer.Name, Words(layer.Name), layer.Name.EndsWith(MachiningLayers.Outline.Name, StringComparison.Ordinal) ? "right through" : "not cut", 0, count);
    }

    private static string Words(string name) => name switch
    {
        _ when name.EndsWith(MachiningLayers.Outline.Name, StringComparison.Ordinal) => "finished outline",
        _ when name == MachiningLayers.Blank.Name => "the square-edged board it lies in",
        _ when name == MachiningLayers.Jointed.Name => "pieces glued to the board's edges first",
        _ when name == MachiningLayers.TopEdge.Name => "top edge, drawn above the face",
        _ when name.EndsWith(MachiningLayers.ToolRadius.Name, StringComparison.Ordinal) => "what a round cutter leaves in corners",
        _ when name.EndsWith(MachiningLayers.Marking.Name, StringComparison.Ordinal) => "lettering, arrows and seats: pencilled",
        _ => "",
    };
}

/// <summary>A layer of a piece's file.</summary>
/// <param name="Name">As the file has it.</param>
/// <param name="Words">What is on it, in bench words.</param>
/// <param name="How">How deep it is cut, in words; or that it is not.</param>
/// <param name="Depth">How deep, mm; 0 for what is not sunk.</param>
/// <param name="Count">How many outlines and words are on it.</param>
public sealed record MachinedLayer(string Name, string Words, string How, double Depth, int Count);
