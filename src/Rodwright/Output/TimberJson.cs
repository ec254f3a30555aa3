using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Rodwright.Joinery;
using Rodwright.Joinery.Timber;
using Rodwright.Rod.Timber;

namespace Rodwright.Output;

/// <summary>Cutting list, board plan and costing as JSON: lengths in millimetres, prices in the shop's currency.</summary>
internal static class TimberJson
{
    public static string Write(Stair stair, BoardPlan plan) => Text(json =>
    {
        json.WriteString("title", stair.Job.Title);
        json.WriteString("shop", plan.List.Shop.Name);
        Pieces(json, plan.List);
        json.WriteStartObject("counts");
        foreach (var (what, n) in plan.List.Counts) json.WriteNumber(what, n);
        json.WriteEndObject();
        Boards(json, plan);
        json.WriteNumber("boughtLength", plan.BoughtLength);
        json.WriteNumber("bound", plan.LengthBound);
        json.WriteNumber("cost", plan.Cost);
        // No plan that rips boards along their whole length costs less.
        json.WriteNumber("costBound", plan.Bound);
        json.WriteBoolean("proven", plan.IsProven);
        json.WriteStartArray("sections");
        foreach (var section in plan.Sections)
        {
            json.WriteStartObject();
            json.WriteString("material", section.Material);
            json.WriteNumber("thickness", section.Thickness);
            json.WriteBoolean("sheet", section.IsSheet);
            json.WriteNumber("boughtLength", section.BoughtLength);
            json.WriteNumber("bound", section.LengthBound);
            json.WriteNumber("cost", section.Cost);
            json.WriteNumber("costBound", section.Bound);
            json.WriteBoolean("proven", section.IsProven);
            json.WriteString("claim", section.Claim);
            json.WriteStartArray("uncut");
            foreach (var wood in section.Uncut) json.WriteStringValue(wood.Id);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("offcuts");
        foreach (var offcut in plan.Offcuts)
        {
            json.WriteStartObject();
            json.WriteString("id", offcut.Id);
            json.WriteString("material", offcut.Material);
            json.WriteNumber("thickness", offcut.Thickness);
            json.WriteNumber("width", offcut.Width);
            json.WriteNumber("length", offcut.Length);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    public static string WriteCosting(BoardPlan plan) => Text(json =>
    {
        var costing = Costing.Of(plan);
        json.WriteString("shop", plan.List.Shop.Name);
        json.WriteString("currency", plan.List.Shop.Currency);
        json.WriteStartArray("lines");
        foreach (var line in costing.Lines)
        {
            json.WriteStartObject();
            json.WriteString("group", line.Group);
            json.WriteString("what", line.What);
            json.WriteString("formula", line.Formula);
            json.WriteNumber("amount", line.Amount);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteNumber("wood", costing.Wood);
        json.WriteNumber("fixings", costing.Fixings);
        json.WriteNumber("work", costing.Work);
        json.WriteNumber("minutes", costing.Minutes);
        json.WriteNumber("costs", costing.Costs);
        json.WriteNumber("price", costing.Price);
    });

    private static void Pieces(Utf8JsonWriter json, CuttingList list)
    {
        json.WriteStartArray("pieces");
        foreach (var group in ListedGroup.Of(list))
        {
            var (part, first) = (group.First.Part, group.First);
            json.WriteStartObject();
            json.WriteString("piece", group.Name);
            json.WriteString("mark", group.Marks);
            json.WriteNumber("quantity", group.Pieces.Count);
            json.WriteStartArray("parts");
            foreach (var piece in group.Pieces) json.WriteStringValue(piece.Part.Id);
            json.WriteEndArray();
            json.WriteString("kind", JsonNamingPolicy.CamelCase.ConvertName(part.Kind.ToString()));
            json.WriteString("material", part.Material);
            json.WriteString("from", first.Stock.ToString().ToLowerInvariant());
            Size(json, "finished", part.Blank.Length, part.Blank.Width, part.Blank.Thickness);
            json.WriteString("grain", first.Grain);
            if (first.Remark.Length > 0) json.WriteString("remark", first.Remark);
            json.WriteStartArray("wood");
            foreach (var (wood, count) in group.Strips)
            {
                json.WriteStartObject();
                json.WriteString("mark", wood.Id);
                json.WriteNumber("quantity", count);
                Size(json, "finished", wood.Length, wood.Width, wood.Thickness);
                Size(json, "sawn", wood.SawnLength, wood.SawnWidth, wood.SawnThickness);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Boards(Utf8JsonWriter json, BoardPlan plan)
    {
        json.WriteStartArray("boards");
        foreach (var board in plan.Boards)
        {
            json.WriteStartObject();
            json.WriteNumber("number", board.Number);
            json.WriteString("stock", TimberTables.StockName(plan.List.Kit.Plan.Units, board));
            json.WriteString("material", board.Material);
            json.WriteNumber("length", board.Length);
            json.WriteNumber("width", board.Width);
            json.WriteNumber("thickness", board.Thickness);
            json.WriteBoolean("bought", board.IsBought);
            json.WriteNumber("price", board.Price);
            json.WriteStartArray("cuts");
            for (var i = 0; i < board.Strips.Length; i++)
            {
                foreach (var cut in board.Strips[i].Cuts)
                {
                    json.WriteStartObject();
                    json.WriteString("mark", cut.Wood.Id);
                    json.WriteString("part", cut.Wood.Part);
                    json.WriteNumber("length", cut.Wood.SawnLength);
                    json.WriteNumber("width", cut.Wood.SawnWidth);
                    json.WriteNumber("strip", i + 1);
                    json.WriteNumber("from", cut.From);
                    json.WriteNumber("to", cut.To);
                    if (!cut.Nested.IsEmpty)
                    {
                        json.WriteStartArray("outline");
                        foreach (var p in cut.Nested)
                        {
                            json.WriteStartArray();
                            json.WriteNumberValue(Math.Round(cut.From + p.X, 3));
                            json.WriteNumberValue(Math.Round(p.Y, 3));
                            json.WriteEndArray();
                        }
                        json.WriteEndArray();
                    }
                    json.WriteEndObject();
                }
            }
            json.WriteEndArray();
            json.WriteStartArray("strips");
            foreach (var strip in board.Strips)
            {
                json.WriteStartObject();
                json.WriteNumber("from", strip.From);
                json.WriteNumber("width", strip.Width);
                json.WriteNumber("left", strip.Left);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            json.WriteNumber("offcut", board.Strips.Max(s => s.Left));
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void Size(Utf8JsonWriter json, string name, double length, double width, double thickness)
    {
        json.WriteStartObject(name);
        json.WriteNumber("length", length);
        json.WriteNumber("width", width);
        json.WriteNumber("thickness", thickness);
        json.WriteEndObject();
    }

    private static string Text(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }
        return Encoding.UTF8.GetString(stream.ToArray());
    }
}
