using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Stairs.Headroom;
using Rodwright.Stairs.Surveys;

namespace Rodwright.Output;

/// <summary>The stair in its room as JSON.</summary>
internal static class SurveyJson
{
    public static void Write(Utf8JsonWriter json, Stair stair)
    {
        var report = stair.InRoom();
        var survey = stair.Job.Survey;
        json.WriteStartObject("survey");
        json.WriteNumber("height", survey.Height);
        json.WriteNumber("spread", survey.Spread);
        json.WriteNumber("lowerFinish", survey.LowerFinish);
        json.WriteNumber("upperFinish", survey.UpperFinish);
        Room(json, stair);
        if (report.Headroom is { Least: { } least } headroom)
        {
            json.WriteStartObject("headroom");
            Clear(json, least);
            Maybe(json, "wanted", report.HeadroomWanted);
            json.WriteNumber("wellLongerBy", report.WellLonger.Select(w => w.By).FirstOrDefault());
            json.WriteStartArray("wellEdges");
            foreach (var edge in report.WellLonger)
            {
                json.WriteStartObject();
                StairJson.Point(json, "from", edge.From);
                StairJson.Point(json, "to", edge.To);
                json.WriteString("direction", HeadroomWords.Towards(stair.Plan, edge));
                json.WriteNumber("by", edge.By);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteNumber("arrivalCovered", headroom.ArrivalCovered);
            List(json, "each", headroom.Under, Clear);
            List(json, "inTheMiddle", headroom.InMiddle, Clear);
            json.WriteEndObject();
        }
        else json.WriteNull("headroom");
        List(json, "walls", report.Walls, (j, w) =>
        {
            j.WriteString("wall", w.Name);
            j.WriteNumber("room", w.Least);
            StairJson.Point(j, "at", w.At);
        });
        List(json, "openings", report.Openings, (j, o) =>
        {
            j.WriteString("opening", o.Opening.Words);
            j.WriteNumber("wall", o.Wall + 1);
            Maybe(j, "clear", o.Clear);
            j.WriteNumber("wanted", o.Opening.Depth);
            j.WriteBoolean("isClear", o.IsClear);
            j.WriteBoolean("crossed", o.Crossed);
        });
        List(json, "scribing", report.Scribing, (j, g) =>
        {
            j.WriteString("string", g.String);
            j.WriteString("wall", g.Name);
            j.WriteNumber("widest", g.Widest);
            j.WriteNumber("s", g.S);
            j.WriteNumber("z", g.Z);
            j.WriteNumber("offSquareDegrees", g.OffSquareDegrees);
            j.WriteNumber("leanPerMetre", g.LeanPerMetre);
            j.WriteNumber("allowance", stair.Job.Practice.Scribing);
        });
        List(json, "wayIn", report.WayIn, (j, v) =>
        {
            j.WriteString("stop", v.Stop.Words);
            j.WriteString("piece", v.Piece.Mark);
            j.WriteString("name", v.Piece.Name);
            j.WriteNumber("length", v.Piece.Length);
            j.WriteNumber("width", v.Piece.Width);
            j.WriteNumber("thickness", v.Piece.Thickness);
            j.WriteBoolean("passes", v.Passes);
            Maybe(j, "longest", v.Longest);
        });
        if (report.Largest is { } largest) json.WriteString("largestThatPasses", largest.Mark);
        List(json, "certainty", report.Certainty(stair.Kit), (j, c) =>
        {
            j.WriteString("what", c.What);
            j.WriteNumber("value", c.Value);
            j.WriteNumber("low", c.Low);
            j.WriteNumber("high", c.High);
            j.WriteString("limit", c.Limit);
            Maybe(j, "least", c.Range.Least);
            Maybe(j, "most", c.Range.Most);
            j.WriteString("unit", c.Unit);
            j.WriteString("verdict", c.Verdict switch { CutVerdict.Safe => "safe", CutVerdict.Fails => "fails", _ => "measure-again" });
            j.WriteString("words", c.Words);
            if (c.Decides is { } decides) j.WriteString("decides", decides.Path);
        });
        json.WriteEndObject();
    }

    private static void Room(Utf8JsonWriter json, Stair stair)
    {
        var frame = RoomFrame.Of(stair.Plan);
        StairJson.Point(json, "roomOrigin", frame.ToWorld(Point2.Origin));
        Maybe(json, "firstRiserFromWallStart", frame.From);
        json.WriteStartArray("roomCorners");
        foreach (var p in RoomShape.TryOf(stair.Job.Survey)?.Corners ?? []) Pair(json, frame.ToWorld(p));
        json.WriteEndArray();
        json.WriteStartArray("well");
        if (stair.Job.Survey.Well is { } well) foreach (var p in WellShape.Of(well, stair.Plan, frame)) Pair(json, frame.ToWorld(p));
        json.WriteEndArray();
    }

    private static void Clear(Utf8JsonWriter json, Clearance found)
    {
        json.WriteNumber("least", found.Least);
        StairJson.Point(json, "at", found.At);
        json.WriteNumber("step", found.Step);
        json.WriteString("under", found.Under.Name);
    }

    private static void List<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(json, item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Pair(Utf8JsonWriter json, Point2 p)
    {
        json.WriteStartArray();
        json.WriteNumberValue(p.X + 0.0);
        json.WriteNumberValue(p.Y + 0.0);
        json.WriteEndArray();
    }

    private static void Maybe(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v) json.WriteNumber(name, v);
        else json.WriteNull(name);
    }
}
