using System.Collections.Immutable;
using Rodwright.Geometry;
using Rodwright.Geometry.Solids;

namespace Rodwright.Rod.Scenes;

/// <summary>Slabs of a room.</summary>
internal static class RoomSolid
{
    /// <summary>What lies over an outline in plan, between two heights, in the world of the stair.</summary>
    public static Solid Of(Path2 plan, double top, double bottom, ImmutableArray<Path2> holes = default)
    {
        var frame = new Frame3(new(0, 0, top), new(1, 0, 0), new(0, 1, 0));
        return SolidMaker.Of(new Extrusion(frame, plan, top - bottom) { Holes = holes.IsDefault ? [] : holes }, StairScene.Chord).Placed(frame);
    }

    /// <summary>The slabs over an outline less some others.</summary>
    public static IEnumerable<Solid> Less(Path2 plan, IReadOnlyList<Path2> taken, double top, double bottom)
    {
        List<(Path2 Outer, List<Path2> Holes)> left = [(plan, [])];
        if (taken.Count > 0)
            foreach (var away in Region.Union(taken).Where(o => o.Area > 0)) left = [.. left.SelectMany(l => LessOne(l.Outer, l.Holes, away))];
        return left.Select(l => Of(l.Outer, top, bottom, [.. l.Holes]));
    }

    private static IEnumerable<(Path2 Outer, List<Path2> Holes)> LessOne(Path2 outer, List<Path2> holes, Path2 away)
    {
        var rest = Region.Difference(outer, away);
        foreach (var piece in rest.Where(o => o.Area > 0))
            yield return (piece, [.. holes.Concat(rest.Where(o => o.Area < 0)).Where(h => piece.Holds(h.Vertices[0].At))]);
    }
}
