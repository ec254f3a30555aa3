using System.Collections.Immutable;
using System.Text.Json;
using Rodwright.Stairs.Jobs;
using Rodwright.Stairs.Jobs.Fields;
using Rodwright.Stairs.Rules;

namespace Rodwright.Stairs.Regulations.Own;

/// <summary>Every field of a regulation file, described once: reader, writer, schema and guide come from here.</summary>
public static class OwnFields
{
    internal static readonly ImmutableArray<string> Goings = ["chord", "arc"];
    internal static readonly ImmutableArray<string> Narrows = ["along-faces", "straight", "tread-width"];
    internal static readonly ImmutableArray<string> References = ["straight-going", "clear-width"];
    internal static readonly ImmutableArray<string> Marks = ["own", "text-seen", "secondary", "memory"];
    internal static readonly ImmutableArray<string> Weights = ["limit", "advice"];

    /// <summary>Longest title and source text.</summary>
    public const int LongestTitle = 100;

    /// <summary>Longest source text of a clause.</summary>
    public const int LongestSource = 240;

    internal static OwnRegulation Blank { get; } = new() { Id = "", Title = "" };

    /// <summary>What the text is read as.</summary>
    internal static FileKind Kind { get; } = new("regulation file", "regulation", "a regulation file starts with { \"rodwrightRegulation\": 1, \"id\": \"own-…", () => Descriptions);

    internal static ImmutableArray<Field<OwnRegulation>> All { get; } =
    [
        new FormField(),
        new IdField(),
        new TextField<OwnRegulation>("title", "title of the table", LongestTitle, "on every report and sheet, marked as the shop's own", t => t.Title, (t, v) => t with { Title = v }, required: true),
        new ChoiceField<OwnRegulation>("basedOn", "table it is based on", [.. RegulationCatalogue.All.Select(r => r.Id)], OwnCodes.BasedOn, "published table",
            "a published table whose clauses hold unless a clause here replaces them; left out, the clauses here are all", t => t.BasedOn, (t, v) => t with { BasedOn = v }),
        new NoteField<OwnRegulation>("standing", "how binding it is", LongestSource, "in the shop's words", t => t.Standing, (t, v) => t with { Standing = v }),
        new GroupField<OwnRegulation, OwnMeasures>("measures", "how it is measured", "what is left out is as in the table it is based on; without one every field but bothSides must be given",
            t => t.Measures, (t, v) => t with { Measures = v }, Measures),
        new ListField<OwnRegulation, OwnClause>("clauses", "clauses", "clauses in braces: rule, clause, its limit and source", new(), Clause, 200,
            t => t.Clauses, (t, v) => t with { Clauses = v }, OwnCodes.TooManyClauses),
    ];

    /// <summary>What there is to know about every field, in the order of the file.</summary>
    public static ImmutableArray<FieldDescription> Descriptions { get; } = [.. All.SelectMany(f => f.Describe(f.Name, Blank))];

    private static ImmutableArray<Field<OwnMeasures>> Measures =>
    [
        new NumberField<OwnMeasures>("middleBelow", "clear width below which goings are measured in the middle", new(0, 100000, "mm"), "0 for never", m => m.MiddleBelow, (m, v) => m with { MiddleBelow = v }),
        new NumberField<OwnMeasures>("inset", "distance of the measuring line from the inner side", new(0, 5000, "mm"), "where it is not the middle", m => m.Inset, (m, v) => m with { Inset = v }),
        new PerhapsField<OwnMeasures>("bothSides", "the same distance from the outer side too", "true measures wide stairs on two lines", m => m.BothSides, (m, v) => m with { BothSides = v }),
        new ChoiceField<OwnMeasures>("going", "going of a tapered step", Goings, OwnCodes.Going, "measure", "chord: straight across; arc: along the walking line", m => m.Going, (m, v) => m with { Going = v }),
        new ChoiceField<OwnMeasures>("narrow", "narrow end", Narrows, OwnCodes.Narrow, "measure", "along-faces: along newel and string; straight: straight across; tread-width: along the faces, with the nosing",
            m => m.Narrow, (m, v) => m with { Narrow = v }),
        new PerhapsField<OwnMeasures>("taperedAtLeastStraight", "tapered goings no less than straight ones", "what a turn is set out to keep", m => m.TaperedAtLeastStraight, (m, v) => m with { TaperedAtLeastStraight = v }),
    ];

    private static ImmutableArray<Field<OwnClause>> Clause =>
    [
        new ChoiceField<OwnClause>("rule", "rule", [.. RuleCatalogue.Measured.Concat(RuleCatalogue.Unmeasured).Select(r => r.Id)], OwnCodes.Rule, "rule",
            "what is measured; rodwright regulation lists the rules", c => c.Rule, (c, v) => c with { Rule = v }, required: true),
        new TextField<OwnClause>("clause", "number or name of the clause", 60, "as the shop's book has it", c => c.Clause, (c, v) => c with { Clause = v }, required: true),
        new NoteField<OwnClause>("replaces", "clause replaced", 60, "number of the clause, of the table this one is based on, whose place it takes for the same rule; left out, it stands beside them",
            c => c.Replaces, (c, v) => c with { Replaces = v }),
        new NumberField<OwnClause>("least", "least allowed", new(0, 100000, ""), "in the rule's unit: mm, degrees or a number", c => c.Least, (c, v) => c with { Least = v }),
        new NumberField<OwnClause>("most", "most allowed", new(0, 100000, ""), "in the rule's unit: mm, degrees or a number", c => c.Most, (c, v) => c with { Most = v }),
        new ChoiceField<OwnClause>("atLeast", "least by the stair itself", References, OwnCodes.AtLeast, "measure to go by", "in place of a number", c => c.AtLeast, (c, v) => c with { AtLeast = v }),
        new NumberField<OwnClause>("straightGoings", "most, in straight goings", new(0.1, 100, ""), "in place of a number", c => c.StraightGoings, (c, v) => c with { StraightGoings = v }),
        new ListField<OwnClause, OwnPair>("pairs", "pairs of rise and going", "boxes that hold when the rise lies in one of them and the going with it", new(0, 0, 0, 0), Pair, 20,
            c => c.Pairs, (c, v) => c with { Pairs = v }, OwnCodes.TooManyPairs, OwnCodes.NoPairs),
        new ChoiceField<OwnClause>("evidence", "how well the number is known", Marks, OwnCodes.Evidence, "mark", "own: the shop's own figure; text-seen: read in the document; secondary: from another published text; memory: not checked against the document",
            c => c.Evidence, (c, v) => c with { Evidence = v }),
        new TextField<OwnClause>("source", "source of the number", LongestSource, "where the number comes from, in the shop's words", c => c.Source, (c, v) => c with { Source = v }, required: true),
        new ChoiceField<OwnClause>("weight", "weight", Weights, OwnCodes.Weight, "weight", "limit: a stair that does not keep it breaks the table; advice: it could be better", c => c.Weight, (c, v) => c with { Weight = v }),
    ];

    private static ImmutableArray<Field<OwnPair>> Pair =>
    [
        new NumberField<OwnPair>("riseLeast", "least rise", new(1, 5000, "mm"), "of the pair", p => p.RiseLeast, (p, v) => p with { RiseLeast = v }, required: true),
        new NumberField<OwnPair>("riseMost", "greatest rise", new(1, 5000, "mm"), "of the pair", p => p.RiseMost, (p, v) => p with { RiseMost = v }, required: true),
        new NumberField<OwnPair>("goingLeast", "least going", new(1, 5000, "mm"), "of the pair", p => p.GoingLeast, (p, v) => p with { GoingLeast = v }, required: true),
        new NumberField<OwnPair>("goingMost", "greatest going", new(1, 5000, "mm"), "of the pair", p => p.GoingMost, (p, v) => p with { GoingMost = v }, required: true),
    ];

    /// <summary>The version of the file's form: always 1 here.</summary>
    private sealed class FormField() : Field<OwnRegulation>("rodwrightRegulation", "version of the regulation file", "\"rodwrightRegulation\": 1 says that this is a regulation file and how to read it", required: true)
    {
        public override OwnRegulation Read(JobReading reading, JsonElement json, string path, OwnRegulation owner)
        {
            const string hint = "write \"rodwrightRegulation\": 1";
            if (reading.IsKind(json, JsonValueKind.Number, path, JobCodes.NumberWanted, "the number 1", hint) && (!json.TryGetDouble(out var value) || value != 1))
                reading.Refuse(JobCodes.Version, path, $"a regulation file of version {JsonWords.Shown(json.GetRawText())} was read; version 1 is known", hint + ", or use the release that wrote the file");
            return owner;
        }

        public override void Write(Utf8JsonWriter json, OwnRegulation owner) => json.WriteNumber(Name, 1);

        public override void WriteSchema(Utf8JsonWriter json, OwnRegulation defaults)
        {
            json.WriteStartObject();
            WriteWords(json);
            json.WriteNumber("const", 1);
            json.WriteEndObject();
        }

        public override IEnumerable<FieldDescription> Describe(string path, OwnRegulation defaults) => [new(path, Label, "", 1, 1, null, [], true, Source)];
    }

    /// <summary>The id, which no published table can have.</summary>
    private sealed class IdField() : Field<OwnRegulation>("id", "id of the table", "own- and then small letters, figures and single dashes, 60 signs at most: jobs name the table by it", required: true)
    {
        public override OwnRegulation Read(JobReading reading, JsonElement json, string path, OwnRegulation owner)
        {
            if (!reading.IsKind(json, JsonValueKind.String, path, JobCodes.TextWanted, "an id, own-…,", Source)) return owner;
            var id = json.GetString()!;
            if (OwnIds.Are(id)) return owner with { Id = id };
            reading.Refuse(OwnCodes.Id, path, $"\"{JsonWords.Shown(id)}\" was read; an id begins with {RegulationShelf.OwnPrefix} and has only small letters, figures and single dashes", $"write for example {OwnIds.From(id.StartsWith("own", StringComparison.OrdinalIgnoreCase) ? id[3..] : id)}");
            return owner;
        }

        public override void Write(Utf8JsonWriter json, OwnRegulation owner) => json.WriteString(Name, owner.Id);

        public override void WriteSchema(Utf8JsonWriter json, OwnRegulation defaults)
        {
            json.WriteStartObject();
            WriteWords(json);
            OwnIds.WritePattern(json);
            json.WriteEndObject();
        }

        public override IEnumerable<FieldDescription> Describe(string path, OwnRegulation defaults) => [new(path, Label, "", null, null, null, [], true, Source)];
    }
}
