using Rodwright.Drawings.Paper;
using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Parts;
using Rodwright.Joinery.Strings;
using Rodwright.Rod.Pieces.Small;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>Carriages: each as it stands under its flight, then on its board with both ends large; and their brackets, one for each shape.</summary>
internal static class CarriageSheets
{
    public static IEnumerable<Sheet> Make(RodJob rod)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.Carriage));
        if (groups.IsEmpty) return [];
        var brackets = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind == PartKind.CarriageBracket));
        return
        [
            .. RowFlow.Sheets(rod, new("carriages", "Carriages", "carriages", "", "Face side"), l => [.. groups.Select(g => Standing(rod, g, l))],
                "Seen from the side the brackets are on, the steps cut through. Its upper edge runs along the lower back edges of the risers. Along from the foot's corner furthest down the flight, up from the lowest point: corners, "
                + "fronts and tops of the brackets. Hidden: the upper edge behind a bracket. Glue and nail the brackets tight under the treads once the treads are wedged. Sizes follow the job: who answers for the structure decides them."),
            .. RowFlow.Sheets(rod, new("carriage-boards", "Carriages on their boards", "carriages", "", "Face side"), l => [.. groups.Select(g => Lying(rod, g, l))],
                "Seen on the face side, along from the left end of the board. Above: the front of each bracket at the upper edge, squared down plumb; below: corners. Above that both ends, large, from that end of the board and up from the lower edge."),
            .. brackets.IsEmpty ? [] : CellFlow.Sheets(rod, new("carriage-brackets", "Brackets of carriages", "brackets of carriages", "", "Face side"), l => [.. brackets.Select(g => Bracket(rod, g, l))],
                "Every shape once, true to scale: face above, as it stands, tread along its upper edge; edge below. Along from the left end, up from the lowest corner. Upper edge tight under the tread, back against the carriage's side."),
        ];
    }

    private static PieceRow Standing(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var (part, view) = (group.First, new CarriageView(rod.Stair, group.First));
        var where = string.Join(", ", group.Parts.Select(p => rod.Units.Print(Inner(rod.Stair, p).Across)));
        return new(Marks(group), $"{Names(group)}; middle {where} from the face of {Inner(rod.Stair, part).String.Part.Mark}; {Brackets(view.Brackets)}{(group.Parts.Length > 1 ? " each" : "")}", [.. group.Parts.Select(p => p.Id), .. view.Brackets.Select(b => b.Id)],
            view.Need(lettering), place => view.Draw(place, lettering));
    }

    private static PieceRow Lying(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var (part, units) = (group.First, rod.Units);
        var stations = new CarriageView(rod.Stair, part).Stations;
        var view = new LongPieceView(part, stations, StationsAbove: true, HasEnds: true) { Ends = lettering.Mark < 6 ? Scale.OneTo(units.IsInches ? 4 : 5) : Scale.OneTo(2), Shown = Math.Clamp(Math.Max(LengthOf(part, false), LengthOf(part, true)) + 10, 90, 140) };
        return new(Marks(group), $"{Names(group)}, {(group.Parts.Length == 1 ? "" : Number.Print(group.Parts.Length, 0) + " of ")}{units.Print(part.Blank.Length)} by {units.Print(part.Blank.Width)} by {units.Print(part.Blank.Thickness)}, {part.Material}; {CarriageEnd.WordsOf(part)}",
            [.. group.Parts.Select(p => p.Id)], view.Need(lettering), place => view.Draw(place, lettering));
    }

    private static PieceRow Bracket(RodJob rod, EqualParts group, SheetLettering lettering)
    {
        var (part, units) = (group.First, rod.Units);
        var face = part.FaceSide.Outline;
        return new(Marks(group), $"{PartsList.NameOf(group)}, {(group.Parts.Length == 1 ? "" : Number.Print(group.Parts.Length, 0) + " of ")}{units.Print(part.Blank.Length)} by {units.Print(part.Blank.Width)} by {units.Print(part.FaceSide.Thickness)}, "
            + $"{part.Material}; lower edge {Number.Print(Slope(face).Degrees, 2)}° off level. {WhereMarks.Of(rod.Stair.Kit, group.Parts)}.",
            [.. group.Parts.Select(p => p.Id)], SmallViews.FaceNeed(face.Bounds, part.FaceSide.Thickness, lettering), place => SmallViews.Face(place, face, part.FaceSide.Thickness, lettering, part.Id));
    }

    private static string Brackets(IReadOnlyList<Part> brackets) => brackets.Count == 0 ? "no brackets"
        : $"{Number.Print(brackets.Count, 0)} bracket{(brackets.Count == 1 ? "" : "s")} {string.Join(", ", brackets.Select(b => b.Mark).Distinct())}";

    /// <summary>How far along the board one end is cut.</summary>
    private static double LengthOf(Part part, bool head) => CarriageEnd.Of(part, head) is var end ? Math.Abs(part.Blank.OnBoard(end.At.Upper).X - part.Blank.OnBoard(end.At.Lower).X) : 0;

    private static string Marks(EqualParts group) => string.Join(", ", group.Parts.Select(p => p.Mark).Distinct());

    private static string Names(EqualParts group) => group.Parts.Length == 1 ? group.First.Name : "carriages";

    /// <summary>The one edge that is neither level nor plumb.</summary>
    private static Angle Slope(Path2 face) => Enumerable.Range(0, face.EdgeCount).Select(face.Edge).Select(e => Angle.OfPitch(Math.Abs(e.To.Y - e.From.Y), Math.Abs(e.To.X - e.From.X))).FirstOrDefault(a => a.Degrees is > 0.01 and < 89.99);

    /// <summary>The string on the inner side of the flight, and from its face to the carriage's middle, level.</summary>
    internal static (StringBoard String, double Across) Inner(Stair stair, Part carriage)
    {
        var (frame, box) = (carriage.FaceSide.Frame, carriage.FaceSide.Outline.Bounds);
        var along = new Vector2(frame.U.X, frame.U.Y);
        // Parallel flights have inner strings each: the one the riser over the carriage's middle ends at.
        var (middle, climbs) = (frame.ToWorld(box.Centre, -carriage.FaceSide.Thickness / 2).Plan, carriage.Blank.Grain.Y > 0 ? along : -along);
        var end = stair.Plan.RiserLines.Where(r => r.Up.Dot(climbs) > 1 - 1e-9).MinBy(r => r.Inner.Towards(r.Outer, 0.5).DistanceTo(middle))!.Inner;
        var beside = stair.Kit.Strings.Where(s => s.Site.Inner && Math.Abs(s.Site.Face.Along.Dot(along)) > 1 - 1e-9).MinBy(s => Off(s, end))!;
        return (beside, Off(beside, middle));

        static double Off(StringBoard board, Point2 at) => Math.Abs((at - board.Site.Face.Through).Dot(board.Site.Face.Along.Left));
    }
}
