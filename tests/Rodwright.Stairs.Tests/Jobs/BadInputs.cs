namespace Rodwright.Stairs.Tests.Jobs;

/// <summary>One wrong thing each: what it is, the text, and the finding it must get.</summary>
internal static class BadInputs
{
    private static readonly string Deep = string.Concat(Enumerable.Repeat("[", 400)) + string.Concat(Enumerable.Repeat("]", 400));

    /// <summary>Problems a schema can see too.</summary>
    public static IReadOnlyList<BadInput> Fields { get; } =
    [
        new("a list instead of a job", "[]", "RW1005", ""),
        new("a number instead of a job", "7", "RW1005", ""),
        new("text instead of a job", "\"stair\"", "RW1005", ""),
        new("null instead of a job", "null", "RW1005", ""),
        Spoilt("an unknown field at the top", "\"going\": 225", "\"going\": 225, \"landlord\": 1", "RW1007", "landlord"),
        Spoilt("a misspelt optional field at the top", "\"modelScale\": 1", "\"modelscale\": 1", "RW1007", "modelscale"),
        Spoilt("an unknown field in the survey", "\"tolerance\": 5", "\"tolerance\": 5, \"cellar\": 3", "RW1007", "survey.cellar"),
        Spoilt("an unknown field in the layout", "\"hand\": \"left\"", "\"hand\": \"left\", \"turns\": 1", "RW1007", "layout.turns"),
        Spoilt("an unknown field in a turn", "\"steps\": 3", "\"steps\": 3, \"angle\": 90", "RW1007", "layout.sequence[1].angle"),
        Spoilt("an unknown field in a flight", "{ \"flight\": 7 }", "{ \"flight\": 7, \"rise\": 200 }", "RW1007", "layout.sequence[2].rise"),
        Spoilt("an unknown field in the sides", "\"right\": \"wall\"", "\"right\": \"wall\", \"back\": \"wall\"", "RW1007", "sides.back"),
        Spoilt("an unknown field in the practice", "\"newel\": 90", "\"newel\": 90, \"newelCap\": 20", "RW1007", "practice.newelCap"),
        Spoilt("an unknown field in a string", "\"wallString\": { \"thickness\": 32", "\"wallString\": { \"depth\": 32, \"thickness\": 32", "RW1007", "practice.wallString.depth"),
        Spoilt("a family of layouts nobody knows", "\"going\": 225", "\"going\": 225, \"wishes\": { \"unwanted\": [\"quarter-landng\"] }", "RW1140", "wishes.unwanted[0]"),
        Spoilt("an unknown field in the tenon", "\"haunch\": 16", "\"haunch\": 16, \"wedge\": 1", "RW1007", "practice.tenon.wedge"),
        Spoilt("no version", "\"rodwright\": 1, ", "", "RW1008", "rodwright"),
        Spoilt("no title", "\"title\": \"Heron Mill, back stair\", ", "", "RW1008", "title"),
        Spoilt("no regulation", "\"title\": \"Heron Mill, back stair\", \"regulation\": \"england-2013-private\"", "\"title\": \"Heron Mill, back stair\"", "RW1008", "regulation"),
        Spoilt("no survey", "\"survey\": { \"floorToFloor\": [2600], \"tolerance\": 5 },", "", "RW1008", "survey"),
        Spoilt("no height", "\"floorToFloor\": [2600], ", "", "RW1008", "survey.floorToFloor"),
        new("no layout", """{ "rodwright": 1, "title": "x", "regulation": "scotland-private", "survey": { "floorToFloor": 2600 }, "going": 225, "width": 860 }""", "RW1008", "layout"),
        Spoilt("no hand", "\"hand\": \"left\", ", "", "RW1008", "layout.hand"),
        new("no sequence", """{ "rodwright": 1, "title": "x", "regulation": "scotland-private", "survey": { "floorToFloor": 2600 }, "layout": { "hand": "left" }, "going": 225, "width": 860 }""", "RW1008", "layout.sequence"),
        Spoilt("no going", "\"going\": 225, ", "", "RW1008", "going"),
        Spoilt("no width", "\"width\": 860, ", "", "RW1008", "width"),
        Spoilt("winders without a number of steps", "\"steps\": 3, ", "", "RW1008", "layout.sequence[1].steps"),
        Spoilt("a word where the going belongs", "\"going\": 225", "\"going\": \"wide\"", "RW1009", "going"),
        Spoilt("true where a number belongs", "\"newel\": 90", "\"newel\": true", "RW1009", "practice.newel"),
        Spoilt("an object where a number belongs", "\"width\": 860", "\"width\": { \"mm\": 860 }", "RW1009", "width"),
        Spoilt("a list where a number belongs", "\"margin\": 50", "\"margin\": [50]", "RW1009", "practice.margin"),
        Spoilt("a word among the readings", "[2600]", "[2600, \"about\"]", "RW1009", "survey.floorToFloor[1]"),
        Spoilt("a number as title", "\"Heron Mill, back stair\"", "12", "RW1010", "title"),
        Spoilt("a flag as hand", "\"hand\": \"left\"", "\"hand\": false", "RW1010", "layout.hand"),
        Spoilt("a list as timber", "\"timber\": \"ash\"", "\"timber\": [\"ash\"]", "RW1010", "practice.timber"),
        Spoilt("a word where yes or no belongs", "\"riserOnTread\": false", "\"riserOnTread\": \"no\"", "RW1011", "practice.riserOnTread"),
        Spoilt("a number where yes or no belongs", "\"riserOnTread\": false", "\"riserOnTread\": 0", "RW1011", "practice.riserOnTread"),
        Spoilt("a number where a string's section belongs", "\"wallString\": { \"thickness\": 32, \"width\": 270 }", "\"wallString\": 32", "RW1012", "practice.wallString"),
        Spoilt("text where the sides belong", "\"sides\": { \"left\": \"open\", \"right\": \"wall\" }", "\"sides\": \"open\"", "RW1012", "sides"),
        Spoilt("a number as an item", "{ \"flight\": 7 }", "7", "RW1012", "layout.sequence[2]"),
        new("an object as sequence", GoodJob.Text.Replace("[ { \"flight\": 2 }, { \"turn\": \"winders\", \"steps\": 3, \"firstRiser\": 30, \"method\": \"equal-goings\" }, { \"flight\": 7 } ]", "{ \"flight\": 7 }"), "RW1013", "layout.sequence"),
        Spoilt("null where a number belongs", "\"going\": 225", "\"going\": null", "RW1014", "going"),
        Spoilt("null where a group belongs", "\"sides\": { \"left\": \"open\", \"right\": \"wall\" }", "\"sides\": null", "RW1014", "sides"),
        Spoilt("null as title", "\"Heron Mill, back stair\"", "null", "RW1014", "title"),
        Spoilt("a number too large for a number", "\"going\": 225", "\"going\": 1e999", "RW1015", "going"),
        Spoilt("NaN in quotation marks", "\"width\": 860", "\"width\": \"NaN\"", "RW1016", "width"),
        Spoilt("infinity in quotation marks", "\"width\": 860", "\"width\": \"-Infinity\"", "RW1016", "width"),
        Spoilt("a shape of the bottom step that is not known", "\"going\": 225", "\"going\": 225, \"bottomStep\": { \"shape\": \"curly\" }", "RW1141", "bottomStep.shape"),
        Spoilt("a newel at the foot that is not known", "\"going\": 225", "\"going\": 225, \"ends\": { \"foot\": \"third\" }", "RW1142", "ends.foot"),
        Spoilt("a meeting with the skirting that is not known", "\"newel\": 90", "\"newel\": 90, \"skirtingJoint\": \"scarfed\"", "RW1147", "practice.skirtingJoint"),
        Spoilt("a corner joint that is not known", "\"newel\": 90", "\"newel\": 90, \"cornerJoint\": \"nailed\"", "RW1146", "practice.cornerJoint"),
        Spoilt("a cap of a shape that is not known", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"cap\": { \"shape\": \"ball\" } }", "RW1143", "balustrade.cap.shape"),
        Spoilt("a landing's balustrade that runs nowhere known", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"upperLanding\": { \"way\": \"up\" } }", "RW1144", "balustrade.upperLanding.way"),
        Spoilt("wall rails wanted in a word that is not known", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"wallRail\": { \"wanted\": \"maybe\" } }", "RW1145", "balustrade.wallRail.wanted"),
        Spoilt("feet and inches in a job in millimetres", "\"width\": 860", "\"width\": \"2' 10 1/4\"", "RW1150", "width"),
        Spoilt("a unit that is not known", "\"title\"", "\"units\": \"feet\", \"title\"", "RW1151", "units"),
        Spoilt("a number in quotation marks", "\"newel\": 90", "\"newel\": \"90\"", "RW1016", "practice.newel"),
        Spoilt("a negative width", "\"width\": 860", "\"width\": -860", "RW1017", "width"),
        Spoilt("a negative nosing", "\"nosing\": 20", "\"nosing\": -1", "RW1017", "practice.nosing"),
        Spoilt("a negative flight", "{ \"flight\": 7 }", "{ \"flight\": -7 }", "RW1017", "layout.sequence[2].flight"),
        Spoilt("a negative reading", "[2600]", "[-2600]", "RW1017", "survey.floorToFloor[0]"),
        Spoilt("no going at all", "\"going\": 225", "\"going\": 0", "RW1018", "going"),
        Spoilt("a newel of nothing", "\"newel\": 90", "\"newel\": 0.0", "RW1018", "practice.newel"),
        Spoilt("a string as thin as paper", "\"wallString\": { \"thickness\": 32", "\"wallString\": { \"thickness\": 0.2", "RW1019", "practice.wallString.thickness"),
        Spoilt("a scale too small", "\"modelScale\": 1", "\"modelScale\": 0.01", "RW1019", "modelScale"),
        Spoilt("a scale above one", "\"modelScale\": 1", "\"modelScale\": 2", "RW1020", "modelScale"),
        Spoilt("a newel like a tree", "\"newel\": 90", "\"newel\": 900", "RW1020", "practice.newel"),
        Spoilt("an absurdly large width", "\"width\": 860", "\"width\": 86000000", "RW1021", "width"),
        Spoilt("an absurdly large height", "[2600]", "2.6e12", "RW1021", "survey.floorToFloor"),
        Spoilt("half a going", "{ \"flight\": 7 }", "{ \"flight\": 6.5 }", "RW1022", "layout.sequence[2].flight"),
        Spoilt("half a winder", "\"steps\": 3", "\"steps\": 2.5", "RW1022", "layout.sequence[1].steps"),
        Spoilt("an empty title", "\"Heron Mill, back stair\"", "\"\"", "RW1023", "title"),
        Spoilt("a title of blanks", "\"Heron Mill, back stair\"", "\"   \"", "RW1023", "title"),
        Spoilt("a title too long", "\"Heron Mill, back stair\"", $"\"{new string('x', 81)}\"", "RW1024", "title"),
        Spoilt("a line break in the title", "\"Heron Mill, back stair\"", "\"Heron\\nMill\"", "RW1025", "title"),
        Spoilt("a control character in the timber", "\"ash\"", "\"as\\u0007h\"", "RW1025", "practice.timber"),
        Spoilt("version 2", "\"rodwright\": 1", "\"rodwright\": 2", "RW1026", "rodwright"),
        Spoilt("an unknown regulation", "\"england-2013-private\"", "\"atlantis-1900\"", "RW1027", "regulation"),
        Spoilt("an unknown hand", "\"hand\": \"left\"", "\"hand\": \"straight\"", "RW1028", "layout.hand"),
        Spoilt("an unknown side", "\"right\": \"wall\"", "\"right\": \"hedge\"", "RW1029", "sides.right"),
        Spoilt("an unknown turn", "\"winders\"", "\"corkscrew\"", "RW1030", "layout.sequence[1].turn"),
        Spoilt("an unknown method", "\"equal-goings\"", "\"by-eye\"", "RW1031", "layout.sequence[1].method"),
        Spoilt("one winder", "\"steps\": 3", "\"steps\": 1", "RW1032", "layout.sequence[1].steps"),
        Spoilt("seven winders", "\"steps\": 3", "\"steps\": 7", "RW1032", "layout.sequence[1].steps"),
        Spoilt("a landing with steps", "\"turn\": \"winders\", \"steps\": 3, \"firstRiser\": 30, \"method\": \"equal-goings\"", "\"turn\": \"landing\", \"steps\": 1", "RW1033", "layout.sequence[1].steps"),
        Spoilt("a landing with a method", "\"turn\": \"winders\", \"steps\": 3, \"firstRiser\": 30, \"method\": \"equal-goings\"", "\"turn\": \"landing\", \"method\": \"radiating\"", "RW1033", "layout.sequence[1].method"),
        Spoilt("a well at a quarter turn", "\"steps\": 3, \"firstRiser\": 30, \"method\": \"equal-goings\"", "\"steps\": 3, \"well\": 100", "RW1072", "layout.sequence[1].well"),
        Spoilt("a turn to nowhere", "\"steps\": 3, \"firstRiser\": 30", "\"steps\": 3, \"hand\": \"up\"", "RW1028", "layout.sequence[1].hand"),
        new("an empty sequence", GoodJob.Text.Replace("[ { \"flight\": 2 }, { \"turn\": \"winders\", \"steps\": 3, \"firstRiser\": 30, \"method\": \"equal-goings\" }, { \"flight\": 7 } ]", "[]"), "RW1035", "layout.sequence"),
        Spoilt("an item that is nothing", "{ \"flight\": 7 }", "{ }", "RW1036", "layout.sequence[2]"),
        Spoilt("an item that is both", "{ \"flight\": 7 }", "{ \"flight\": 7, \"turn\": \"landing\" }", "RW1037", "layout.sequence[2]"),
        Spoilt("a flight with steps", "{ \"flight\": 7 }", "{ \"flight\": 7, \"steps\": 3 }", "RW1038", "layout.sequence[2].steps"),
        Spoilt("300 steps in one flight", "{ \"flight\": 7 }", "{ \"flight\": 300 }", "RW1040", "layout.sequence[2].flight"),
        Spoilt("no readings", "[2600]", "[]", "RW1042", "survey.floorToFloor"),
        Spoilt("a page of readings", "[2600]", $"[{string.Join(',', Enumerable.Repeat("2600", 21))}]", "RW1044", "survey.floorToFloor"),
    ];

    /// <summary>Problems of the text itself.</summary>
    public static IReadOnlyList<BadInput> Texts { get; } =
    [
        new("nothing", "", "RW1002", ""),
        new("blanks", " \n\t ", "RW1002", ""),
        new("prose", "a stair please", "RW1001", ""),
        new("a brace not closed", GoodJob.Text[..^3], "RW1001", ""),
        new("a comment", GoodJob.Text.Replace("\"going\"", "/* measured */ \"going\""), "RW1001", ""),
        new("a comma too many", GoodJob.Text.Replace("\"width\": 860,", "\"width\": 860,,"), "RW1001", ""),
        new("a trailing comma", GoodJob.Text.Replace("\"ash\" }", "\"ash\", }"), "RW1001", ""),
        new("NaN without quotation marks", GoodJob.Text.Replace("\"going\": 225", "\"going\": NaN"), "RW1001", ""),
        new("single quotation marks", GoodJob.Text.Replace("\"title\"", "'title'"), "RW1001", ""),
        new("two jobs in one file", GoodJob.Text + GoodJob.Text, "RW1001", ""),
        new("a leading zero", GoodJob.Text.Replace("\"going\": 225", "\"going\": 0225"), "RW1001", ""),
        new("a book", "{ \"title\": \"" + new string('x', 300_000) + "\" }", "RW1003", ""),
        new("brackets without end", Deep, "RW1004", ""),
        new("half a character", GoodJob.Text.Replace("Heron", "\\ud83d"), "RW1025", ""),
        Spoilt("a repeated field at the top", "\"going\": 225", "\"going\": 225, \"going\": 230", "RW1006", "going"),
        Spoilt("a repeated field below", "\"newel\": 90", "\"newel\": 90, \"newel\": 90", "RW1006", "practice.newel"),
        Spoilt("a repeated field in a flight", "{ \"flight\": 7 }", "{ \"flight\": 7, \"flight\": 7 }", "RW1006", "layout.sequence[2].flight"),
    ];

    /// <summary>Fields each in order that contradict one another: no schema sees these.</summary>
    public static IReadOnlyList<BadInput> Contradictions { get; } =
    [
        new("two flights in a row", Straight("{ \"flight\": 5 }, { \"flight\": 6 }"), "RW1041", "layout.sequence[1]"),
        new("a flight without goings", Straight("{ \"flight\": 0 }"), "RW1039", "layout.sequence"),
        Spoilt("too many steps in all", "{ \"flight\": 7 }", "{ \"flight\": 60 }", "RW1040", "layout.sequence"),
        Spoilt("readings that disagree", "[2600]", "[2600, 2611]", "RW1043", "survey.floorToFloor"),
        Spoilt("a shared taper that is not shared", "\"steps\": 3, \"firstRiser\": 30", "\"steps\": 3, \"sharedBefore\": 2", "RW1071", "layout.sequence"),
        Spoilt("a rise for giants", "[2600]", "[3910]", "RW1050", "survey.floorToFloor"),
        Spoilt("a rise for mice", "[2600]", "[1000]", "RW1050", "survey.floorToFloor"),
        Spoilt("strings that fill the width", "\"width\": 860", "\"width\": 250", "RW1051", "width"),
        Spoilt("balusters as wide as their rails", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"baluster\": 60 }", "RW1073", "balustrade.baluster"),
        Spoilt("grooves through a base rail", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"groove\": 25 }", "RW1074", "balustrade.groove"),
        Spoilt("a rail's tenon without shoulders", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"tenon\": { \"thickness\": 60 } }", "RW1075", "balustrade.tenon.thickness"),
        Spoilt("rails' mortices past the middle of the newel", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"tenon\": { \"length\": 50 } }", "RW1076", "balustrade.tenon.length"),
        Spoilt("a rail's peg that breaks out at the shoulder", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"tenon\": { \"peg\": 20 } }", "RW1077", "balustrade.tenon.peg"),
        Spoilt("a recess through a cap", "\"going\": 225", "\"going\": 225, \"balustrade\": { \"cap\": { \"recess\": 24 } }", "RW1078", "balustrade.cap.recess"),
        Spoilt("a tongue without shoulders", "\"newel\": 90", "\"newel\": 90, \"cornerJoint\": \"tongued\", \"cornerTongue\": 31", "RW1079", "practice.cornerTongue"),
        new("a nosing as deep as the going", Small("\"nosing\": 60"), "RW1053", "practice.nosing"),
        new("a tread wedge too long behind a thick riser", Small("\"riser\": 50", going: 60, wedge: 20), "RW1056", "practice.treadWedge.length"),
        Spoilt("a tread wedge longer than the going", "\"treadWedge\": { \"length\": 150", "\"treadWedge\": { \"length\": 189", "RW1056", "practice.treadWedge.length"),
        Spoilt("a riser wedge taller than the rise", "\"riserWedge\": { \"length\": 100", "\"riserWedge\": { \"length\": 180", "RW1057", "practice.riserWedge.length"),
        Spoilt("housings as deep as the board", "\"housing\": 12", "\"housing\": 32", "RW1058", "practice.housing"),
        Spoilt("housings through the newel string", "\"newelString\": { \"thickness\": 32", "\"newelString\": { \"thickness\": 11", "RW1058", "practice.housing", "\"thickness\": 20, ", ""),
        Spoilt("a margin as wide as the string", "\"margin\": 50", "\"margin\": 70", "RW1059", "practice.margin", "\"wallString\": { \"thickness\": 32, \"width\": 270", "\"wallString\": { \"thickness\": 32, \"width\": 70"),
        Spoilt("dovetails lapped too little", "\"corner\": 12", "\"corner\": 3, \"cornerJoint\": \"dovetailed\"", "RW1081", "practice.corner"),
        Spoilt("a corner through the wall string", "\"corner\": 12", "\"corner\": 32", "RW1060", "practice.corner"),
        new("a newel as thin as its string", GoodJob.Text.Replace("\"newelString\": { \"thickness\": 32", "\"newelString\": { \"thickness\": 70").Replace("\"newel\": 90", "\"newel\": 70").Replace("\"firstRiser\": 30", "\"firstRiser\": 20"), "RW1061", "practice.newel"),
        Spoilt("newel housings that meet", "\"newelHousing\": 12", "\"newelHousing\": 45", "RW1062", "practice.newelHousing"),
        Spoilt("a newel housing that meets the mortice", "\"newelHousing\": 12", "\"newelHousing\": 42", "RW1062", "practice.newelHousing"),
        Spoilt("a mortice through the newel", "\"part\": 0.6", "\"part\": 0.9, \"morticeClearance\": 9", "RW1063", "practice.tenon.part"),
        Spoilt("a tenon thicker than its string", "\"tenon\": { \"thickness\": 20", "\"tenon\": { \"thickness\": 33", "RW1064", "practice.tenon.thickness"),
        Spoilt("a peg that breaks the tenon's end", "\"pegBack\": 20", "\"pegBack\": 7", "RW1065", "practice.tenon.peg"),
        Spoilt("a draw of half the peg", "\"draw\": 2", "\"draw\": 6", "RW1066", "practice.tenon.draw"),
        Spoilt("a haunch longer than the tenon", "\"haunch\": 16", "\"haunch\": 55", "RW1067", "practice.tenon.haunch"),
        Spoilt("cover that leaves no newel", "\"cover\": 10", "\"cover\": 45", "RW1068", "practice.cover"),
        Spoilt("a first riser on the arris", "\"firstRiser\": 30", "\"firstRiser\": 36", "RW1069", "layout.sequence"),
        Spoilt("a last riser just past the newel", "\"firstRiser\": 30", "\"lastRiser\": 66.9", "RW1069", "layout.sequence"),
    ];

    public static IEnumerable<BadInput> All => [.. Texts, .. Fields, .. Contradictions, .. BadSurveys.Fields, .. BadSurveys.Contradictions];

    private static BadInput Spoilt(string what, string old, string now, string code, string where, string old2 = "", string now2 = "")
    {
        var text = GoodJob.With(old, now);
        return new(what, old2.Length == 0 ? text : text.Replace(old2, now2, StringComparison.Ordinal), code, where);
    }

    private static string Straight(string items) =>
        $$"""{ "rodwright": 1, "title": "x", "regulation": "scotland-private", "survey": { "floorToFloor": 2400 }, "layout": { "hand": "left", "sequence": [ {{items}} ] }, "going": 240, "width": 860 }""";

    /// <summary>A model small enough for common sizes to be too large.</summary>
    private static string Small(string practice, double going = 60, double wedge = 20) =>
        $$"""
        { "rodwright": 1, "title": "x", "regulation": "scotland-private", "survey": { "floorToFloor": 600 }, "modelScale": 0.3, "going": {{going}}, "width": 300,
          "layout": { "hand": "left", "sequence": [ { "flight": 9 } ] },
          "practice": { {{practice}}, "treadWedge": { "length": {{wedge}}, "runOn": 10 }, "riserWedge": { "length": 20, "runOn": 10 } } }
        """;
}

/// <summary>One wrong job.</summary>
/// <param name="What">What is wrong with it, in words.</param>
public sealed record BadInput(string What, string Text, string Code, string Where)
{
    public override string ToString() => What;
}
