using System.Collections.Immutable;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Findings;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Shops;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Shops;

/// <summary>A shop as somebody types it, field by field as its file describes them; judged by the shop file's own reader, so that file and page refuse alike. Immutable.</summary>
public sealed record ShopForm
{
    private const string Item = "[].";
    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What is typed into single fields, by their paths.</summary>
    public ImmutableSortedDictionary<string, string> Texts { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>The rows of each list, by its name.</summary>
    public ImmutableSortedDictionary<string, ImmutableArray<ShopFormRow>> Rows { get; init; } = ImmutableSortedDictionary<string, ImmutableArray<ShopFormRow>>.Empty;

    /// <summary>The fields that stand alone, in the order of the file.</summary>
    public static ImmutableArray<FieldDescription> Single { get; } = [.. ShopFields.Descriptions.Where(d => !d.Path.Contains(Item, StringComparison.Ordinal) && d.Path != "rodwrightShop")];

    /// <summary>The lists by name, with the fields of their rows.</summary>
    public static ImmutableArray<(string Name, ImmutableArray<FieldDescription> Columns)> Lists { get; } =
        [.. ShopFields.Descriptions.Where(d => d.Path.Contains(Item, StringComparison.Ordinal)).GroupBy(d => d.Path[..d.Path.IndexOf(Item, StringComparison.Ordinal)]).Select(g => (g.Key, g.ToImmutableArray()))];

    /// <summary>The name of a column in its row: price of boards[].price.</summary>
    public static string NameOf(FieldDescription column)
    {
        ArgumentNullException.ThrowIfNull(column);
        return column.Path[(column.Path.IndexOf(Item, StringComparison.Ordinal) + Item.Length)..];
    }

    /// <summary>The form of a shop.</summary>
    public static ShopForm Of(Shop shop)
    {
        var json = JsonNode.Parse(ShopFile.Write(shop))!.AsObject();
        var texts = Single.Select(d => (d.Path, Text: Text(d.Path.Split('.').Aggregate((JsonNode?)json, (node, name) => node?[name])))).Where(t => t.Text.Length > 0);
        var key = 0;
        var rows = Lists.Select(l => (l.Name, Rows: (json[l.Name]?.AsArray() ?? []).Select(r => new ShopFormRow(key++,
            l.Columns.Select(c => (Name: NameOf(c), Text: Text(r?[NameOf(c)]))).Where(c => c.Text.Length > 0).ToImmutableSortedDictionary(c => c.Name, c => c.Text, StringComparer.Ordinal))).ToImmutableArray()));
        return new()
        {
            Texts = texts.ToImmutableSortedDictionary(t => t.Path, t => t.Text, StringComparer.Ordinal), Rows = rows.ToImmutableSortedDictionary(l => l.Name, l => l.Rows, StringComparer.Ordinal),
        };
    }

    /// <summary>With another text in a single field.</summary>
    public ShopForm With(string path, string text) => this with { Texts = Texts.SetItem(path, text) };

    /// <summary>With another text in a row's column.</summary>
    public ShopForm With(string list, int at, string column, string text) =>
        this with { Rows = Rows.SetItem(list, Rows[list].SetItem(at, Rows[list][at] with { Cells = Rows[list][at].Cells.SetItem(column, text) })) };

    /// <summary>With one row more, in the words of the row before it but for what each row has of its own.</summary>
    public ShopForm Adding(string list)
    {
        var rows = Rows[list];
        var cells = rows.IsEmpty ? ImmutableSortedDictionary<string, string>.Empty : rows[^1].Cells.Remove("id").Remove("name");
        return this with { Rows = Rows.SetItem(list, rows.Add(new(Rows.Values.SelectMany(r => r).Select(r => r.Key).DefaultIfEmpty(-1).Max() + 1, cells))) };
    }

    /// <summary>Without a row.</summary>
    public ShopForm Without(string list, int at) => this with { Rows = Rows.SetItem(list, Rows[list].RemoveAt(at)) };

    /// <summary>The shop, or everything that is wrong with what was typed: at "saw.kerf", at "boards[2].price".</summary>
    public Outcome<Shop> Read()
    {
        var json = new JsonObject { ["rodwrightShop"] = 1 };
        foreach (var field in Single)
        {
            if (Texts.GetValueOrDefault(field.Path, "").Trim() is not { Length: > 0 } text) continue;
            var (owner, names) = (json, field.Path.Split('.'));
            foreach (var name in names[..^1]) owner = (JsonObject)(owner[name] ??= new JsonObject());
            owner[names[^1]] = Value(field, text);
        }
        foreach (var (list, columns) in Lists)
            if (Rows.TryGetValue(list, out var rows) && !rows.IsEmpty) json[list] = new JsonArray([.. rows.Select(r => (JsonNode)RowOf(columns, r))]);
        return ShopFile.Read(json.ToJsonString(Plain));
    }

    private static JsonObject RowOf(ImmutableArray<FieldDescription> columns, ShopFormRow row)
    {
        var json = new JsonObject();
        foreach (var column in columns)
            if (row.Cells.GetValueOrDefault(NameOf(column), "").Trim() is { Length: > 0 } text) json[NameOf(column)] = Value(column, text);
        return json;
    }

    /// <summary>Lengths in a shop file are millimetres whatever the jobs' units.</summary>
    private static JsonNode? Value(FieldDescription field, string text) => JsonNode.Parse(TypedValue.Json(field, text, Units.Millimetres));

    private static string Text(JsonNode? node) => node switch
    {
        null => "",
        JsonArray many => string.Join(", ", many.Select(Text)),
        _ when node.GetValueKind() == JsonValueKind.String => node.GetValue<string>(),
        _ => node.ToJsonString(),
    };
}

/// <summary>A row of a list as somebody types it.</summary>
/// <param name="Key">Tells it from the others of the form, wherever it stands.</param>
/// <param name="Cells">What is typed, by the column's name.</param>
public sealed record ShopFormRow(int Key, ImmutableSortedDictionary<string, string> Cells);
