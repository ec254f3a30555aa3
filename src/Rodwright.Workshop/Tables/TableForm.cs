using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Workshop.Tables;

/// <summary>A table as somebody types it; judged by the regulation file's own reader, so that file and page refuse alike. Immutable.</summary>
public sealed record TableForm
{
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Its id.</summary>
    public string Id { get; init; } = "";

    /// <summary>Its title.</summary>
    public string Title { get; init; } = "";

    /// <summary>Id of the published table it is based on; empty for none.</summary>
    public string BasedOn { get; init; } = "";

    /// <summary>How binding it is.</summary>
    public string Standing { get; init; } = "";

    /// <summary>How it measures.</summary>
    public MeasuresForm Measures { get; init; } = new();

    /// <summary>Its clauses.</summary>
    public ImmutableArray<ClauseForm> Clauses { get; init; } = [];

    /// <summary>A new table after a published one, or a copy of one of the shop's own; its title still to be written.</summary>
    public static TableForm After(Regulation given) => given.WrittenAs is { } own
        ? Of(own) with { Id = "", Title = "" }
        : new() { BasedOn = given.Id };

    /// <summary>The form of a table that is kept.</summary>
    public static TableForm Of(OwnRegulation table)
    {
        var document = RegulationCatalogue.Find(table.BasedOn)?.Units ?? Units.Millimetres;
        return new()
        {
            Id = table.Id, Title = table.Title, BasedOn = table.BasedOn, Standing = table.Standing, Measures = MeasuresForm.Of(table.Measures, document),
            Clauses = [.. table.Clauses.Select(c => ClauseForm.Of(c, document))],
        };
    }

    /// <summary>The table it is based on; null for none.</summary>
    public Regulation? Given => RegulationCatalogue.Find(BasedOn);

    /// <summary>The table, or everything that is wrong with what was typed: at "title", at "clauses[2].least".</summary>
    public Outcome<OwnRegulation> Read()
    {
        var json = new JsonObject { ["rodwrightRegulation"] = 1, ["id"] = Id.Trim(), ["title"] = Title.Trim() };
        ClauseForm.Text(json, "basedOn", BasedOn);
        ClauseForm.Text(json, "standing", Standing);
        if (Measures.Json() is { Count: > 0 } measures) json["measures"] = measures;
        json["clauses"] = new JsonArray([.. Clauses.Select(c => (JsonNode)c.Json())]);
        return OwnRegulationFile.Read(json.ToJsonString(Plain));
    }
}
