using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;

namespace Rodwright.Rod.Tables;

/// <summary>The tables as sheets: ordinates for setting out by hand, and the parts list.</summary>
public static class TableSheets
{
    /// <summary>Ordinates, then parts.</summary>
    public static IReadOnlyList<Sheet> Make(RodJob rod) => [.. Ordinates(rod), .. Parts(rod)];

    /// <summary>"Ordinates for setting out by hand": each string, newel and shape of flat piece under its own heading.</summary>
    public static IReadOnlyList<Sheet> Ordinates(RodJob rod)
    {
        var kit = rod.Stair.Kit;
        var words = new SheetWords("ordinates", "Ordinates for setting out by hand", "ordinates for setting out by hand",
            Note: "Along from left end, up from lower edge; s, z in development");
        return TableFlow.Sheets(rod, words, lettering => EqualParts.Of(kit.Parts).Select(g => Section(g, kit, lettering)));
    }

    /// <summary>The parts list.</summary>
    public static IReadOnlyList<Sheet> Parts(RodJob rod)
    {
        var words = new SheetWords("parts-list", "Parts list", "parts list", Note: "Finished sizes");
        return TableFlow.Sheets(rod, words, lettering =>
        {
            var k = lettering.Words / 2.5;
            TableColumn[] columns =
            [
                new("Mark", 18 * k), new("Part", 28 * k), new("No.", 9 * k, HorizontalAnchor.End), new("Length", (rod.Units.IsInches ? 22 : 17) * k, HorizontalAnchor.End),
                new("Width", (rod.Units.IsInches ? 19 : 15) * k, HorizontalAnchor.End), new("Thick", 14.5 * k, HorizontalAnchor.End), new("Material", 20 * k),
                new("Jointed up, glued up, remarks", (rod.Units.IsInches ? 41 : 50) * k),
            ];
            var rows = PartsList.Rows(rod.Stair).Select(r => (IReadOnlyList<string>)
                [r[0], r[1], r[2], r[4], r[5], r[6], r[3], string.Join("; ", new[] { r[7], r[8], r[9] }.Where(c => c.Length > 0))]);
            return [new TableSection($"Parts, finished sizes in {rod.Units.Name}", new Table(columns, rows, lettering.Words))];
        });
    }

    private static TableSection Section(EqualParts group, Kit kit, SheetLettering lettering)
    {
        var k = lettering.Words / 2.5;
        var part = group.First;
        var all = OrdinateList.Of(part, kit);
        var title = $"{group.Marks}  {PartsList.NameOf(group)}";
        var inches = kit.Plan.Units.IsInches;
        return part.Kind switch
        {
            PartKind.WallString or PartKind.NewelString => new(title, new(
                [new("Feature", (inches ? 32 : 34) * k), new("Point", (inches ? 30 : 38) * k), Figure("along"), Figure("up"), Figure("s"), Figure("z"), Figure("deep", 12)],
                Runs(all.Where(o => !o.Point.StartsWith("wedge", StringComparison.Ordinal)),
                    o => [o.Point, Print(kit.Plan.Units, o.Along), Print(kit.Plan.Units, o.Across), Print(kit.Plan.Units, o.Station), Print(kit.Plan.Units, o.Height), Print(kit.Plan.Units, o.Depth)]), lettering.Words)),
            PartKind.Newel => new(title, new(
                [new("Face, feature", (inches ? 55 : 62) * k), new("Point", (inches ? 31 : 34) * k), Figure("left"), Figure("up"), Figure("z"), Figure("deep", 12)],
                Runs(all, o => [o.Point, Print(kit.Plan.Units, o.Along), Print(kit.Plan.Units, o.Across), Print(kit.Plan.Units, o.Height), Print(kit.Plan.Units, o.Depth)], withFace: true), lettering.Words)),
            _ => new(title, new(
                [new("Face", 29 * k), new("Point", 22 * k), Figure("along"), Figure("up")],
                Runs(all.Select(o => o with { Feature = o.Face }), o => [o.Point, Print(kit.Plan.Units, o.Along), Print(kit.Plan.Units, o.Across)]), lettering.Words)),
        };

        // 12' 11 15/16" is longer than 3937.6.
        TableColumn Figure(string name, double width = 15) => new(name, (inches && width > 12 ? width + 9.5 : width) * k, HorizontalAnchor.End);
    }

    /// <summary>Rows whose first cell is written once for each run of one feature.</summary>
    private static IEnumerable<IReadOnlyList<string>> Runs(IEnumerable<Ordinate> ordinates, Func<Ordinate, string[]> cells, bool withFace = false)
    {
        var last = "";
        foreach (var o in ordinates)
        {
            var feature = withFace ? $"{o.Face[^1..]}  {o.Feature}" : o.Feature;
            yield return [feature == last ? "" : feature, .. cells(o)];
            last = feature;
        }
    }

    private static string Print(Units units, double? value) => value is { } v ? units.Print(v) : "";
}
