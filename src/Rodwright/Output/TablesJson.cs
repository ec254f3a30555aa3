using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Rules;

namespace Rodwright.Output;

/// <summary>Regulation tables as JSON.</summary>
internal static class TablesJson
{
    public static string List(RegulationShelf shelf) => Write(json =>
    {
        json.WriteStartArray("regulations");
        foreach (var table in shelf.All)
        {
            json.WriteStartObject();
            Head(json, table);
            json.WriteNumber("clauses", table.Clauses.Length);
            json.WriteNumber("fromMemory", table.Clauses.Count(c => c.Evidence == Evidence.Memory));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    public static string One(Regulation table) => Write(json =>
    {
        Head(json, table);
        json.WriteString("standing", table.Standing);
        json.WriteStartObject("measures");
        json.WriteNumber("middleBelow", table.WalkingLine.MiddleBelow);
        json.WriteNumber("inset", table.WalkingLine.Inset);
        json.WriteBoolean("bothSides", table.WalkingLine.BothSides);
        json.WriteString("going", table.Going == GoingMeasure.Chord ? "chord" : "arc");
        json.WriteString("narrow", table.Narrow switch { NarrowMeasure.AlongFaces => "along-faces", NarrowMeasure.Straight => "straight", _ => "tread-width" });
        json.WriteBoolean("taperedAtLeastStraight", table.TaperedAtLeastStraight);
        json.WriteString("words", table.Measures);
        json.WriteEndObject();
        json.WriteStartArray("clauses");
        foreach (var c in table.Clauses)
        {
            json.WriteStartObject();
            json.WriteString("clause", c.Number);
            json.WriteString("rule", c.Rule.Id);
            json.WriteString("title", c.Rule.Title);
            json.WriteString("limit", c.Limit.Statement(c.Rule, table.Units));
            if (c.Limit.Least is { } least) json.WriteNumber("least", least);
            if (c.Limit.Most is { } most) json.WriteNumber("most", most);
            if (!c.Limit.Boxes.IsEmpty) Pairs(json, c.Limit);
            json.WriteString("unit", Unit(c.Rule));
            json.WriteString("weight", c.Weight == Weight.Limit ? "limit" : "advice");
            json.WriteBoolean("measured", c.Rule is not UnmeasuredRule);
            json.WriteString("evidence", EvidenceWords.Code(c.Evidence));
            json.WriteString("evidenceWords", EvidenceWords.Print(c.Evidence));
            json.WriteString("source", c.Source);
            json.WriteBoolean("own", c.IsOwn);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    public static string Rules() => Write(json =>
    {
        json.WriteStartArray("rules");
        foreach (var rule in RuleCatalogue.Measured.Concat(RuleCatalogue.Unmeasured))
        {
            json.WriteStartObject();
            json.WriteString("id", rule.Id);
            json.WriteString("title", rule.Title);
            json.WriteString("unit", Unit(rule));
            json.WriteBoolean("measured", rule is not UnmeasuredRule);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    private static void Head(Utf8JsonWriter json, Regulation table)
    {
        json.WriteString("id", table.Id);
        json.WriteString("title", table.Title);
        json.WriteString("group", table.Group);
        json.WriteBoolean("own", table.IsOwn);
        if (table.BasedOn.Length > 0) json.WriteString("basedOn", table.BasedOn);
    }

    private static void Pairs(Utf8JsonWriter json, Limit limit)
    {
        json.WriteStartArray("pairs");
        foreach (var box in limit.Boxes)
        {
            json.WriteStartObject();
            json.WriteNumber("riseLeast", box.RiseLeast);
            json.WriteNumber("riseMost", box.RiseMost);
            json.WriteNumber("goingLeast", box.GoingLeast);
            json.WriteNumber("goingMost", box.GoingMost);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static string Unit(Rule rule) => rule.Unit switch { RuleUnit.Millimetres => "mm", RuleUnit.Degrees => "degrees", _ => "" };

    private static string Write(Action<Utf8JsonWriter> what)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            what(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
