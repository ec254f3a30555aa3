using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces.Small;

/// <summary>Wedges, glue blocks, pegs and the brackets of wall rails: each shape drawn once, counted, and told where it goes.</summary>
internal static class SmallPieceSheets
{
    private static readonly PartKind[] Order = [PartKind.Wedge, PartKind.GlueBlock, PartKind.Peg, PartKind.Bracket];

    public static IEnumerable<Sheet> Make(RodJob rod)
    {
        var groups = Groups(rod.Stair.Kit);
        if (groups.Count == 0) return [];
        return CellFlow.Sheets(rod, new("small-pieces", "Small pieces", "small pieces", "", ""), l => [.. groups.Select(g => Cell(rod, g, l))], Notes(rod, [.. groups.Select(g => g.First.Kind).Distinct()]));
    }

    /// <summary>Pieces of one shape; wedges whichever way round they lie.</summary>
    internal static IReadOnlyList<EqualParts> Groups(Kit kit)
    {
        var found = new List<EqualParts>();
        foreach (var group in EqualParts.Of(kit.Parts.Where(p => Order.Contains(p.Kind))))
        {
            var i = group.First.Kind != PartKind.Wedge ? -1 : found.FindIndex(g => g.First.Kind == PartKind.Wedge && g.First.Mark[0] == group.First.Mark[0] && WedgePiece.Of(g.First).IsAs(WedgePiece.Of(group.First)));
            if (i < 0) found.Add(group);
            else found[i] = new([.. found[i].Parts, .. group.Parts]);
        }
        return [.. found.OrderBy(g => Array.IndexOf(Order, g.First.Kind))];
    }

    private static PieceRow Cell(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var (part, units) = (group.First, rod.Units);
        var (face, thick) = (part.FaceSide.Outline, part.FaceSide.Thickness);
        var mark = string.Join(", ", group.Parts.Select(p => p.Mark).Distinct());
        var where = WhereMarks.Of(rod.Stair.Kit, group.Parts);
        var count = $"{PartsList.NameOf(group)}, {(group.Parts.Length == 1 ? "" : Number.Print(group.Parts.Length, 0) + " of ")}";
        var ids = group.Parts.Select(p => p.Id).ToList();
        switch (part.Kind)
        {
            case PartKind.Wedge:
                var wedge = WedgePiece.Of(part);
                return new(mark, Words($"{units.Print(wedge.Length)} by {units.Print(wedge.Thick)} by {units.Print(wedge.Wide)}, {part.Material}; from {units.Print(wedge.Thin)}, 1 in {Number.Print(wedge.Taper, 1)} ({Number.Print(wedge.Angle.Degrees, 2)}°)"),
                    ids, SmallViews.FaceNeed(wedge.Outline.Bounds, wedge.Wide, lettering), place => SmallViews.Face(place, wedge.Outline, wedge.Wide, lettering, part.Id));
            case PartKind.GlueBlock:
                return new(mark, Words($"{units.Print(face.Bounds.Width)} by {units.Print(face.Bounds.Height)} by {units.Print(thick)} long, {part.Material}; a square ripped corner to corner"),
                    ids, SmallViews.EndNeed(face.Bounds, thick, lettering), place => SmallViews.End(place, Corner(face.Bounds), thick, lettering, part.Id));
            case PartKind.Peg:
                return new(mark, Words($"{units.Print(face.Bounds.Width)} across by {units.Print(thick)} long, round, {part.Material}"),
                    ids, SmallViews.EndNeed(face.Bounds, thick, lettering), place => SmallViews.End(place, face, thick, lettering, part.Id));
            default:
                return new(mark, Words($"{units.Print(thick)} by {units.Print(part.Blank.Width)} by {units.Print(part.Blank.Length)}, {part.Material}; {units.Print(thick)} from the wall"),
                    ids, SmallViews.EndNeed(face.Bounds, thick, lettering), place => SmallViews.End(place, face, thick, lettering, part.Id));
        }

        string Words(string size) => $"{count}{size}. {where}.";
    }

    /// <summary>A block's end with the riser on its left, for either hand.</summary>
    private static Path2 Corner(Box2 box) => Path2.Polygon(Point2.Origin, new(box.Width, box.Height), new(0, box.Height));

    private static string Notes(RodJob rod, IReadOnlyCollection<PartKind> kinds)
    {
        var words = new List<string> { "Every shape once, true to scale." };
        if (kinds.Contains(PartKind.Wedge))
        {
            var (clear, full) = (rod.Stair.Job.SmallParts?.WedgeClear ?? 0, rod.Stair.Job.Practice.Housing);
            var slanting = clear > 0 && rod.Stair.Kit.Parts.Any(p => p.Kind == PartKind.Wedge && Tolerance.IsSame(p.Blank.Thickness, full)) ? ", or all of it where a slanting riser touches at the string's face; pared to the slant there" : "";
            words.Add($"Wedges: face above, edge below; thin end on the left, the edge against tread or riser at the bottom. Turned over, a wedge serves the other string. Width: depth of the housing less {rod.Units.Print(clear)}{slanting}. "
                + "Treads are wedged first and their wedges trimmed at the riser's back, to the length drawn; then the risers. Cut some spare.");
        }
        if (kinds.Contains(PartKind.GlueBlock)) words.Add("Glue blocks: end on the left as it stands, riser on its left and tread above it; side on the right. Rubbed in with glue, no nails.");
        if (kinds.Contains(PartKind.Peg)) words.Add("Pegs: the length that stays in the newel. Leave them longer, pointed at the end that goes in first, and cut them off flush.");
        if (kinds.Contains(PartKind.Bracket)) words.Add("Brackets: face on the left, seen from the stair, top under the rail; on the right from its side, wall to face.");
        return string.Join(" ", words);
    }
}
