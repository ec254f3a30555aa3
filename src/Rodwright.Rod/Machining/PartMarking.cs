using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Steps;

namespace Rodwright.Rod.Machining;

/// <summary>What is pencilled on a part: its mark, face side and face edge, which way is up, the numbers of the steps, the sizes of bores.</summary>
internal static class PartMarking
{
    private const double Large = 20;
    private const double Small = 8;

    public static IEnumerable<DxfEntity> Of(Part part, Kit kit) => part.Kind.IsPost() ? OnNewel(part, kit.Plan.Units) : OnBoard(part, kit);

    private static IEnumerable<DxfEntity> OnNewel(Part part, Units units)
    {
        var side = part.Blank.Width;
        for (var i = 0; i < part.Faces.Length; i++)
        {
            var layer = MachiningLayers.OnFace(MachiningLayers.Marking, part.Faces[i].Looks);
            var x = MachiningFrame.OffsetOf(part, i) + side / 2;
            yield return Words(layer, new(x, -Small * 2), $"{part.Mark} face {part.Faces[i].Looks}", Small);
            foreach (var line in Arrow(new(x, part.Blank.Length + 10), new(0, 1))) yield return new DxfPath(layer, line);
            foreach (var cut in part.Cuts.Where(c => c.Face == i))
                foreach (var entity in Label(layer, MachiningFrame.Place(part, i, cut.Filled), cut, units)) yield return entity;
        }
    }

    private static IEnumerable<DxfEntity> OnBoard(Part part, Kit kit)
    {
        var layer = MachiningLayers.Marking;
        var blank = part.Blank;
        var board = kit.Strings.FirstOrDefault(s => s.Part.Id == part.Id);
        var up = new Vector2(0, 1);
        if (board is not null)
        {
            // Up the stair is along the grain, whichever way the string climbs.
            var climbs = part.FaceSide.Frame.U.Dot(Vector3.Level(board.Site.Face.Along)) > 0 == blank.Grain.X > 0;
            up = new(climbs ? 1 : -1, 0);
        }
        yield return Words(layer, new(0, -Large * 1.5 - Below(part)), $"{part.Mark}  {part.Name}  {part.FaceSide.Looks}", Large);
        var tail = new Point2(up.X < 0 ? blank.Length : 0, blank.Width + Above(part) + Large) + new Vector2(up.X * 10, 0);
        foreach (var line in Arrow(tail, up)) yield return new DxfPath(layer, line);
        yield return Words(layer, tail + new Vector2(up.X * 70 + (up.X == 0 ? 15 : 0), up.X == 0 ? 20 : -4), "up the stair", Small, up.X < 0 ? HorizontalAnchor.End : HorizontalAnchor.Start);
        foreach (var cut in part.Cuts.Where(c => c.Face == 0))
            foreach (var entity in Label(layer, MachiningFrame.Place(part, 0, cut.Filled), cut, kit.Plan.Units)) yield return entity;
        if (part.Kind != PartKind.BentRiser) yield break;
        // Each line's words stand on a row of their own, beside it.
        var lines = FlatRiser.Of(kit.Plan, part).Lines;
        for (var i = 0; i < lines.Length; i++)
            yield return Words(layer, new(lines[i].X + 3, blank.Width - (i + 1.5) * 2 * Small), lines[i].What, Small);
    }

    private static double Below(Part part) => -part.Blank.JointedUp.Select(p => p.Place.MinY).Append(0).Min();

    private static double Above(Part part) =>
        (part.Kind == PartKind.BentRiser ? MachiningFrame.Gap + part.Blank.Thickness : part.Faces.Length > 1 && part.Kind != PartKind.WallString ? MachiningFrame.Gap + part.Faces[1].Outline.Bounds.Height : 0)
        + part.Blank.JointedUp.Select(p => p.Place.MaxY - part.Blank.Width).Append(0).Max();

    private static IEnumerable<DxfEntity> Label(DxfLayer layer, Path2 shape, Cut cut, Units units)
    {
        var box = shape.Bounds;
        if (cut.Kind == CutKind.Bore)
            yield return Words(layer, new(box.MaxX + 3, box.Centre.Y - Small / 4), $"ø{units.Print(box.Width, 2)}", Small / 2);
        else if (cut.Kind == CutKind.Housing && cut.Joint.IndexOf('/', StringComparison.Ordinal) is > 0 and var slash)
            yield return Words(layer, box.Centre + new Vector2(0, -Small / 2), Short(cut.Joint[..slash]), Small, HorizontalAnchor.Middle);
    }

    /// <summary>riser-3 as R3.</summary>
    private static string Short(string id)
    {
        var number = id[(id.LastIndexOf('-') + 1)..];
        return id[0] switch { 'r' => "R", 't' => "T", 'n' => "P", _ => "" } + number;
    }

    private static IEnumerable<Path2> Arrow(Point2 from, Vector2 along)
    {
        var to = from + 60 * along;
        yield return Path2.Polyline(from, to);
        yield return Path2.Polyline(to - 14 * along + 5 * along.Left, to, to - 14 * along - 5 * along.Left);
    }

    private static DxfText Words(DxfLayer layer, Point2 at, string text, double height, HorizontalAnchor anchor = HorizontalAnchor.Start) =>
        new(layer, new(at, text, height, Layer.Lettering, anchor));
}
