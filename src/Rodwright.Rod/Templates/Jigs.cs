using System.Collections.Immutable;
using Rodwright.Drawings.Formats;
using Rodwright.Drawings.Formats.Dxf;
using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Geometry.Offsets;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Machining;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Templates;

/// <summary>Jigs for a hand router from the same housings as the templates: full-size sheets, and files to cut the plates from.</summary>
public static class Jigs
{
    private const double Beyond = 30; // of the lines to lay it by, past the opening

    /// <summary>The jigs of straight treads and risers; none where the stair has none, or the cutter does not go in.</summary>
    public static ImmutableArray<Jig> Of(RodJob rod) => [.. Wanted(rod).Select(w => Jig.For(w.Name, w.Title, w.Housing, rod.Router)).OfType<Jig>()];

    /// <summary>What there is no jig for, and why, in bench words; nothing where there are all.</summary>
    public static ImmutableArray<string> Missing(RodJob rod) =>
        [.. Wanted(rod).Where(w => Jig.For(w.Name, w.Title, w.Housing, rod.Router) is null)
            .Select(w => $"no jig for {w.Title}: a cutter of {rod.Units.With(rod.Router.HandCutter)} does not go into the housing")];

    /// <summary>A file for each jig.</summary>
    public static IEnumerable<WrittenFile> Files(RodJob rod) => Of(rod).Select(j => new WrittenFile(j.Name + ".dxf", DxfFormat.MediaType, DxfWriter.Write(Drawing(rod, j))));

    /// <summary>The plate at true size: opening, plate, the housing it makes, and the lines it is laid by.</summary>
    public static DxfDrawing Drawing(RodJob rod, Jig jig) => new(
    [
        new DxfPath(MachiningLayers.JigPlate, jig.Plate), .. jig.Opening.Select(o => new DxfPath(MachiningLayers.JigOpening, o)), new DxfPath(MachiningLayers.JigLines, jig.Housing),
        .. Lines(rod, jig).Select(l => new DxfPath(MachiningLayers.JigLines, l)),
        new DxfText(MachiningLayers.JigLines, new(new(jig.Plate.Bounds.MinX + 10, jig.Plate.Bounds.MinY + 10), $"{jig.Title}: bush {rod.Units.With(rod.Router.Bush)}, cutter {rod.Units.With(rod.Router.HandCutter)}", 8, Layer.Lettering)),
    ]);

    internal static IEnumerable<Sheet> Sheets(RodJob rod) => Of(rod).Select(j => Sheet(rod, j));

    private static IEnumerable<(string Name, string Title, Path2 Housing)> Wanted(RodJob rod)
    {
        if (!rod.Stair.Kit.Parts.Any(p => p.Kind == PartKind.Tread)) yield break;
        yield return ("jig-tread", "tread and wedge", HousingTemplates.TreadShape(rod).Shape);
        yield return ("jig-riser", "riser and wedge", HousingTemplates.RiserShape(rod).Shape);
    }

    /// <summary>Riser faces and going lines, from edge to edge of the plate: it is laid by them on the string's own.</summary>
    private static IEnumerable<Path2> Lines(RodJob rod, Jig jig)
    {
        var (box, plan) = (jig.Opening.Aggregate(Box2.Empty, (b, o) => b.With(o.Bounds)).Grown(Beyond), rod.Stair.Plan);
        var isTread = jig.Name == "jig-tread";
        foreach (var s in isTread ? (double[])[0, plan.Going] : [0]) yield return Path2.Polyline(new(s, box.MinY), new Point2(s, box.MaxY));
        foreach (var z in isTread ? (double[])[0] : [0, plan.Rise]) yield return Path2.Polyline(new(box.MinX, z), new Point2(box.MaxX, z));
    }

    private static Sheet Sheet(RodJob rod, Jig jig)
    {
        var (units, router, plan) = (rod.Units, rod.Router, rod.Stair.Plan);
        var drawing = new TemplateDrawing(units);
        foreach (var opening in jig.Opening) drawing.Tint(opening);
        foreach (var line in Lines(rod, jig)) drawing.Path(line, Pens.Centre, Layer.Centre);
        drawing.Path(jig.Housing, Pens.Hidden, Layer.Hidden);
        foreach (var opening in jig.Opening) drawing.Cut(opening);
        var box = jig.Opening.Aggregate(Box2.Empty, (b, o) => b.With(o.Bounds));
        var housing = jig.Housing.Bounds;
        drawing.ChainBelow(box.MinY - Beyond, new Point2(box.MinX, box.MinY), new(housing.MinX, housing.MinY), new(0, box.MinY - Beyond), new(housing.MaxX, housing.MinY), new(box.MaxX, box.MinY));
        drawing.ChainRight(box.MaxX + Beyond, new Point2(box.MaxX, box.MinY), new(housing.MaxX, housing.MinY), new(box.MaxX + Beyond, 0), new(housing.MaxX, housing.MaxY), new(box.MaxX, box.MaxY));
        drawing.Notes($"Router jig, {jig.Title}", string.Join(" ", Words(rod, jig)), 150);
        return TrueSheet.Of(rod, new("template-" + jig.Name, $"Router jig, {jig.Title}", $"router jig, {jig.Title}", "", "Full size"), drawing.Marks);
    }

    private static IEnumerable<string> Words(RodJob rod, Jig jig)
    {
        var (units, router) = (rod.Units, rod.Router);
        yield return $"Guide bush {units.With(router.Bush)} outside, straight cutter {units.With(router.HandCutter)}, {units.With(rod.Stair.Job.Practice.Housing)} deep.";
        yield return $"The opening stands {units.With(router.Offset)} outside the housing (hidden line): half of bush less cutter, ({units.Print(router.Bush, 2)} - {units.Print(router.HandCutter, 2)}) / 2. Its corners are the bush's own, radius {units.With(router.Bush / 2)}.";
        yield return "Lay the chain lines on the string's riser and going lines; turn the plate over for the other string.";
        var square = jig.Left.Where(l => l.Corners.Length == 1).ToList();
        if (square.Count > 0) yield return $"The cutter leaves {Number.Print(square.Count, 0)} corners round, by {units.With(square.Max(l => l.Away))} at most: square what the piece fills.";
        if (jig.Left.Any(l => l.Corners.Length > 1)) yield return "It does not go into all of the housing: the rest by hand, or with a smaller cutter.";
        if (jig.Rounded.Length > 0) yield return $"Where the housing steps out for the wedge the bush rolls round the plate's corner, and the wood's own is rounded off by {units.With(jig.Rounded.Max(r => r.By))}: under the wedge and behind, where nothing shows.";
    }
}
