using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>The flights and turns of a layout, from the bottom up.</summary>
internal sealed class SequenceField() : Field<Layout>("sequence", "sequence of flights and turns",
    "from the bottom up: one flight, or one quarter turn with a flight before and after it; either may be left out", required: true)
{
    /// <summary>More items than this cannot be meant.</summary>
    private const int MostItems = 20;

    public override Layout Read(JobReading reading, JsonElement json, string path, Layout owner)
    {
        const string hint = "for example [ { \"flight\": 2 }, { \"turn\": \"winders\", \"steps\": 3 }, { \"flight\": 7 } ]";
        if (!reading.IsKind(json, JsonValueKind.Array, path, JobCodes.ListWanted, "a list of flights and turns in brackets", hint)) return owner;
        var count = json.GetArrayLength();
        if (count == 0) reading.Refuse(JobCodes.EmptySequence, path, "the sequence is empty: there is nothing to climb", hint);
        var items = ImmutableArray.CreateBuilder<LayoutItem>();
        var turns = 0;
        var flightBefore = false;
        for (var i = 0; i < Math.Min(count, MostItems); i++)
        {
            var where = $"{path}[{i}]";
            var isTurn = ItemReading.IsTurn(json[i]) && !ItemReading.IsFlight(json[i]);
            if (isTurn && ++turns == 2)
                reading.Refuse(JobCodes.TwoTurns, where, "a second turn was read; this version sets out a straight flight or one quarter turn", "later versions set out more turns; for now keep one");
            if (flightBefore && ItemReading.IsFlight(json[i]))
                reading.Refuse(JobCodes.TwoFlights, where, "a flight follows a flight with no turn between", "join the two to one flight");
            flightBefore = ItemReading.IsFlight(json[i]);
            if (ItemReading.Read(reading, json[i], where) is { } item) items.Add(item);
        }
        if (count > MostItems) reading.Refuse(JobCodes.TooManySteps, path, $"{count} flights and turns were read; at most {MostItems} are taken", "this version sets out one quarter turn and two flights");
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
        json.WriteNumber("maxItems", 3);
        json.WriteStartObject("items");
        json.WriteStartArray("oneOf");
        ItemReading.WriteSchemas(json);
        json.WriteEndArray();
        json.WriteEndObject();
        // One turn at most.
        json.WriteStartObject("contains");
        json.WriteStartArray("required");
        json.WriteStringValue("turn");
        json.WriteEndArray();
        json.WriteEndObject();
        json.WriteNumber("minContains", 0);
        json.WriteNumber("maxContains", 1);
        json.WriteEndObject();
    }

    public override IEnumerable<FieldDescription> Describe(string path, Layout defaults) => ItemReading.Describe(path + "[]");
}
