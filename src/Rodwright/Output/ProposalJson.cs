using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Proposals;

namespace Rodwright.Output;

/// <summary>Proposals as JSON: millimetres, degrees, square and cubic metres, unrounded; each with its whole job file.</summary>
internal static class ProposalJson
{
    public static string Write(ProposalReport report, double milliseconds)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteStartArray("proposals");
            foreach (var proposal in report.Proposals) Proposal(json, proposal);
            json.WriteEndArray();
            json.WriteStartArray("rejected");
            foreach (var family in report.Rejected) Rejected(json, family);
            json.WriteEndArray();
            json.WriteStartArray("dropped");
            foreach (var candidate in report.Dropped)
            {
                json.WriteStartObject();
                json.WriteString("family", candidate.Family.Id);
                json.WriteString("stair", candidate.Stair);
                json.WriteString("reason", candidate.Reason);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteNumber("candidatesJudged", report.CandidatesJudged);
            json.WriteNumber("milliseconds", milliseconds);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Proposal(Utf8JsonWriter json, Proposal proposal)
    {
        var m = proposal.Measures;
        json.WriteStartObject();
        json.WriteString("family", proposal.Family.Id);
        json.WriteString("title", proposal.Family.Title);
        json.WriteString("hand", proposal.Hand == Hand.Left ? "left" : "right");
        json.WriteStartObject("measures");
        json.WriteNumber("comfort", m.Comfort);
        json.WriteNumber("comfortOff", m.ComfortOff);
        json.WriteNumber("pitchDegrees", m.PitchDegrees);
        Maybe(json, "headroom", m.Headroom);
        json.WriteNumber("floorArea", m.FloorArea);
        Maybe(json, "narrowest", m.Narrowest);
        json.WriteNumber("timber", m.Timber);
        json.WriteNumber("taperedSteps", m.TaperedSteps);
        json.WriteEndObject();
        json.WriteNumber("score", proposal.Score);
        json.WriteBoolean("unbeaten", proposal.Unbeaten);
        json.WritePropertyName("job");
        json.WriteRawValue(JobFile.Write(proposal.Job));
        json.WriteEndObject();
    }

    private static void Rejected(Utf8JsonWriter json, RejectedFamily family)
    {
        json.WriteStartObject();
        json.WriteString("family", family.Family.Id);
        json.WriteString("title", family.Family.Title);
        json.WriteString("decidedBy", family.DecidedBy);
        json.WriteString("wouldHelp", family.WouldHelp);
        json.WriteStartArray("changes");
        foreach (var help in family.Helps)
        {
            json.WriteStartObject();
            json.WriteString("bound", JsonNamingPolicy.CamelCase.ConvertName(help.Bound.ToString()));
            json.WriteNumber("by", help.By);
            json.WriteString("words", help.Words);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Maybe(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number) json.WriteNumber(name, number);
        else json.WriteNull(name);
    }
}
