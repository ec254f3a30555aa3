using System.Collections.Immutable;
using System.Text.Json;

namespace Rodwright.Stairs.Jobs.Fields;

/// <summary>Reads and writes one item of a sequence: a flight, tapered steps or a landing.</summary>
internal static class ItemReading
{
    public static bool IsTurn(JsonElement json) => json.ValueKind == JsonValueKind.Object && json.TryGetProperty("turn", out _);

    public static bool IsFlight(JsonElement json) => json.ValueKind == JsonValueKind.Object && json.TryGetProperty("flight", out _);

    /// <summary>The item, or null when it was refused.</summary>
    public static LayoutItem? Read(JobReading reading, JsonElement json, string path)
    {
        const string hint = "write { \"flight\": 7 } or { \"turn\": \"winders\", \"steps\": 3 } or { \"turn\": \"landing\" }";
        if (!reading.IsKind(json, JsonValueKind.Object, path, JobCodes.GroupWanted, "a flight or a turn in braces", hint)) return null;
        switch (IsFlight(json), IsTurn(json))
        {
            case (false, false):
                reading.Refuse(JobCodes.NeitherFlightNorTurn, path, "an item was read that has neither \"flight\" nor \"turn\"", hint);
                return null;
            case (true, true):
                reading.Refuse(JobCodes.BothFlightAndTurn, path, "an item was read that has \"flight\" and \"turn\" at once", "make it two items, in climbing order");
                return null;
            case (true, false):
                return ReadOnly(reading, json, path, new Flight(0), ItemFields.Flight, JobCodes.FlightWith, "a flight", "a flight has only its number of goings; put this in the turn");
        }
        // A kind that is not known is read as tapered steps, so that what else is wrong with them is said too.
        var named = json.GetProperty("turn") is { ValueKind: JsonValueKind.String } text && ItemFields.Kinds.Contains(text.GetString()!) ? text.GetString()! : "winders";
        var fields = ItemFields.Of(named);
        return named.EndsWith("landing", StringComparison.Ordinal)
            ? ReadOnly(reading, json, path, ItemFields.Blank(named), fields, JobCodes.LandingWith, "a landing", "a landing is one step and is not tapered; take it out, or make the turn winders")
            : named == "winders" ? ReadOnly(reading, json, path, ItemFields.Blank(named), fields, JobCodes.WellOfQuarter, "a quarter turn", "leave it out, or make the turn half-winders")
            : Group.Read(reading, json, path, ItemFields.Blank(named), fields);
    }

    public static void Write(Utf8JsonWriter json, LayoutItem item)
    {
        json.WriteStartObject();
        if (item is Flight flight) foreach (var field in ItemFields.Flight) field.Write(json, flight);
        if (item is Turn turn) foreach (var field in ItemFields.Of(ItemFields.Word(turn))) field.Write(json, turn);
        json.WriteEndObject();
    }

    public static void WriteSchemas(Utf8JsonWriter json)
    {
        json.WriteStartObject();
        json.WriteString("title", "flight");
        Group.WriteSchema(json, new Flight(0), ItemFields.Flight);
        json.WriteEndObject();
        foreach (var (kind, title) in ItemFields.Kinds.Zip(["tapered steps", "landing", "tapered steps of a half turn", "half landing"])) WriteTurn(json, title, kind);
    }

    public static IEnumerable<FieldDescription> Describe(string path) =>
    [
        .. ItemFields.Flight.SelectMany(f => f.Describe(Group.Join(path, f.Name), new Flight(0))),
        .. ItemFields.All.SelectMany(f => f.Describe(Group.Join(path, f.Name), ItemFields.Blank("winders"))),
    ];

    private static void WriteTurn(Utf8JsonWriter json, string title, string kind)
    {
        json.WriteStartObject();
        json.WriteString("title", title);
        Group.WriteSchema(json, ItemFields.Blank(kind), ItemFields.Of(kind));
        // Which kind of turn this shape is for.
        json.WriteStartArray("allOf");
        json.WriteStartObject();
        json.WriteStartObject("properties");
        json.WriteStartObject("turn");
        json.WriteString("const", kind);
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndObject();
        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>Reads an item after refusing the fields that belong to the other kinds of item, so that the message can say so.</summary>
    private static T ReadOnly<T>(
        JobReading reading, JsonElement json, string path, T blank, ImmutableArray<Field<T>> fields, string code, string item, string hint)
        where T : class
    {
        var foreign = ItemFields.All.Select(f => f.Name).Except(fields.Select(f => f.Name)).ToHashSet();
        foreach (var name in foreign)
        {
            if (json.TryGetProperty(name, out _))
                reading.Refuse(code, Group.Join(path, name), $"{item} was read with \"{name}\", which only {(item == "a landing" ? "tapered steps have" : item == "a flight" ? "a turn has" : "a half turn has")}", hint);
        }
        return Group.Read(reading, json, path, blank, fields, foreign);
    }
}
