using System.Text.Json;
using Rodwright.Geometry;
using Rodwright.Joinery.Proof;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Regulations;

namespace Rodwright.Output;

/// <summary>Regulation report, proof and findings as JSON.</summary>
internal static class ReportsJson
{
    /// <summary>In which unit the numbers are, whatever the job is told in; and the unit of its words.</summary>
    public static void Units(Utf8JsonWriter json, Units units)
    {
        json.WriteString("lengths", Geometry.Units.Millimetres.Id);
        json.WriteString("units", units.Id);
    }

    public static void Regulation(Utf8JsonWriter json, RegulationReport report)
    {
        json.WriteStartObject("regulation");
        json.WriteString("id", report.Id);
        json.WriteString("title", report.Title);
        json.WriteString("measures", report.Measures);
        json.WriteNumber("fromMemory", report.FromMemory);
        json.WriteStartArray("checks");
        foreach (var c in report.Checks)
        {
            json.WriteStartObject();
            json.WriteString("clause", c.Clause.Number);
            json.WriteString("rule", c.Clause.Rule.Id);
            json.WriteString("title", c.Clause.Rule.Title);
            Maybe(json, "measured", c.Measured);
            json.WriteString("limit", c.Limit);
            Maybe(json, "least", Finite(c.Range.Least));
            Maybe(json, "most", Finite(c.Range.Most));
            json.WriteString("unit", c.Unit);
            json.WriteString("outcome", c.OutcomeWord);
            json.WriteString("evidence", c.EvidenceWord);
            json.WriteString("evidenceWords", EvidenceWords.Print(c.Clause.Evidence));
            json.WriteString("where", c.Where);
            if (c.Reason.Length > 0) json.WriteString("reason", c.Reason);
            json.WriteString("source", c.Clause.Source);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    public static void Proof(Utf8JsonWriter json, ProofReport proof)
    {
        json.WriteStartObject("proof");
        json.WriteBoolean("holds", proof.Holds);
        Maybe(json, "worstGap", Finite(proof.WorstGap));
        json.WriteStartArray("joints");
        foreach (var j in proof.Joints)
        {
            json.WriteStartObject();
            json.WriteString("id", j.Id);
            json.WriteString("kind", j.Kind);
            json.WriteString("male", j.Male);
            json.WriteString("female", j.Female);
            Maybe(json, "gap", Finite(j.Gap));
            json.WriteNumber("enters", j.Reached);
            json.WriteNumber("wanted", j.Wanted);
            json.WriteString("stated", j.Stated);
            json.WriteBoolean("holds", j.Holds);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        Clashes(json, "clashes", proof.Clashes);
        Clashes(json, "newelCuts", proof.NewelCuts);
        json.WriteStartArray("blanks");
        foreach (var b in proof.Blanks)
        {
            json.WriteStartObject();
            json.WriteString("part", b.Part);
            json.WriteNumber("outside", b.Outside);
            json.WriteBoolean("holds", b.Holds);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartObject("survey");
        json.WriteNumber("height", proof.Survey.Height);
        json.WriteNumber("risers", proof.Survey.Risers);
        json.WriteBoolean("holds", proof.Survey.Holds);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public static void Findings(Utf8JsonWriter json, IEnumerable<Finding> findings)
    {
        json.WriteStartArray("findings");
        foreach (var f in findings)
        {
            json.WriteStartObject();
            json.WriteString("code", f.Code);
            json.WriteString("severity", FindingText.Word(f.Severity));
            json.WriteString("where", f.Where);
            json.WriteString("message", f.Message);
            json.WriteString("hint", f.Hint);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Clashes(Utf8JsonWriter json, string name, IEnumerable<Clash> clashes)
    {
        json.WriteStartArray(name);
        foreach (var c in clashes)
        {
            json.WriteStartObject();
            json.WriteString("first", c.First);
            json.WriteString("second", c.Second);
            json.WriteString("where", $"{c.Where}, {(c.IsArea ? "square mm" : "mm")}");
            json.WriteNumber("size", c.Size);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? v : null;

    private static void Maybe(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } v) json.WriteNumber(name, v);
        else json.WriteNull(name);
    }
}
