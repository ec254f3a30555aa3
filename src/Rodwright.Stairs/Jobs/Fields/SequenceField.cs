using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The flights and turns of a layout, from the bottom up.</summary>
internal sealed class SequenceField() : Field<Layout>("sequence", "sequence of flights and turns",
    "from the bottom up: flights with turns between them; a stair may begin and end with either", required: true)
{
    /// <summary>More items than this cannot be meant.</summary>
    private const int MostItems = 13;

    public override Layout Read(JobReading reading, JsonElement json, string path, Layout owner)
    {
        const string hint = "for example [ { \"flight\": 2 }, { \"turn\": \"winders\", \"steps\": 3 }, { \"flight\": 7 } ]";
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, "a list of flights and turns in brackets", hint)) return owner;
        var count = json.GetArrayLength();
        if (count == 0) reading.Refuse(JobCodes.EmptySequence, path, "the sequence is empty: there is nothing to climb", hint);
        var items = ImmutableArray.CreateBuilder<LayoutItem>();
        var flightBefore = false;
        for (var i = 0; i < Math.Min(count, MostItems); i++)
        {
            var where = $"{path}[{i}]";
            if (flightBefore && ItemReading.IsFlight(json[i]))
                reading.Refuse(JobCodes.TwoFlights, where, "a flight follows a flight with no turn between", "join the two to one flight");
            flightBefore = ItemReading.IsFlight(json[i]);
            if (ItemReading.Read(reading, json[i], where) is { } item) items.Add(item);
        }
        if (count > MostItems) reading.Refuse(JobCodes.TooManySteps, path, $"{count} flights and turns were read; at most {MostItems} are taken", "a stair from floor to floor rarely has more than three turns");
        return reading.IsSound(path) ? owner with { Sequence = items.ToImmutable() } : owner;
    }

    public override void Write(Utf8JsonWriter json, Layout owner)
    {
        json.WriteStartArray(Name);
        foreach (var item in owner.Sequence) ItemReading.Write(json, item);
        json.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter json, Layout defaults)
    {
        json.WriteStartObject();
        WriteWords(json);
        json.WriteString("type", "array");
        json.WriteNumber("minItems", 1);
        json.WriteNumber("maxItems", MostItems);
        json.WriteStartObject("items");
        json.WriteStartArray("oneOf");
        ItemReading.WriteSchemas(json);
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, Layout defaults) => ItemReading.Describe(path + "[]");
}
