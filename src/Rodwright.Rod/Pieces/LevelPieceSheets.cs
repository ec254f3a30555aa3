using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>Straight treads, and nosing pieces of landing and upper floor: one view for each shape.</summary>
internal static class LevelPieceSheets
{
    public static IEnumerable<Sheet> Treads(RodJob rod) => Sheets(rod, PartKind.Tread,
        new("straight-treads", "Straight treads", "straight treads", "", "Face side up"),
        $"Seen from above, nosing at the bottom, up the stair up the sheet. Along from the left end, up from the nosing. Ends housed {rod.Units.Print(rod.Stair.Job.Practice.Housing)} in strings, "
        + $"{rod.Units.Print(rod.Stair.Job.Practice.NewelHousing)} in newels. Hidden lines: faces of strings and newels, riser face below.");

    public static IEnumerable<Sheet> Nosings(RodJob rod) => Sheets(rod, PartKind.NosingPiece,
        new("nosing-pieces", "Nosing pieces", "nosing pieces", "", "Face side up"),
        "Nosing pieces of landing and upper floor, seen from above, nosing at the bottom. Along from the left end, up from the nosing. The floor's boards run on behind.");

    private static IEnumerable<Sheet> Sheets(RodJob rod, PartKind kind, SheetWords words, string notes)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind == kind));
        return RowFlow.Sheets(rod, words, l => [.. groups.Select(g => Row(rod, g, l))], notes);
    }

    private static PieceRow Row(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var part = group.First;
        var view = new TreadView(rod.Stair, part);
        var glue = GlueUp.Of(part, rod.Stair.Job.Practice);
        return new(group.Marks,
            $"{PartsList.NameOf(group)}, {Number.Print(group.Parts.Length, 0)} of {rod.Units.Print(part.Blank.Length)} by {rod.Units.Print(part.Blank.Width)} by {rod.Units.Print(part.Blank.Thickness)}"
            + (glue.Strips > 1 ? $", {glue.InWords(rod.Units)}" : ""),
            [.. group.Parts.Select(p => p.Id)],
            new(part.Blank.Length, part.Blank.Width, lettering.OrdinateStrip(6), 3, 1, lettering.OrdinateStrip(6)),
            corner =>
            {
                var place = new Placement(corner.Scale, new(0, view.Board.MinY), corner.PaperOrigin);
                return [.. view.Draw(place, lettering, letters: false), .. view.Ordinates(place, place.Map(view.Board), lettering, letters: false)];
            });
    }
}
