using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery;
using Rodwright.Joinery.Proof;
using Rodwright.Joinery.Strings;
using Rodwright.Stairs.Plans;

namespace Rodwright.Output;

/// <summary>
/// The whole numeric result as JSON: millimetres and degrees, unrounded, in the world frame (right-hand stairs at negative x) and in the developments' (s, z).
/// </summary>
internal static class StairJson
{
    public static string Write(Stair stair, ProofReport proof)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteString("title", stair.Job.Title);
            ReportsJson.Units(json, stair.Units);
            Steps(json, stair.Plan);
            SurveyJson.Write(json, stair);
            RiserLines(json, stair.Plan);
            Tapered(json, stair.Plan);
            Turns(json, stair.Plan);
            json.WriteStartArray("strings");
            foreach (var board in stair.Kit.Strings) StringOf(json, board);
            json.WriteEndArray();
            PartsJson.Newels(json, stair.Kit);
            PartsJson.Parts(json, stair.Kit);
            ReportsJson.Regulation(json, stair.Regulation);
            ReportsJson.Proof(json, proof);
            ReportsJson.Findings(json, stair.Findings);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Steps(Utf8JsonWriter json, StairPlan plan)
    {
        json.WriteStartObject("steps");
        json.WriteNumber("risers", plan.Risers);
        json.WriteNumber("rise", plan.Rise);
        json.WriteNumber("going", plan.Going);
        json.WriteNumber("pitchDegrees", plan.Pitch.Degrees);
        json.WriteEndObject();
    }

    private static void RiserLines(Utf8JsonWriter json, StairPlan plan)
    {
        json.WriteStartArray("riserLines");
        foreach (var line in plan.RiserLines)
        {
            json.WriteStartObject();
            json.WriteNumber("number", line.Number);
            Point(json, "inner", line.Inner);
            Point(json, "walking", line.Walking);
            Point(json, "outer", line.Outer);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Tapered(Utf8JsonWriter json, StairPlan plan)
    {
        json.WriteStartArray("taperedSteps");
        foreach (var step in plan.TaperedSteps)
        {
            json.WriteStartObject();
            json.WriteNumber("number", step.Number);
            json.WriteNumber("goingChord", step.GoingChord);
            json.WriteNumber("goingArc", step.GoingArc);
            json.WriteNumber("nosingGoing", step.NosingGoing);
            if (step.OuterGoing is { } outer) json.WriteNumber("outerGoingChord", outer);
            json.WriteNumber("narrowAlongFaces", step.NarrowAlongFaces);
            json.WriteNumber("narrowStraight", step.NarrowStraight);
            json.WriteNumber("narrowTreadWidth", step.NarrowTreadWidth);
            json.WriteNumber("wide", step.Wide);
            // A right-hand turn is measured the other way round; the taper is the same angle.
            json.WriteNumber("angleDegrees", Math.Abs(step.Taper.Degrees));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Turns(Utf8JsonWriter json, StairPlan plan)
    {
        json.WriteStartArray("turns");
        foreach (var turn in plan.Turns)
        {
            json.WriteStartObject();
            json.WriteString("kind", turn.Steps.IsEmpty ? "landing" : "winders");
            json.WriteString("hand", turn.Hand.ToString().ToLowerInvariant());
            json.WriteNumber("quarters", turn.Site.Quarters);
            json.WriteString("method", turn.Method);
            json.WriteNumber("firstRiserNumber", turn.FirstLine);
            json.WriteNumber("lastRiserNumber", turn.LastLine);
            json.WriteNumber("sharedBefore", turn.Turn.SharedBefore);
            json.WriteNumber("sharedAfter", turn.Turn.SharedAfter);
            json.WriteNumber("firstRiser", turn.FirstRiser);
            json.WriteNumber("lastRiser", turn.LastRiser);
            json.WriteString("decidedBy", turn.DecidedBy);
            Point(json, "newelCentre", turn.Centre);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void StringOf(Utf8JsonWriter json, StringBoard board)
    {
        var blank = board.Part.Blank;
        json.WriteStartObject();
        json.WriteString("name", board.Site.Name);
        json.WriteString("mark", board.Site.Mark);
        json.WriteString("kind", board.Site.IsWall ? "wall" : "newel");
        json.WriteStartArray("pitchPoints");
        foreach (var p in board.PitchPoints) Pair(json, p.At);
        json.WriteEndArray();
        Edge(json, "upperEdge", board.UpperEdge);
        Edge(json, "lowerEdge", board.LowerEdge);
        Edge(json, "outline", board.Outline);
        json.WriteStartArray("easings");
        foreach (var e in board.Easings)
        {
            json.WriteStartObject();
            json.WriteString("edge", e.Edge);
            Point(json, "corner", e.Corner);
            json.WriteNumber("tangent", e.Tangent);
            json.WriteNumber("radius", double.IsFinite(e.Radius) ? e.Radius : 0);
            json.WriteNumber("turnDegrees", e.Turn.Degrees);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        PartsJson.Blank(json, blank);
        json.WriteStartArray("jointedUp");
        foreach (var j in blank.JointedUp) PartsJson.Jointed(json, j);
        json.WriteEndArray();
        json.WriteNumber("leastWidth", board.LeastWidth);
        json.WriteStartArray("housings");
        foreach (var h in board.Housings)
        {
            json.WriteStartObject();
            json.WriteString("piece", h.Piece);
            json.WriteNumber("depth", h.Depth);
            Edge(json, "seat", h.Seat);
            Edge(json, "shape", h.Shape);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("tenons");
        foreach (var t in board.Tenons) Tenon(json, t);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Tenon(Utf8JsonWriter json, StringTenon t)
    {
        json.WriteStartObject();
        json.WriteString("newel", t.Newel);
        json.WriteNumber("shoulder", t.Shoulder);
        json.WriteNumber("length", t.Length);
        json.WriteNumber("thickness", t.Thickness);
        json.WriteNumber("bottom", t.Bottom);
        json.WriteNumber("top", t.Top);
        json.WriteNumber("haunch", t.Haunch);
        json.WriteStartArray("pegHeights");
        foreach (var z in t.PegHeights) json.WriteNumberValue(z);
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>A path as [s, z, bulge] for each vertex.</summary>
    public static void Edge(Utf8JsonWriter json, string name, Path2 path)
    {
        json.WriteStartArray(name);
        foreach (var v in path.Vertices)
        {
            json.WriteStartArray();
            json.WriteNumberValue(v.At.X + 0.0);
            json.WriteNumberValue(v.At.Y + 0.0);
            json.WriteNumberValue(v.Bulge + 0.0);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    /// <summary>A named [x, y].</summary>
    public static void Point(Utf8JsonWriter json, string name, Point2 p)
    {
        json.WritePropertyName(name);
        Pair(json, p);
    }

    private static void Pair(Utf8JsonWriter json, Point2 p)
    {
        json.WriteStartArray();
        // Plus zero turns a mirrored -0 into 0.
        json.WriteNumberValue(p.X + 0.0);
        json.WriteNumberValue(p.Y + 0.0);
        json.WriteEndArray();
    }
}
