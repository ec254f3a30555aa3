using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;
using Rodwright.Stairs.Shops;

namespace Rodwright.Rod.Machining;

/// <summary>A part at true size for the saw and the router: see <see cref="MachiningLayers"/> for the layers and <see cref="MachiningFrame"/> for where it lies.</summary>
public static class PartDxf
{
    /// <summary>The drawing of a part, with what the usual cutter leaves of it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="kit">The kit it belongs to.</param>
    public static DxfDrawing Of(Part part, Kit kit) => Of(part, kit, CutterCorners.Of(part, ShopRouter.Usual(kit.Plan.Units).Cutter));

    /// <summary>The drawing of a part.</summary>
    /// <param name="part">The part.</param>
    /// <param name="kit">The kit it belongs to.</param>
    /// <param name="left">What the cutter leaves of it: <see cref="CutterCorners.Of"/>.</param>
    public static DxfDrawing Of(Part part, Kit kit, IEnumerable<LeftByCutter> left)
    {
        var entities = new List<DxfEntity>();
        if (part.Kind.IsPost()) Newel(part, entities);
        else if (part.Kind == PartKind.BentRiser) Flat(FlatRiser.Of(kit.Plan, part), entities);
        else Board(part, entities);
        entities.AddRange(left.Select(l => new DxfPath(part.Kind.IsPost() ? MachiningLayers.OnFace(MachiningLayers.ToolRadius, part.Faces[l.Face].Looks) : MachiningLayers.ToolRadius, l.Shape)));
        entities.AddRange(PartMarking.Of(part, kit));
        return new(entities);
    }

    private static void Newel(Part part, List<DxfEntity> entities)
    {
        for (var i = 0; i < part.Faces.Length; i++)
        {
            var looks = part.Faces[i].Looks;
            entities.Add(new DxfPath(MachiningLayers.OnFace(MachiningLayers.Outline, looks), MachiningFrame.Place(part, i, part.Faces[i].Outline)));
            entities.AddRange(Cuts(part, i, layer => MachiningLayers.OnFace(layer, looks)));
        }
    }

    private static void Board(Part part, List<DxfEntity> entities)
    {
        var blank = part.Blank;
        entities.Add(new DxfPath(MachiningLayers.Blank, Path2.Rectangle(0, 0, blank.Length, blank.Width)));
        foreach (var piece in blank.JointedUp)
        {
            var place = piece.Place;
            entities.Add(new DxfPath(MachiningLayers.Jointed, Path2.Rectangle(place.MinX, place.MinY, place.MaxX, place.MaxY)));
        }
        entities.Add(new DxfPath(MachiningLayers.Outline, MachiningFrame.Place(part, 0, part.FaceSide.Outline)));
        entities.AddRange(Cuts(part, 0, layer => layer));
        for (var i = 1; i < part.Faces.Length; i++)
        {
            var looks = part.Faces[i].Looks;
            entities.Add(new DxfPath(part.Kind == PartKind.WallString ? MachiningLayers.OnFace(MachiningLayers.Outline, looks) : MachiningLayers.TopEdge, MachiningFrame.Place(part, i, part.Faces[i].Outline)));
            entities.AddRange(Cuts(part, i, layer => MachiningLayers.OnFace(layer, looks)));
        }
    }

    /// <summary>A bent riser is cut as the flat board it is before it is bent; its face is what it becomes. What is squared across it for the bend is pencilled on.</summary>
    private static void Flat(FlatRiser board, List<DxfEntity> entities)
    {
        entities.Add(new DxfPath(MachiningLayers.Blank, Path2.Rectangle(0, 0, board.Length, board.Height)));
        entities.Add(new DxfPath(MachiningLayers.Outline, Path2.Rectangle(0, 0, board.Length, board.Height)));
        entities.AddRange(board.Lines.Select(l => new DxfPath(MachiningLayers.Marking, Path2.Polyline(new Point2(l.X, 0), new Point2(l.X, board.Height)))));
        entities.Add(new DxfPath(MachiningLayers.TopEdge, board.Edge.Moved(p => p + new Vector2(0, board.Height + MachiningFrame.Gap))));
    }

    private static IEnumerable<DxfEntity> Cuts(Part part, int face, Func<DxfLayer, DxfLayer> named)
    {
        var cuts = part.Cuts.Where(c => c.Face == face).ToList();
        // Housings that run into one another are one recess: the cutter must not leave a line between them.
        foreach (var depth in cuts.Where(c => c.Kind == CutKind.Housing).GroupBy(c => MachiningLayers.Of(c)))
        {
            foreach (var outline in Recesses([.. depth.Select(c => c.Shape)]))
                yield return new DxfPath(named(depth.Key), MachiningFrame.Place(part, face, outline));
            foreach (var cut in depth.Where(c => c.Seat is not null))
                yield return new DxfPath(named(MachiningLayers.Marking), MachiningFrame.Place(part, face, cut.Filled));
        }
        foreach (var cut in cuts.Where(c => c.Kind != CutKind.Housing))
            yield return new DxfPath(named(MachiningLayers.Of(cut)), MachiningFrame.Place(part, face, cut.Shape));
    }

    /// <summary>Outlines of the recesses some housings make together; a housing that stands alone keeps its own outline untouched.</summary>
    private static IEnumerable<Path2> Recesses(List<Path2> shapes)
    {
        var groups = new List<(List<Path2> Shapes, Box2 Box)>();
        foreach (var shape in shapes)
        {
            var (members, box) = (new List<Path2> { shape }, shape.Bounds.Grown(0.01));
            for (var i = groups.Count - 1; i >= 0; i--)
            {
                if (!groups[i].Box.Overlaps(box)) continue;
                members.InsertRange(0, groups[i].Shapes);
                box = box.With(groups[i].Box);
                groups.RemoveAt(i);
            }
            groups.Add((members, box));
        }
        return groups.SelectMany(g => g.Shapes.Count == 1 ? g.Shapes : Region.Union(g.Shapes));
    }
}
