using System.Globalization;
using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Regulations;
using Rodwright.Stairs.Regulations.Own;
using Rodwright.Stairs.Rules;
using Rodwright.Workshop.Edits;

namespace Rodwright.Workshop.Tables;

/// <summary>One clause of a table as somebody types it: lengths in millimetres, or with their foot and inch marks. What is no number is passed on as it is, so that the reader refuses it in its own words. Immutable.</summary>
public sealed record ClauseForm
{
    /// <summary>Id of the rule.</summary>
    public string Rule { get; init; } = "";

    /// <summary>Its number or name.</summary>
    public string Clause { get; init; } = "";

    /// <summary>Number of the clause it takes the place of; empty for none.</summary>
    public string Replaces { get; init; } = "";

    /// <summary>Least allowed.</summary>
    public string Least { get; init; } = "";

    /// <summary>Most allowed.</summary>
    public string Most { get; init; } = "";

    /// <summary>straight-going, clear-width, or empty.</summary>
    public string AtLeast { get; init; } = "";

    /// <summary>Most, in straight goings.</summary>
    public string StraightGoings { get; init; } = "";

    /// <summary>Pairs of rise and going, four numbers each with semicolons between: "155 220 245 260; 165 200 223 300".</summary>
    public string Pairs { get; init; } = "";

    /// <summary>How well the number is known.</summary>
    public string Evidence { get; init; } = "own";

    /// <summary>Where it comes from.</summary>
    public string Source { get; init; } = "";

    /// <summary>limit or advice.</summary>
    public string Weight { get; init; } = "limit";

    /// <summary>The form of a clause that takes the place of a published one: its limit to be changed, its source still to be written.</summary>
    /// <param name="clause">The published one.</param>
    /// <param name="document">The unit of its document, in which the limit stands in the form.</param>
    public static ClauseForm Replacing(Clause clause, Units document) => new()
    {
        Rule = clause.Rule.Id, Clause = clause.Number, Replaces = clause.Number, Least = Typed(clause.Limit.Least, UnitOf(clause.Rule, document)), Most = Typed(clause.Limit.Most, UnitOf(clause.Rule, document)),
        AtLeast = clause.Limit.Reference switch { LimitReference.StraightGoing => "straight-going", LimitReference.ClearWidth => "clear-width", _ => "" },
        StraightGoings = clause.Limit.Reference == LimitReference.StraightGoings ? Typed(clause.Limit.Times) : "",
        Pairs = string.Join("; ", clause.Limit.Boxes.Select(b => Pair(b.RiseLeast, b.RiseMost, b.GoingLeast, b.GoingMost))),
        Weight = clause.Weight == Stairs.Regulations.Weight.Advice ? "advice" : "limit",
    };

    /// <summary>The form of a clause that is kept.</summary>
    /// <param name="c">The clause.</param>
    /// <param name="document">The unit of the document its table is based on.</param>
    public static ClauseForm Of(OwnClause c, Units document) => new()
    {
        Rule = c.Rule, Clause = c.Clause, Replaces = c.Replaces, Least = Typed(c.Least, UnitOf(c.Measured, document)), Most = Typed(c.Most, UnitOf(c.Measured, document)), AtLeast = c.AtLeast, StraightGoings = Typed(c.StraightGoings),
        Pairs = string.Join("; ", c.Pairs.Select(p => Pair(p.RiseLeast, p.RiseMost, p.GoingLeast, p.GoingMost))), Evidence = c.Evidence, Source = c.Source, Weight = c.Weight,
    };

    /// <summary>Whether it is measured; what is not may say a limit all the same, and is reported as not checked.</summary>
    public bool IsMeasured => RuleCatalogue.Find(Rule) is not UnmeasuredRule;

    /// <summary>The unit of its limit; empty for a number of things.</summary>
    public string Unit => RuleCatalogue.Find(Rule)?.Unit switch { RuleUnit.Millimetres => "mm", RuleUnit.Degrees => "°", _ => "" };

    internal JsonObject Json()
    {
        var json = new JsonObject();
        Text(json, "rule", Rule);
        Text(json, "clause", Clause);
        Text(json, "replaces", Replaces);
        Number(json, "least", Least, Unit == "mm");
        Number(json, "most", Most, Unit == "mm");
        Text(json, "atLeast", AtLeast);
        Number(json, "straightGoings", StraightGoings);
        if (Pairs.Trim().Length > 0) json["pairs"] = PairsJson();
        Text(json, "evidence", Evidence);
        // A source left empty is refused as such, not as a field that is missing.
        json["source"] = Source.Trim();
        Text(json, "weight", Weight);
        return json;
    }

    internal static void Text(JsonObject json, string name, string text)
    {
        if (text.Trim().Length > 0) json[name] = text.Trim();
    }

    internal static void Number(JsonObject json, string name, string text, bool isLength = false)
    {
        var bare = text.Trim().TrimEnd('°').TrimEnd();
        if (bare.Length > 0) json[name] = (TypedValue.Number(bare) ?? (isLength ? Marked(bare) : null)) is { } number ? number : text.Trim();
    }

    /// <summary>A length with its foot or inch mark, mm; null for anything else: without a mark nobody knows which unit is meant.</summary>
    private static double? Marked(string text) => text.AsSpan().ContainsAny("'\"′″’”") && Units.Inches.TryRead(text, out var length) ? length : null;

    /// <summary>A number as it would be typed; of a document in inches a length it can say, with its mark.</summary>
    internal static string Typed(double? value, Units? document = null) => value is not { } number ? ""
        : document is { IsInches: true } && Units.Inches.Typed(number) is var inches && !inches.Contains('.', StringComparison.Ordinal) ? inches + "\"" : Geometry.Number.Exact(number);

    private static Units UnitOf(Rule? rule, Units document) => rule?.Unit == RuleUnit.Millimetres ? document : Units.Millimetres;

    private static string Pair(params double[] values) => string.Join(' ', values.Select(v => Geometry.Number.Exact(v)));

    private JsonNode PairsJson()
    {
        var pairs = new JsonArray();
        foreach (var part in Pairs.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var numbers = part.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => double.TryParse(w, NumberStyles.Float, CultureInfo.InvariantCulture, out var v) ? v : double.NaN).ToList();
            if (numbers.Count != 4 || numbers.Exists(double.IsNaN)) return JsonValue.Create(Pairs.Trim());
            pairs.Add(new JsonObject { ["riseLeast"] = numbers[0], ["riseMost"] = numbers[1], ["goingLeast"] = numbers[2], ["goingMost"] = numbers[3] });
        }
        return pairs;
    }
}
