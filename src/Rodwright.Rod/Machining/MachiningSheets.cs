using Rodwright.Drawings.Marks;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Machining;

/// <summary>What the bench has to do after the machine: each piece with its cuts, and which of their corners are squared by hand.</summary>
public static class MachiningSheets
{
    /// <summary>The list of corners, alike ones counted together.</summary>
    /// <param name="rod">The stair.</param>
    /// <param name="left">What the cutter leaves: <see cref="MachiningList.Left"/>.</param>
    public static IReadOnlyList<Sheet> Make(RodJob rod, IReadOnlyDictionary<string, IReadOnlyList<LeftByCutter>> left)
    {
        var rows = EqualParts.Of(rod.Stair.Kit.Parts).SelectMany(g => Rows(rod, g, left[g.First.Mark])).ToList();
        if (rows.Count == 0) return [];
        var cutter = rod.Units.With(rod.Router.Cutter);
        var words = new SheetWords("machining", "Machining: corners a round cutter leaves", "corners to be squared", Note: "Layer TOOL-RADIUS of the machining files");
        return TableFlow.Sheets(rod, words, lettering =>
        {
            var k = lettering.Words / 2.5;
            TableColumn[] columns =
            [
                new("Mark", 18 * k), new("Face", 17 * k), new("Cut, depth", 27 * k), new("No.", 9 * k, HorizontalAnchor.End), new("Corner", 15 * k, HorizontalAnchor.End),
                new("Stays out", (rod.Units.IsInches ? 22 : 14) * k, HorizontalAnchor.End), new("Arc from", (rod.Units.IsInches ? 22 : 14) * k, HorizontalAnchor.End), new("To do", 32 * k), new("Left, mm²", 14 * k, HorizontalAnchor.End),
            ];
            // Thousandths of a square inch say nothing at a bench: they are in the file alone.
            if (rod.Units.IsInches) return [Section([.. columns.SkipLast(1)], [.. rows.Select(r => r.SkipLast(1).ToList())], lettering)];
            return [Section(columns, rows, lettering)];
        });

        TableSection Section(TableColumn[] columns, IReadOnlyList<IReadOnlyList<string>> of, SheetLettering lettering) =>
            new($"Cutter {cutter}: corners in each piece, lengths in {rod.Units.Name}", new Table(columns, of, lettering.Words));
    }

    private static IEnumerable<IReadOnlyList<string>> Rows(RodJob rod, EqualParts group, IReadOnlyList<LeftByCutter> left)
    {
        var first = true;
        foreach (var alike in left.GroupBy(l => (l.Face, l.Layer, l.Kind, Opening: Print(l.Opening), Away: Away(rod, l), Area: MachiningList.Area(rod, l.Area, rod.Units.IsInches ? 3 : l.Area < 10 ? 1 : 0))).OrderBy(g => g.Key.Face).ThenBy(g => g.Key.Kind))
        {
            var face = group.First.Kind.IsPost() ? group.First.Faces[alike.Key.Face].Looks : "";
            yield return
            [
                first ? group.Marks : "", face, CutWords(rod, alike.First()), Number.Print(alike.Count(), 0), alike.Key.Opening, alike.Key.Away,
                alike.First().ArcBegins(rod.Router.Cutter) is { } begins ? rod.Units.Print(begins) : "", alike.First().ToDo, alike.Key.Area,
            ];
            first = false;
        }
    }

    private static string CutWords(RodJob rod, LeftByCutter l) => l.Cut is not { } cut ? "outline" : cut.Kind switch
    {
        CutKind.CornerHousing => "corner housing",
        CutKind.TenonCheek or CutKind.Cheek => "tenon's cheek",
        _ => cut.Kind.ToString().ToLowerInvariant(),
    } + ", " + rod.Units.Print(cut.Depth);

    private static string Print(Angle? opening) => opening is { } a ? Number.Print(a.Degrees) + "°" : "";

    private static string Away(RodJob rod, LeftByCutter l) => !double.IsFinite(l.Away) || l.Kind == LeftKind.Narrow ? "" : rod.Units.Print(l.Away);
}
