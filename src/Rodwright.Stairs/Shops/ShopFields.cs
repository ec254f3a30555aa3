using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;

namespace Rodwright.Stairs.Shops;

/// <summary>Every field of a shop file, described once: reader, writer, schema and guide come from here.</summary>
public static class ShopFields
{
    /// <summary>What fixings and work can be counted by.</summary>
    public static ImmutableArray<string> Counted { get; } =
        ["stair", "step", "piece", "board", "cut", "glue-joint", "string", "newel", "housing", "mortice", "tenon", "nosing", "tread-wedge", "riser-wedge", "glue-block", "peg", "screw"];

    internal static Shop Blank { get; } = new() { Name = "" };

    internal static FileKind Kind { get; } = new("shop file", "shop", "a shop file starts with { \"rodwrightShop\": 1, \"name\": …", () => Descriptions);

    internal static ImmutableArray<Field<Shop>> All { get; } =
    [
        new FormField(),
        new TextField<Shop>("name", "name of the shop", 100, "on lists, board plans and costings", s => s.Name, (s, v) => s with { Name = v }, required: true),
        new TextField<Shop>("currency", "sign of the currency", 5, "printed before every price", s => s.Currency, (s, v) => s with { Currency = v }),
        new GroupField<Shop, ShopSaw>("saw", "saw", "what sawing takes", s => s.Saw, (s, v) => s with { Saw = v }, Saw),
        new GroupField<Shop, ShopAllowances>("allowances", "allowances", "what is left on for planing, jointing and cutting to length", s => s.Allowances, (s, v) => s with { Allowances = v }, Allowances),
        new GroupField<Shop, ShopRouter>("router", "routers", "what recesses are cut with", s => s.Router, (s, v) => s with { Router = v }, Router),
        new ListField<Shop, ShopBoard>("boards", "boards", "boards in braces: material, thickness, width, lengths and price", new(), Board, 500, s => s.Boards, (s, v) => s with { Boards = v }),
        new ListField<Shop, ShopSheet>("sheets", "sheets", "sheets in braces: material, thickness, length, width and price", new(), Sheet, 100, s => s.Sheets, (s, v) => s with { Sheets = v }),
        new ListField<Shop, ShopOffcut>("offcuts", "offcuts", "offcuts of earlier jobs in braces: id, material, thickness, width and length", new(), Offcut, 500, s => s.Offcuts, (s, v) => s with { Offcuts = v }),
        new ListField<Shop, ShopFixing>("fixings", "fixings", "fixings in braces: name, per and price", new(), Fixing, 100, s => s.Fixings, (s, v) => s with { Fixings = v }),
        new ListField<Shop, ShopOperation>("work", "operations", "operations in braces: name, per and minutes", new(), Operation, 100, s => s.Work, (s, v) => s with { Work = v }),
        new GroupField<Shop, ShopRates>("rates", "rates", "what prices are reckoned with", s => s.Rates, (s, v) => s with { Rates = v }, Rates),
    ];

    /// <summary>What there is to know about every field, in the order of the file.</summary>
    public static ImmutableArray<FieldDescription> Descriptions { get; } = [.. All.SelectMany(f => f.Describe(f.Name, Blank))];

    private static NumberRule Size => new(1, 20000, "mm");

    private static NumberRule Money => new(0, 1_000_000, "");

    private static ImmutableArray<Field<ShopSaw>> Saw =>
    [
        new NumberField<ShopSaw>("kerf", "kerf", new(0, 20, "mm"), "wood lost in one cut", s => s.Kerf, (s, v) => s with { Kerf = v }),
        new NumberField<ShopSaw>("endTrim", "end trim", new(0, 500, "mm"), "cut off each end of a board before it is used, the saw's cut included", s => s.EndTrim, (s, v) => s with { EndTrim = v }),
        new NumberField<ShopSaw>("edgeTrim", "edge trim", new(0, 50, "mm"), "taken off each edge of a board that is ripped into several", s => s.EdgeTrim, (s, v) => s with { EdgeTrim = v }),
        new NumberField<ShopSaw>("leastOffcut", "least offcut kept", new(0, 10000, "mm"), "what is left over and at least so long goes back to the rack", s => s.LeastOffcut, (s, v) => s with { LeastOffcut = v }),
    ];

    private static NumberRule CutterSize => new(1, 60, "mm");

    private static NumberRule BushSize => new(2, 120, "mm");

    private static ImmutableArray<Field<ShopRouter>> Router =>
    [
        new NumberField<ShopRouter>("cutter", "machine's cutter", CutterSize, "what it leaves in inside corners is in the machining files; no wider than the narrowest housing (common practice: 8 to 12)", r => r.Cutter, (r, v) => r with { Cutter = v }),
        new NumberField<ShopRouter>("handCutter", "hand router's cutter", CutterSize, "a straight one, for jigs (common practice: 12)", r => r.HandCutter, (r, v) => r with { HandCutter = v }),
        new NumberField<ShopRouter>("bush", "guide bush", BushSize, "outside, for jigs; wider than the hand router's cutter (common practice: 24 to 40)", r => r.Bush, (r, v) => r with { Bush = v }),
    ];

    private static ImmutableArray<Field<ShopAllowances>> Allowances =>
    [
        Allowance("planing", "planing, small sizes", "sawn over finished thickness or width up to planingLimit (common practice: ex 25 for 22, ex 32 for 28)", a => a.Planing, (a, v) => a with { Planing = v }),
        Allowance("planingOver", "planing, larger sizes", "the same above planingLimit (common practice: ex 75 for 70, ex 225 for 220)", a => a.PlaningOver, (a, v) => a with { PlaningOver = v }),
        Allowance("planingLimit", "limit of small sizes", "thickness or width up to which planing holds", a => a.PlaningLimit, (a, v) => a with { PlaningLimit = v }),
        Allowance("length", "length", "on a piece, both ends together (common practice: 12.5)", a => a.Length, (a, v) => a with { Length = v }),
        Allowance("stringEnd", "ends of strings", "on each end (common practice: 25 to 50)", a => a.StringEnd, (a, v) => a with { StringEnd = v }),
        Allowance("newelEnd", "ends of newels", "on each end (common practice: 25 to 50)", a => a.NewelEnd, (a, v) => a with { NewelEnd = v }),
        Allowance("glueEnd", "ends of glued strips", "on each end of a strip that is glued up", a => a.GlueEnd, (a, v) => a with { GlueEnd = v }),
        Allowance("glueBack", "back of tapered treads", "on the back of a glued tapered tread, cut after it is laid on the rod", a => a.GlueBack, (a, v) => a with { GlueBack = v }),
    ];

    private static NumberField<ShopAllowances> Allowance(string name, string label, string source, Func<ShopAllowances, double?> get, Func<ShopAllowances, double, ShopAllowances> set) =>
        new(name, label, new(0, 500, "mm"), source, get, set);

    private static ImmutableArray<Field<ShopBoard>> Board =>
    [
        new TextField<ShopBoard>("material", "timber", 60, "in the words of the job's practice.timber", b => b.Material, (b, v) => b with { Material = v }, required: true),
        new NumberField<ShopBoard>("thickness", "sawn thickness", Size, "as it is bought", b => b.Thickness, (b, v) => b with { Thickness = v }, required: true),
        new NumberField<ShopBoard>("width", "sawn width", Size, "as it is bought", b => b.Width, (b, v) => b with { Width = v }, required: true),
        new ReadingsField<ShopBoard>("lengths", "lengths", Size, 40, "one length, or several in brackets", b => b.Lengths, (b, v) => b with { Lengths = v }),
        new NumberField<ShopBoard>("pricePerMetre", "price of a metre", Money, "this or price", b => b.PricePerMetre, (b, v) => b with { PricePerMetre = v }),
        new NumberField<ShopBoard>("price", "price of each", Money, "this or pricePerMetre", b => b.Price, (b, v) => b with { Price = v }),
        new NumberField<ShopBoard>("quantity", "number there is", new(0, 10000, "", Whole: true), "of each length; left out where more can be had", b => b.Quantity, (b, v) => b with { Quantity = v }),
        new NoteField<ShopBoard>("grade", "grade", 60, "in the shop's words", b => b.Grade, (b, v) => b with { Grade = v }),
    ];

    private static ImmutableArray<Field<ShopSheet>> Sheet =>
    [
        new TextField<ShopSheet>("material", "material", 60, "in the words of the job's practice.riserMaterial", s => s.Material, (s, v) => s with { Material = v }, required: true),
        new NumberField<ShopSheet>("thickness", "thickness", Size, "as it is bought; sheets are not planed", s => s.Thickness, (s, v) => s with { Thickness = v }, required: true),
        new NumberField<ShopSheet>("length", "length", Size, "along the grain of its face", s => s.Length, (s, v) => s with { Length = v }, required: true),
        new NumberField<ShopSheet>("width", "width", Size, "across the grain", s => s.Width, (s, v) => s with { Width = v }, required: true),
        new NumberField<ShopSheet>("price", "price of a sheet", Money, "of each", s => s.Price, (s, v) => s with { Price = v }, required: true),
    ];

    private static ImmutableArray<Field<ShopOffcut>> Offcut =>
    [
        new TextField<ShopOffcut>("id", "what is written on it", 40, "each offcut has its own", o => o.Id, (o, v) => o with { Id = v }, required: true),
        new TextField<ShopOffcut>("material", "timber", 60, "in the words of the job's practice.timber", o => o.Material, (o, v) => o with { Material = v }, required: true),
        new NumberField<ShopOffcut>("thickness", "sawn thickness", Size, "as it lies on the rack", o => o.Thickness, (o, v) => o with { Thickness = v }, required: true),
        new NumberField<ShopOffcut>("width", "width", Size, "as it lies on the rack", o => o.Width, (o, v) => o with { Width = v }, required: true),
        new NumberField<ShopOffcut>("length", "length", Size, "as it lies on the rack", o => o.Length, (o, v) => o with { Length = v }, required: true),
    ];

    private static ImmutableArray<Field<ShopFixing>> Fixing =>
    [
        new TextField<ShopFixing>("name", "name", 60, "as on the costing", f => f.Name, (f, v) => f with { Name = v }, required: true),
        new ChoiceField<ShopFixing>("per", "what it is counted by", Counted, ShopCodes.Counted, "count", "one is reckoned for each of these", f => f.Per, (f, v) => f with { Per = v }, required: true),
        new NumberField<ShopFixing>("price", "price", Money, "for each", f => f.Price, (f, v) => f with { Price = v }, required: true),
    ];

    private static ImmutableArray<Field<ShopOperation>> Operation =>
    [
        new TextField<ShopOperation>("name", "name", 60, "as on the costing", o => o.Name, (o, v) => o with { Name = v }, required: true),
        new ChoiceField<ShopOperation>("per", "what it is counted by", Counted, ShopCodes.Counted, "count", "it is done once for each of these", o => o.Per, (o, v) => o with { Per = v }, required: true),
        new NumberField<ShopOperation>("minutes", "minutes", new(0, 10000, ""), "for each", o => o.Minutes, (o, v) => o with { Minutes = v }, required: true),
    ];

    private static ImmutableArray<Field<ShopRates>> Rates =>
    [
        new NumberField<ShopRates>("hour", "price of an hour", Money, "of work", r => r.Hour, (r, v) => r with { Hour = v }),
        new NumberField<ShopRates>("waste", "waste, in a hundred", new(0, 300, ""), "timber and sheets bought over what the board plan asks for, for knots and splits (common practice: softwood 5 to 10, square-edged hardwood 15 to 20)", r => r.Waste, (r, v) => r with { Waste = v }),
        new NumberField<ShopRates>("margin", "margin, in a hundred", new(0, 500, ""), "on top of all costs", r => r.Margin, (r, v) => r with { Margin = v }),
    ];

    /// <summary>The version of the file's form: always 1 here.</summary>
    private sealed class FormField() : Field<Shop>("rodwrightShop", "version of the shop file", "\"rodwrightShop\": 1 says that this is a shop file and how to read it", required: true)
    {
        public override Shop Read(JobReading reading, JsonElement json, string path, Shop owner)
        {
            const string hint = "write \"rodwrightShop\": 1";
            if (reading.IsKind(json, JsonValueKind.Number, path, JobCodes.NumberWanted, "the number 1", hint) && (!json.TryGetDouble(out var value) || value != 1))
                reading.Refuse(JobCodes.Version, path, $"a shop file of version {JsonWords.Shown(json.GetRawText())} was read; version 1 is known", hint + ", or use the release that wrote the file");
            return owner;
        }

        public override void Write(Utf8JsonWriter json, Shop owner) => json.WriteNumber(Name, 1);

        public override void WriteSchema(Utf8JsonWriter json, Shop defaults)
        {
            json.WriteStartObject();
            WriteWords(json);
            json.WriteNumber("const", 1);
            json.WriteEndObject();
        }

        public override IEnumerable<FieldDescription> Describe(string path, Shop defaults) => [new(path, Label, "", 1, 1, null, [], true, Source)];
    }
}
