using Rodwright.Drawings.Sheets;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Joints;
using Rodwright.Joinery.Parts;
using Rodwright.Rod.Sheets;
using Rodwright.Rod.Tables;

namespace Rodwright.Rod.Pieces;

/// <summary>Handrails, base rails and wall rails: each along its board with its ends large, and the places of balusters or brackets along it; then balusters and fillets, one row for each shape.</summary>
internal static class RailSheets
{
    public static IEnumerable<Sheet> Make(RodJob rod) =>
    [
        .. Rails(rod, PartKind.Handrail, new("handrails", "Handrails", "handrails", "", "Face side"),
            "Seen on the face side, from the stair, along from the left end of the board. Above: corners; below: the near side of each baluster at the lower edge, squared across plumb. Above the rail its ends, large, from "
            + $"that end of the board and up from the lower edge. Tenons {rod.Units.Print(rod.Stair.Job.Balustrade?.Tenon.Thickness ?? 0)} thick stand in the middle of the width; pegs' holes as drawn. Broken lines: the groove."),
        .. Rails(rod, PartKind.BaseRail, new("base-rails", "Base rails", "base rails", "", "Face side"),
            "Seen on the face side, from the stair, along from the left end of the board. Above: the near side of each baluster at the upper edge, squared across plumb; below: corners. The lower edge follows its string's upper "
            + "edge: try it there before it is fixed. Broken lines: the groove."),
        .. Rails(rod, PartKind.WallRail, new("wall-rails", "Wall rails", "wall rails", "", "Face side"),
            "Seen from the stair, along from the left end of the board. Above: corners; below: the middle of each bracket. Both ends are cut plumb."),
        .. Sticks(rod, [PartKind.LandingNosing, PartKind.Apron], new("landing-edges", "Landing edges", "landing edges", "", "Face side"),
            $"The nosing seen from above, its rounded front edge at the bottom; the apron lining seen from the well, packed out {rod.Units.Print(rod.Stair.Job.LandingEdge?.Packing ?? 0)} from the trimmer"
            + (rod.Stair.Kit.Joints.Any(j => j.Kind == JointKind.RailOnNosing) ? ", under a balustrade so that its face is flush with the balusters'" : "") + $"; the nosing stands {rod.Units.Print(rod.Stair.Job.Practice.Nosing)} in front of it. Along from the left end, on each edge."
            + (rod.Stair.Kit.Joints.Any(j => j.Kind == JointKind.EdgeCorner) ? " Round the well they follow its edge as measured: linings butted in its corners, mitred where the floor stands out; nosings mitred. Try every corner on site before it is cut." : "")),
        .. Sticks(rod, [PartKind.Baluster], new("balusters", "Balusters", "balusters", "", "Face side"),
            "Seen on the face side, from the stair, foot on the left. Along from the left end, on each edge. One piece of each shape is cut true and is the template for the rest of its mark."),
        .. Sticks(rod, [PartKind.Fillet], new("fillets", "Fillets", "fillets", "", "Face side"),
            "Fillets between the balusters in the grooves of handrail and base rail, seen on the face side, from the stair. Along from the left end, on each edge."),
    ];

    private static IEnumerable<Sheet> Rails(RodJob rod, PartKind kind, SheetWords words, string notes)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => p.Kind == kind));
        return groups.IsEmpty ? [] : RowFlow.Sheets(rod, words, l => [.. groups.Select(g => Row(rod, g, new(g.First, Stations(rod.Stair, g.First), kind == PartKind.BaseRail, HasEnds: true), l, Spacing(rod, g.First)))], notes);
    }

    private static IEnumerable<Sheet> Sticks(RodJob rod, IReadOnlyCollection<PartKind> kinds, SheetWords words, string notes)
    {
        var groups = EqualParts.Of(rod.Stair.Kit.Parts.Where(p => kinds.Contains(p.Kind)));
        return groups.IsEmpty ? [] : RowFlow.Sheets(rod, words, l => [.. groups.Select(g => Row(rod, g, new(g.First, [], false, HasEnds: false), l, ""))], notes);
    }

    private static PieceRow Row(RodJob rod, EqualParts group, LongPieceView view, SheetLettering lettering, string more)
    {
        var (part, units) = (group.First, rod.Units);
        var count = group.Parts.Length == 1 ? "" : $"{Number.Print(group.Parts.Length, 0)} of ";
        return new(group.Marks,
            $"{PartsList.NameOf(group)}, {count}{units.Print(part.Blank.Length)} by {units.Print(part.Blank.Width)} by {units.Print(part.Blank.Thickness)}; {Mitres(part) ?? $"{PieceEnds.Words(part, false)}, {PieceEnds.Words(part, true)}{UpperEnd(part)}"}{more}",
            [.. group.Parts.Select(p => p.Id)], view.Need(lettering), place => view.Draw(place, lettering));
    }

    /// <summary>Both ends of a lining cut on the slant through its thickness, as its top edge tells; null for other pieces.</summary>
    private static string? Mitres(Part part)
    {
        if (part is not { Kind: PartKind.Apron, Faces.Length: 2 }) return null;
        var (top, thick) = (part.Faces[1].Outline.Vertices.Select(v => v.At).ToList(), part.FaceSide.Thickness);
        var (face, back) = (top.Where(p => p.Y < thick / 2).Select(p => p.X).ToList(), top.Where(p => p.Y >= thick / 2).Select(p => p.X).ToList());
        return $"{End("left", face.Min() - back.Min())}, {End("right", back.Max() - face.Max())}";

        // Positive where the back is the longer.
        string End(string side, double longer) => Math.Abs(longer) < Tolerance.Print ? $"{side} end square"
            : $"{side} end {Number.Print(Angle.OfPitch(Math.Abs(longer), thick).Degrees, 2)}° off square through its thickness, the {(longer > 0 ? "back" : "face")} longer";
    }

    private static string UpperEnd(Part part) => part.Kind is PartKind.Baluster or PartKind.Fillet || Math.Abs(part.Blank.Grain.Y) < Tolerance.Joint ? "" : $", upper end on the {(part.Blank.Grain.Y > 0 ? "right" : "left")}";

    /// <summary>Where the near sides of its balusters, or the middles of its brackets, come on the edge they stand at; on the board.</summary>
    internal static IReadOnlyList<Point2> Stations(Stair stair, Part rail)
    {
        var (frame, upper) = (rail.FaceSide.Frame, rail.Kind == PartKind.BaseRail);
        var found = new List<Point2>();
        foreach (var joint in stair.Kit.Joints.Where(j => j.Female == rail.Id && j.Kind is JointKind.InGroove or JointKind.BracketToRail))
        {
            var piece = stair.Kit.Find(joint.Male);
            if (piece.Kind is not (PartKind.Baluster or PartKind.Bracket)) continue;
            var across = piece.FaceSide.Outline.Vertices.Select(v => frame.ToLocal(piece.FaceSide.Frame.ToWorld(v.At)).Face.X).ToList();
            // The near side is the one towards the board's left end.
            var x = piece.Kind == PartKind.Bracket ? (across.Min() + across.Max()) / 2 : rail.Blank.Grain.X > 0 ? across.Min() : across.Max();
            if (On(rail, x, upper) is { } y) found.Add(rail.Blank.OnBoard(new(x, y)));
        }
        return [.. found.OrderBy(p => p.X)];
    }

    /// <summary>Height of a rail's lower or upper edge at a place of its face.</summary>
    private static double? On(Part rail, double x, bool upper)
    {
        var ring = rail.FaceSide.Outline.Flattened();
        var heights = new List<double>();
        for (int i = ring.Count - 1, j = 0; j < ring.Count; i = j++)
            if (ring[i].X <= x != ring[j].X <= x) heights.Add(ring[i].Y + (ring[j].Y - ring[i].Y) * (x - ring[i].X) / (ring[j].X - ring[i].X));
        return heights.Count == 0 ? null : upper ? heights.Max() : heights.Min();
    }

    private static string Spacing(RodJob rod, Part rail)
    {
        var stations = Stations(rod.Stair, rail);
        if (stations.Count < 2 || rail.Blank.Grain.X == 0) return "";
        var along = stations[1].DistanceTo(stations[0]);
        var what = rail.Kind == PartKind.WallRail ? "brackets" : "balusters";
        // Along a curved edge they are not equally far apart: only their level distance is.
        return $"; {Number.Print(stations.Count, 0)} {what}, {rod.Units.Print(along * Math.Abs((stations[1] - stations[0]).Unit.Dot(new(rail.Blank.Grain.X, -rail.Blank.Grain.Y))))} level from one to the next";
    }
}
