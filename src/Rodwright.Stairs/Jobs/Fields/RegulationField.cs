using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The table a job is judged by: a published one, or one of the shop's own.</summary>
internal sealed class RegulationField() : Field<Job>("regulation", "regulation",
    $"the table the stair is judged by; a job keeps the edition it was made under; {RegulationShelf.OwnPrefix}… names a table of the shop's own", required: true)
{
    private static readonly ImmutableArray<string> Published = [.. RegulationCatalogue.All.Select(r => r.Id)];

    public override Job Read(JobReading reading, JsonElement json, string path, Job owner)
    {
        var known = JsonWords.Either([.. Published, .. reading.Shelf?.Own.Select(t => t.Id) ?? []]);
        if (!reading.IsKind(json, JsonValueKind.String, path, JobCodes.TextWanted, $"the regulation, {known},", $"write {known} in quotation marks")) return owner;
        var id = json.GetString()!;
        if (Published.Contains(id)) return owner with { Regulation = id };
        if (OwnIds.Are(id))
        {
            if (reading.Shelf is not { } shelf || shelf.Find(id) is not null) return owner with { Regulation = id };
            var missing = shelf.Missing(id);
            reading.Refuse(missing.Code, path, missing.Message, missing.Hint);
            return owner;
        }
        var nearest = NearestName.To(id, Published);
        reading.Refuse(JobCodes.Regulation, path, $"the regulation \"{JsonWords.Shown(id)}\" is not known; known: {known}", nearest is not null ? $"did you mean {nearest}?" : $"write {known}");
        return owner;
    }

    public override void Write(Utf8JsonWriter json, Job owner)
    {
        if (owner.Regulation.Length > 0) json.WriteString(Name, owner.Regulation);
    }

    public override void WriteSchema(Utf8JsonWriter json, Job defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteStartArray("anyOf");
        json.WriteStartObject();
        json.WriteStartArray("enum");
        foreach (var id in Published) json.WriteStringValue(id);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteStartObject();
        OwnIds.WritePattern(json);
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, Job defaults) => [new(path, Label, "", null, null, null, Published, true, Source)];
}
