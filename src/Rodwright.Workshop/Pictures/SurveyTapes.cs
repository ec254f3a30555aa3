using Rodwright.Geometry;
using Rodwright.Rod.Views;
using Rodwright.Stairs.Surveys;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Pictures;

/// <summary>Where the tape lies for a reading, from the place where it is hooked to the place where it is read.</summary>
public static class SurveyTapes
{
    private const double Guess = 1500; // a wall or an opening that has not been measured yet, mm of the picture only
    private const string Walls = "survey.walls";

    /// <summary>On the floor, in the world; null for a reading that is taken upright or not in this room.</summary>
    public static (Point2 From, Point2 To)? Level(RoomView view, string reading)
    {
        foreach (var wall in view.Walls)
            if (reading.StartsWith(SurveyEdits.Item(Walls, wall.Index) + ".", StringComparison.Ordinal)) return AtWall(view, wall, reading[(reading.IndexOf("].", StringComparison.Ordinal) + 2)..]);
        if (reading == SurveyEdits.Item(Walls, view.Walls.Length) + ".length") return Next(view, Guess);
        if (reading.StartsWith("survey.well.", StringComparison.Ordinal)) return AtWell(view, reading["survey.well.".Length..]);
        if (reading.StartsWith("survey.ceilings[", StringComparison.Ordinal)) return AtCeiling(view, reading);
        if (reading == "survey.place.from" && view.Frame.From is { } from && view.Stair.Job.Survey.Place.Wall is var number && number <= view.Walls.Length)
            return (view.Walls[number - 1].From, view.Walls[number - 1].At(from));
        return null;
    }

    /// <summary>Upright, in the section: station along the walking line and height; null for a reading that is not a height.</summary>
    public static (Point2 From, Point2 To)? Upright(RoomView room, SectionView view, string reading)
    {
        var survey = view.Stair.Job.Survey;
        var beyond = (view.Arrival + view.Bounds.MaxX) / 2;
        switch (reading)
        {
            case "survey.floorToFloor": return (new(view.Bounds.MinX, 0), new(view.Bounds.MinX, survey.Height));
            case "survey.lowerFinish": return (new(view.Bounds.MinX + 150, 0), new(view.Bounds.MinX + 150, 150));
            case "survey.upperFinish": return (new(beyond, survey.Height), new(beyond, survey.Height + 150));
            case "survey.well.trimmer": return (new(beyond, survey.Height), new(beyond, survey.Height - (survey.Well?.Trimmer.Mean ?? 230)));
        }
        for (var i = 0; i <= survey.Ceilings.Count; i++)
        {
            var at = SurveyEdits.Item("survey.ceilings", i);
            if (!reading.StartsWith(at + ".", StringComparison.Ordinal) || !reading.EndsWith(".height", StringComparison.Ordinal)) continue;
            var ceiling = i < survey.Ceilings.Count ? survey.Ceilings[i] : new();
            var point = reading.Contains(".first.", StringComparison.Ordinal) ? ceiling.First : ceiling.Second;
            var floor = ceiling.Storey == Storey.Upper ? survey.Height : 0;
            var s = Math.Clamp(view.StationOf(room.Frame.ToWorld(new Point2(point.Along, point.Out))), view.Bounds.MinX, view.Bounds.MaxX);
            return (new(s, floor), new(s, floor + (point.Height.IsGiven ? point.Height.Mean : 2000)));
        }
        return null;
    }

    /// <summary>Where the next wall would run: on from the last corner, or from the datum corner along the stair.</summary>
    public static (Point2 From, Point2 To) Next(RoomView view, double length)
    {
        if (view.Walls.IsEmpty) return (view.Frame.ToWorld(Point2.Origin), view.Frame.ToWorld(new Point2(Math.Max(length, Reach(view)), 0)));
        var last = view.Walls[^1];
        return (last.To, last.To + length * Onward(view, last));
    }

    private static double Reach(RoomView view) =>
        new[] { new Point2(view.Bounds.MinX, view.Bounds.MinY), new(view.Bounds.MaxX, view.Bounds.MinY), new(view.Bounds.MaxX, view.Bounds.MaxY), new(view.Bounds.MinX, view.Bounds.MaxY) }.Max(p => view.Frame.ToRoom(p).X);

    private static (Point2, Point2)? AtWall(RoomView view, RoomWall wall, string reading)
    {
        var corner = wall.Run.Corner;
        var onward = Onward(view, wall);
        var (leg, next) = (wall.At(wall.Length - (corner?.Leg ?? 600)), wall.To + (corner?.NextLeg ?? 600) * onward);
        if (reading.StartsWith("openings[", StringComparison.Ordinal)) return AtOpening(wall, reading);
        return reading switch
        {
            "length" => (wall.From, wall.To),
            "corner.leg" => (wall.To, leg),
            "corner.nextLeg" => (wall.To, next),
            "corner.across" or "corner.angle" => (leg, next),
            "corner.diagonal" => (wall.From, wall.Index + 1 < view.Walls.Length ? view.Walls[wall.Index + 1].To : wall.To + Guess * onward),
            "plumb.out" or "plumb.over" => (wall.At(wall.Length / 2), wall.At(wall.Length / 2) + 300 * wall.Inward),
            _ => null,
        };
    }

    /// <summary>The way the wall after this one runs; square to it where the corner was not measured.</summary>
    private static Vector2 Onward(RoomView view, RoomWall wall)
    {
        if (wall.Index + 1 < view.Walls.Length) return (view.Walls[wall.Index + 1].To - view.Walls[wall.Index + 1].From).Unit;
        var along = (wall.To - wall.From).Unit;
        if (wall.Run.Corner?.Degrees(wall.Length, Guess) is not { } inside) return wall.Inward;
        var turn = Vector2.At(Angle.FromDegrees(180 - inside).Radians);
        return turn.X * along + turn.Y * wall.Inward;
    }

    private static (Point2, Point2)? AtOpening(RoomWall wall, string reading)
    {
        var (index, name) = (reading[9..reading.IndexOf(']', StringComparison.Ordinal)], reading[(reading.IndexOf("].", StringComparison.Ordinal) + 2)..]);
        var i = int.Parse(index, System.Globalization.CultureInfo.InvariantCulture);
        var (at, width, depth) = i < wall.Run.Openings.Count ? (wall.Run.Openings[i].At, wall.Run.Openings[i].Width, wall.Run.Openings[i].Depth) : (Math.Min(400, wall.Length / 3), Math.Min(800, wall.Length / 3), 400);
        return name switch
        {
            "at" => (wall.From, wall.At(at)),
            "width" => (wall.At(at), wall.At(at + width)),
            "clear" => (wall.At(at + width / 2), wall.At(at + width / 2) + depth * wall.Inward),
            _ => null,
        };
    }

    private static (Point2, Point2)? AtWell(RoomView view, string reading)
    {
        if (reading.StartsWith("corners[", StringComparison.Ordinal)) return AtCorner(view, reading);
        if (view.Stair.Job.Survey.Well is not { IsRectangle: true })
        {
            // Not measured yet: a well of the stair's own size where one would be expected.
            return reading switch { "length" => Across(new(0, 0), new(Reach(view), 0)), "width" => Across(new(Reach(view), 0), new(Reach(view), 900)), _ => null };
        }
        var ring = view.Well!;
        var begins = view.Frame.ToRoom(ring.Edge(0).From);
        return reading switch
        {
            "length" => (ring.Edge(0).From, ring.Edge(0).To),
            "width" => (ring.Edge(1).From, ring.Edge(1).To),
            "along" => Across(new(0, begins.Y), begins),
            "out" => Across(new(begins.X, 0), begins),
            _ => null,
        };

        (Point2, Point2) Across(Point2 a, Point2 b) => (view.Frame.ToWorld(a), view.Frame.ToWorld(b));
    }

    /// <summary>A corner of a well of any shape: corners[2].along, corners[2].out.</summary>
    private static (Point2, Point2)? AtCorner(RoomView view, string reading)
    {
        var corners = view.Stair.Job.Survey.Well?.Corners ?? [];
        var i = int.Parse(reading[8..reading.IndexOf(']', StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture);
        if (i >= corners.Count) return null;
        var at = corners[i];
        return (view.Frame.ToWorld(reading.EndsWith("along", StringComparison.Ordinal) ? new Point2(0, at.Y) : new(at.X, 0)), view.Frame.ToWorld(at));
    }

    private static (Point2, Point2)? AtCeiling(RoomView view, string reading)
    {
        var ceilings = view.Stair.Job.Survey.Ceilings;
        for (var i = 0; i < ceilings.Count; i++)
        {
            var at = SurveyEdits.Item("survey.ceilings", i);
            foreach (var (name, point) in new[] { (at + ".first", ceilings[i].First), (at + ".second", ceilings[i].Second) })
            {
                var place = new Point2(point.Along, point.Out);
                if (reading == name + ".along") return (view.Frame.ToWorld(new Point2(0, place.Y)), view.Frame.ToWorld(place));
                if (reading == name + ".out") return (view.Frame.ToWorld(new Point2(place.X, 0)), view.Frame.ToWorld(place));
            }
        }
        return null;
    }
}
