using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Jobs;

namespace Rodwright.Rod.Scenes;

/// <summary>The walls behind the wall strings, as plain slabs a little longer than the stair.</summary>
internal static class RoomWalls
{
    /// <summary>Thickness of a wall, mm: of the picture only.</summary>
    private const double Thick = 100;

    /// <summary>The walls' faces in plan, carried on past the stair; each directed so that the wall lies to its left.</summary>
    public static List<Path2> Faces(PlanView view, double past) => [.. view.Walls.Select((wall, i) => CarriedOn(view, wall, past, view.Stair.Job.OuterSide == SideKind.Wall && i == 0))];

    /// <summary>The slabs, one for each straight stretch, mitred at corners.</summary>
    public static IEnumerable<RoomPiece> Of(IReadOnlyList<Path2> faces, double top)
    {
        var number = 0;
        foreach (var face in faces)
        {
            var (front, back) = (face.Vertices, PlanView.Offset([.. face.Vertices.Select(v => v.At)], Thick).Vertices);
            for (var i = 0; i + 1 < front.Length; i++)
            {
                var slab = Path2.Polygon(front[i].At, front[i + 1].At, back[i + 1].At, back[i].At);
                var name = $"wall {Number.Print(++number, 0)}";
                yield return new("wall", name, RoomSolid.Of(slab, top, 0), Vector3.Level((front[i + 1].At - front[i].At).Unit.Right));
            }
        }
    }

    /// <summary>An inner wall's end at a turn stays where it is: the stair goes round it.</summary>
    private static Path2 CarriedOn(PlanView view, Path2 wall, double past, bool isOuter)
    {
        var points = wall.Vertices.Select(v => v.At).ToList();
        var (first, last) = (true, true);
        if (!isOuter && view.Stair.Plan.Turn is { } turn) (first, last) = points[0].DistanceTo(turn.Centre) > points[^1].DistanceTo(turn.Centre) ? (true, false) : (false, true);
        if (first) points[0] = points[0] - past * (points[1] - points[0]).Unit;
        if (last) points[^1] = points[^1] + past * (points[^1] - points[^2]).Unit;
        return Path2.Polyline(points);
    }
}
