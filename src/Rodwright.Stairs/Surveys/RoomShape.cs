using System.Collections.Immutable;
using Rodwright.Geometry;

namespace Rodwright.Stairs.Surveys;

/// <summary>
/// The walls as they were measured, in the room's frame: x along the first wall from the datum corner, y square out from it into the room. The walls are walked
/// with the room on the left of the walk in this frame, whatever the hand of the stair: a mirrored room has the same numbers.
/// </summary>
public sealed record RoomShape
{
    private RoomShape(ImmutableArray<Line2> walls, ImmutableArray<double> lengths, string? crosses)
    {
        Walls = walls;
        Lengths = lengths;
        Crosses = crosses;
    }

    /// <summary>Each wall's face as a line from its beginning; the room lies to its left.</summary>
    public ImmutableArray<Line2> Walls { get; }

    /// <summary>Lengths of the walls, mm.</summary>
    public ImmutableArray<double> Lengths { get; }

    /// <summary>Two walls that cross, in words; null when none do.</summary>
    public string? Crosses { get; }

    /// <summary>Corners in order: where each wall begins, and where the last ends.</summary>
    public IEnumerable<Point2> Corners => Walls.Select(w => w.Through).Append(Walls[^1].At(Lengths[^1]));

    /// <summary>From the end of the last wall to the beginning of the first, mm.</summary>
    public double Misclosure => Walls[0].Through.DistanceTo(Walls[^1].At(Lengths[^1]));

    /// <summary>A wall's name, or "wall" and its number.</summary>
    public static string NameOf(WallRun wall, int index) => wall.Name.Length > 0 ? wall.Name : $"wall {Number.Print(index + 1, 0)}";

    /// <summary>The shape of a survey; null when no walls were measured, or a corner's lengths make no triangle.</summary>
    public static RoomShape? TryOf(Jobs.Survey survey)
    {
        var walls = survey.Walls;
        if (walls.Count == 0) return null;
        var lines = ImmutableArray.CreateBuilder<Line2>();
        var (at, along) = (Point2.Origin, new Vector2(1, 0));
        for (var i = 0; i < walls.Count; i++)
        {
            lines.Add(new(at, along));
            at += walls[i].Length.Mean * along;
            var inside = 90.0;
            if (walls[i].Corner is { } corner)
            {
                if (corner.Degrees(walls[i].Length.Mean, i + 1 < walls.Count ? walls[i + 1].Length.Mean : 0) is not { } measured) return null;
                inside = measured;
            }
            along = Vector2.At(along.Direction + Angle.FromDegrees(180 - inside).Radians);
        }
        var (faces, lengths) = (lines.ToImmutable(), walls.Select(w => w.Length.Mean).ToImmutableArray());
        return new(faces, lengths, Crossing(survey, faces, lengths));
    }

    private static string? Crossing(Jobs.Survey survey, ImmutableArray<Line2> walls, ImmutableArray<double> lengths)
    {
        for (var i = 0; i < walls.Length; i++)
        {
            for (var j = i + 2; j < walls.Length; j++)
            {
                if (walls[i].Cross(walls[j]) is not { } p) continue;
                var (s, t) = (walls[i].Station(p), walls[j].Station(p));
                // The last wall may meet the first where the room closes, not quite where it should.
                var slack = i == 0 && j == walls.Length - 1 ? 50 : 0.5;
                if (s > slack && s < lengths[i] - 0.5 && t > 0.5 && t < lengths[j] - slack) return $"{NameOf(survey.Walls[i], i)} and {NameOf(survey.Walls[j], j)}";
            }
        }
        return null;
    }
}
