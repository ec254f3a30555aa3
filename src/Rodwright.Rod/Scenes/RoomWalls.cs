using Rodwright.Geometry;
using Rodwright.Geometry.Solids;
using Rodwright.Rod.Views;

namespace Rodwright.Rod.Scenes;

/// <summary>The walls behind the wall strings, as plain slabs a little longer than the stair.</summary>
internal static class RoomWalls
{
    /// <summary>Thickness of a wall, mm: of the picture only.</summary>
    private const double Thick = 100;

    /// <summary>The walls' faces in plan, carried on past the stair; each directed so that the wall lies to its left.</summary>
    public static List<Path2> Faces(PlanView view, double past) => [.. view.WallParts.Select(wall => CarriedOn(wall, past))];

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

    /// <summary>A wall's end at a turn's newel stays where it is: the stair goes round it.</summary>
    private static Path2 CarriedOn(PlanWall wall, double past)
    {
        var points = wall.Face.Vertices.Select(v => v.At).ToList();
        if (wall.StartsFree) points[0] = points[0] - past * (points[1] - points[0]).Unit;
        if (wall.EndsFree) points[^1] = points[^1] + past * (points[^1] - points[^2]).Unit;
        return Path2.Polyline(points);
    }
}
