namespace Rodwright.Stairs.Tests.Regulations;

/// <summary>A regulation file in order, and one wrong thing each: what it is, the text, and the finding it must get.</summary>
internal static class BadTables
{
    public const string Good = """
        { "rodwrightRegulation": 1, "id": "own-heron-mill", "title": "Heron Mill, our stairs", "basedOn": "england-2013-private", "standing": "Agreed in the shop, 2026.",
          "measures": { "middleBelow": 1000, "inset": 270, "bothSides": true, "going": "chord", "narrow": "along-faces", "taperedAtLeastStraight": true },
          "clauses": [
            { "rule": "going", "clause": "shop 1", "replaces": "1.3, Table 1.1", "least": 235, "most": 290, "source": "what our customers like to walk" },
            { "rule": "pitch", "clause": "shop 2", "most": 38, "evidence": "own", "source": "a shop rule", "weight": "advice" },
            { "rule": "narrow-along-faces", "clause": "shop 3", "least": 75, "source": "room for a heel", "weight": "limit" },
            { "rule": "tapered-going", "clause": "shop 4", "atLeast": "straight-going", "source": "as the straight ones" },
            { "rule": "outer-going", "clause": "shop 5", "pairs": [ { "riseLeast": 150, "riseMost": 220, "goingLeast": 220, "goingMost": 320 } ], "source": "our boxes" },
            { "rule": "taper-reach", "clause": "shop 6", "straightGoings": 3, "source": "our way of dancing" },
            { "rule": "risers-per-flight", "clause": "shop 7", "most": 16, "source": "a rest" },
            { "rule": "headroom", "clause": "shop 8", "least": 2050, "source": "tall customers" } ] }
        """;

    private const string Clause1 = "\"rule\": \"going\", \"clause\": \"shop 1\"";

    /// <summary>Problems a schema can see too.</summary>
    public static IReadOnlyList<BadTable> Fields { get; } =
    [
        new("a list instead of a table", "[]", "RW1005", ""),
        Spoilt("an unknown field", "\"standing\"", "\"remark\"", "RW1007", "remark"),
        Spoilt("an unknown field in a clause", "\"most\": 290", "\"most\": 290, \"unit\": \"mm\"", "RW1007", "clauses[0].unit"),
        Spoilt("an unknown field in the measures", "\"inset\": 270", "\"inset\": 270, \"line\": 1", "RW1007", "measures.line"),
        Spoilt("no version", "\"rodwrightRegulation\": 1, ", "", "RW1008", "rodwrightRegulation"),
        Spoilt("no id", "\"id\": \"own-heron-mill\", ", "", "RW1008", "id"),
        Spoilt("no title", "\"title\": \"Heron Mill, our stairs\", ", "", "RW1008", "title"),
        Spoilt("a clause without a rule", "\"rule\": \"pitch\", ", "", "RW1008", "clauses[1].rule"),
        Spoilt("a clause without a number", "\"clause\": \"shop 2\", ", "", "RW1008", "clauses[1].clause"),
        Spoilt("a clause without a source", ", \"source\": \"what our customers like to walk\"", "", "RW1008", "clauses[0].source"),
        Spoilt("a word for a limit", "\"least\": 235", "\"least\": \"wide\"", "RW1009", "clauses[0].least"),
        Spoilt("a number as title", "\"Heron Mill, our stairs\"", "7", "RW1010", "title"),
        Spoilt("a word where yes or no belongs", "\"bothSides\": true", "\"bothSides\": \"yes\"", "RW1011", "measures.bothSides"),
        Spoilt("a number as a clause", "{ " + Clause1 + ", \"replaces\": \"1.3, Table 1.1\", \"least\": 235, \"most\": 290, \"source\": \"what our customers like to walk\" }", "7", "RW1012", "clauses[0]"),
        Spoilt("an object as pairs", "[ { \"riseLeast\": 150, \"riseMost\": 220, \"goingLeast\": 220, \"goingMost\": 320 } ]", "{}", "RW1013", "clauses[4].pairs"),
        Spoilt("null as a limit", "\"most\": 290", "\"most\": null", "RW1014", "clauses[0].most"),
        Spoilt("a limit too large for a number", "\"most\": 290", "\"most\": 1e999", "RW1015", "clauses[0].most"),
        Spoilt("a limit in quotation marks", "\"most\": 290", "\"most\": \"290\"", "RW1016", "clauses[0].most"),
        Spoilt("a negative limit", "\"least\": 235", "\"least\": -235", "RW1017", "clauses[0].least"),
        Spoilt("a limit larger than any house", "\"most\": 290", "\"most\": 2900000", "RW1021", "clauses[0].most"),
        Spoilt("a blank source", "\"a shop rule\"", "\" \"", "RW1023", "clauses[1].source"),
        Spoilt("a title too long", "\"Heron Mill, our stairs\"", "\"" + new string('x', 101) + "\"", "RW1024", "title"),
        Spoilt("a title of two lines", "\"Heron Mill, our stairs\"", "\"Heron\\nMill\"", "RW1025", "title"),
        Spoilt("another version", "\"rodwrightRegulation\": 1", "\"rodwrightRegulation\": 2", "RW1026", "rodwrightRegulation"),
        Spoilt("an id that poses as a standard", "\"own-heron-mill\"", "\"england-2014-private\"", "RW1201", "id"),
        Spoilt("an id with capitals", "\"own-heron-mill\"", "\"own-Heron\"", "RW1201", "id"),
        Spoilt("an id that is a path", "\"own-heron-mill\"", "\"own-../mill\"", "RW1201", "id"),
        Spoilt("a table to be based on that is not known", "\"england-2013-private\"", "\"england-2031-private\"", "RW1202", "basedOn"),
        Spoilt("an own table to be based on", "\"england-2013-private\"", "\"own-other\"", "RW1202", "basedOn"),
        Spoilt("a rule that is not known", "\"rule\": \"pitch\"", "\"rule\": \"steepness\"", "RW1203", "clauses[1].rule"),
        Spoilt("an empty list of pairs", "[ { \"riseLeast\": 150, \"riseMost\": 220, \"goingLeast\": 220, \"goingMost\": 320 } ]", "[]", "RW1215", "clauses[4].pairs"),
        Spoilt("a pair without its greatest going", ", \"goingMost\": 320", "", "RW1008", "clauses[4].pairs[0].goingMost"),
        Spoilt("a going that is neither chord nor arc", "\"going\": \"chord\"", "\"going\": \"string\"", "RW1219", "measures.going"),
        Spoilt("a narrow end that is not known", "\"narrow\": \"along-faces\"", "\"narrow\": \"toe\"", "RW1220", "measures.narrow"),
        Spoilt("a measure to go by that is not known", "\"straight-going\"", "\"the-cat\"", "RW1221", "clauses[3].atLeast"),
        Spoilt("a mark of evidence that is not known", "\"evidence\": \"own\"", "\"evidence\": \"hearsay\"", "RW1222", "clauses[1].evidence"),
        Spoilt("a weight that is not known", "\"weight\": \"advice\"", "\"weight\": \"law\"", "RW1223", "clauses[1].weight"),
        Spoilt("more pairs than any document has", "[ { \"riseLeast\": 150, \"riseMost\": 220, \"goingLeast\": 220, \"goingMost\": 320 } ]",
            "[" + string.Join(",", Enumerable.Repeat("{ \"riseLeast\": 150, \"riseMost\": 220, \"goingLeast\": 220, \"goingMost\": 320 }", 21)) + "]", "RW1226", "clauses[4].pairs"),
        new("more clauses than any table has", "{ \"rodwrightRegulation\": 1, \"id\": \"own-x\", \"title\": \"x\", \"basedOn\": \"england-2013-private\", \"clauses\": ["
            + string.Join(",", Enumerable.Range(0, 201).Select(i => $"{{ \"rule\": \"rise\", \"clause\": \"{i}\", \"most\": 200, \"source\": \"s\" }}")) + "] }", "RW1205", "clauses"),
    ];

    /// <summary>Problems only the reader sees.</summary>
    public static IReadOnlyList<BadTable> Contradictions { get; } =
    [
        new("a table with nothing in it", """{ "rodwrightRegulation": 1, "id": "own-x", "title": "x", "measures": { "middleBelow": 0, "inset": 300, "going": "arc", "narrow": "straight", "taperedAtLeastStraight": false } }""", "RW1204", "clauses"),
        new("a table by itself that does not say where it measures",
            """{ "rodwrightRegulation": 1, "id": "own-x", "title": "x", "measures": { "middleBelow": 0, "going": "arc", "narrow": "straight", "taperedAtLeastStraight": false }, "clauses": [ { "rule": "rise", "clause": "1", "most": 200, "source": "s" } ] }""",
            "RW1008", "measures.inset"),
        Spoilt("a clause that says no limit", ", \"most\": 38", "", "RW1206", "clauses[1]"),
        Spoilt("a limit said in two ways", "\"atLeast\": \"straight-going\"", "\"atLeast\": \"straight-going\", \"least\": 220", "RW1207", "clauses[3]"),
        Spoilt("a least above the most", "\"least\": 235", "\"least\": 335", "RW1208", "clauses[0].least"),
        Spoilt("a clause to be replaced that is not there", "\"1.3, Table 1.1\"", "\"9.9\"", "RW1209", "clauses[0].replaces"),
        Spoilt("a clause to be replaced of another rule", "\"1.3, Table 1.1\"", "\"Table 1.1 note 1\"", "RW1209", "clauses[0].replaces"),
        Spoilt("a clause to be replaced in a table by itself", "\"basedOn\": \"england-2013-private\", ", "", "RW1210", "clauses[0].replaces"),
        Spoilt("two clauses of one number for one rule", "\"rule\": \"pitch\", \"clause\": \"shop 2\", \"most\": 38", "\"rule\": \"going\", \"clause\": \"shop 1\", \"most\": 300", "RW1211", "clauses[1].clause"),
        Spoilt("a number from memory as a limit", "\"source\": \"room for a heel\"", "\"evidence\": \"memory\", \"source\": \"room for a heel\"", "RW1212", "clauses[2].weight"),
        Spoilt("pairs for a rise", "\"rule\": \"outer-going\"", "\"rule\": \"rise\"", "RW1213", "clauses[4].pairs"),
        Spoilt("a pair upside down", "\"riseLeast\": 150, \"riseMost\": 220", "\"riseLeast\": 220, \"riseMost\": 150", "RW1214", "clauses[4].pairs[0]"),
        Spoilt("an angle to be measured against a length", "\"rule\": \"tapered-going\"", "\"rule\": \"tapered-pitch\"", "RW1216", "clauses[3].atLeast"),
        Spoilt("half a riser", "\"most\": 16", "\"most\": 16.5", "RW1217", "clauses[6].most"),
        Spoilt("a pitch beyond the plumb", "\"most\": 38", "\"most\": 95", "RW1218", "clauses[1].most"),
        Spoilt("a measuring line on the inner side", "\"inset\": 270", "\"inset\": 0", "RW1224", "measures.inset"),
        Spoilt("a measuring line outside the narrowest stair it is for", "\"middleBelow\": 1000", "\"middleBelow\": 200", "RW1224", "measures.inset"),
    ];

    /// <summary>Problems with the text itself.</summary>
    public static IReadOnlyList<BadTable> Texts { get; } =
    [
        new("nothing at all", "", "RW1002", ""),
        new("not JSON", "{ id: 1 }", "RW1001", ""),
        new("a film", new string('x', 200_001), "RW1003", ""),
        new("brackets without end", string.Concat(Enumerable.Repeat("[", 40)) + string.Concat(Enumerable.Repeat("]", 40)), "RW1004", ""),
        Spoilt("a field twice", "\"id\": \"own-heron-mill\"", "\"id\": \"own-heron-mill\", \"id\": \"own-heron-mill\"", "RW1006", "id"),
    ];

    public static IEnumerable<BadTable> All => [.. Fields, .. Contradictions, .. Texts];

    private static BadTable Spoilt(string what, string good, string bad, string code, string where)
    {
        if (!Good.Contains(good, StringComparison.Ordinal)) throw new ArgumentException($"{what}: {good} is not there");
        return new(what, Good.Replace(good, bad), code, where);
    }
}

/// <summary>One wrong table.</summary>
internal sealed record BadTable(string What, string Text, string Code, string Where);
