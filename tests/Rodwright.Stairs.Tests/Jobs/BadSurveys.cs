namespace Rodwright.Stairs.Tests.Jobs;

/// <summary>Surveys with one wrong thing each.</summary>
internal static class BadSurveys
{
    /// <summary>Problems a schema can see too.</summary>
    public static IReadOnlyList<BadInput> Fields { get; } =
    [
        Of("text where walls belong", "\"wayIn\": [", "\"wayIn\": \"porch\", \"x\": [", "RW1013", "survey.wayIn", "\"x\": [ { \"kind\": \"door\", \"name\": \"porch\", \"width\": 800, \"height\": 2000 }, { \"kind\": \"turn\", \"width\": 900, \"widthOut\": 850, \"height\": 2400 } ],", ""),
        Of("a number where a wall belongs", "{ \"length\": 2400, \"corner\": { \"angle\": 90.5 } }", "2400", "RW1012", "survey.walls[1]"),
        Of("a wall without a length", "{ \"length\": 2400 } ]", "{ \"name\": \"end\" } ]", "RW1008", "survey.walls[3].length"),
        Of("a wall of nothing", "{ \"length\": 2400 } ]", "{ \"length\": 0 } ]", "RW1018", "survey.walls[3].length"),
        Of("a negative wall", "{ \"length\": 2400 } ]", "{ \"length\": [2400, -2400] } ]", "RW1017", "survey.walls[3].length[1]"),
        Of("no readings of a wall", "{ \"length\": 2400 } ]", "{ \"length\": [] } ]", "RW1042", "survey.walls[3].length"),
        Of("more readings of a wall than make sense", "{ \"length\": 2400 } ]", $"{{ \"length\": [{string.Join(",", Enumerable.Repeat(2400, 21))}] }} ]", "RW1044", "survey.walls[3].length"),
        Of("an unknown field in a wall", "{ \"length\": 2400 } ]", "{ \"length\": 2400, \"paper\": \"blue\" } ]", "RW1007", "survey.walls[3].paper"),
        Of("an unknown field in a corner", "\"angle\": 90.5", "\"angle\": 90.5, \"radius\": 4", "RW1007", "survey.walls[1].corner.radius"),
        Of("a blank name", "\"hall wall\"", "\"  \"", "RW1023", "survey.walls[0].name"),
        Of("a corner as sharp as a knife", "\"angle\": 90.5", "\"angle\": 12", "RW1019", "survey.walls[1].corner.angle"),
        Of("a corner of more than a turn", "\"angle\": 90.5", "\"angle\": 361", "RW1020", "survey.walls[1].corner.angle"),
        Of("a corner in words", "\"angle\": 90.5", "\"angle\": \"square\"", "RW1009", "survey.walls[1].corner.angle"),
        Of("a lean without a height", "\"plumb\": { \"out\": 3, \"over\": 2000 }", "\"plumb\": { \"out\": 3 }", "RW1008", "survey.walls[0].plumb.over"),
        Of("a lean over nothing", "\"over\": 2000", "\"over\": 0", "RW1018", "survey.walls[0].plumb.over"),
        Of("an opening that is neither door nor window", "\"kind\": \"window\"", "\"kind\": \"hatch\"", "RW1103", "survey.walls[0].openings[1].kind"),
        Of("an opening without a head", "\"sill\": 2300, \"head\": 2500", "\"sill\": 2300", "RW1008", "survey.walls[0].openings[1].head"),
        Of("a leaf that swings both ways", "\"swing\": \"out\"", "\"swing\": \"both\"", "RW1104", "survey.walls[0].openings[0].swing"),
        Of("an opening before its wall", "\"at\": 100", "\"at\": -100", "RW1017", "survey.walls[0].openings[0].at"),
        Of("a well without a trimmer", ", \"trimmer\": 240", "", "RW1008", "survey.well.trimmer"),
        Of("a trimmer of nothing", "\"trimmer\": 240", "\"trimmer\": 0", "RW1018", "survey.well.trimmer"),
        Of("a well in one number", "\"well\": { \"length\": [2500], \"width\": 1900, \"trimmer\": 240 }", "\"well\": 2500", "RW1012", "survey.well"),
        Of("a well of two corners", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0], [900, 0]],", "RW1101", "survey.well.corners"),
        Of("a corner of three numbers", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0, 1], [900, 0], [900, 900]],", "RW1102", "survey.well.corners[0]"),
        Of("a corner that is no list", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0], 900, [900, 900]],", "RW1013", "survey.well.corners[1]"),
        Of("a corner in words among the corners", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0], [900, \"far\"], [900, 900]],", "RW1009", "survey.well.corners[1][1]"),
        Of("a ceiling of a third storey", "\"storey\": \"upper\"", "\"storey\": \"attic\"", "RW1105", "survey.ceilings[0].storey"),
        Of("a ceiling without a second place", ", \"second\": { \"along\": 2000, \"out\": 0, \"height\": 2500 }", "", "RW1008", "survey.ceilings[0].second"),
        Of("a ceiling's height below the floor", "\"height\": 2100", "\"height\": -2100", "RW1017", "survey.ceilings[0].first.height"),
        Of("a place on the way in that is a stile", "\"kind\": \"turn\"", "\"kind\": \"stile\"", "RW1106", "survey.wayIn[1].kind"),
        Of("a door without a height", "\"width\": 800, \"height\": 2000", "\"width\": 800", "RW1008", "survey.wayIn[0].height"),
        Of("a door too low to be one", "\"width\": 800, \"height\": 2000", "\"width\": 800, \"height\": 20", "RW1019", "survey.wayIn[0].height"),
        Of("more doors than a palace", "\"wayIn\": [", $"\"wayIn\": [ {string.Concat(Enumerable.Repeat("{ \"kind\": \"door\", \"width\": 800, \"height\": 2000 }, ", 20))}", "RW1100", "survey.wayIn"),
        Of("half a wall to stand against", "\"wall\": 1", "\"wall\": 1.5", "RW1022", "survey.place.wall"),
        Of("wall nought", "\"wall\": 1", "\"wall\": 0", "RW1018", "survey.place.wall"),
        Of("a gap into the wall", "\"gap\": 4", "\"gap\": -4", "RW1017", "survey.place.gap"),
        Of("a negative accuracy", "\"floorToFloor\": 2", "\"floorToFloor\": -2", "RW1017", "survey.accuracy.floorToFloor"),
        Of("an accuracy without a thing", "\"accuracy\": { \"floorToFloor\": 2,", "\"accuracy\": { \"tape\": 2,", "RW1007", "survey.accuracy.tape"),
        Of("a floor as thick as a step and more", "\"upperFinish\": 18", "\"upperFinish\": 450", "RW1020", "survey.upperFinish"),
        Of("null where the well belongs", "\"well\": { \"length\": [2500], \"width\": 1900, \"trimmer\": 240 }", "\"well\": null", "RW1014", "survey.well"),
    ];

    /// <summary>Fields each in order that contradict one another.</summary>
    public static IReadOnlyList<BadInput> Contradictions { get; } =
    [
        Of("readings of a wall that disagree", "{ \"length\": 2400 } ]", "{ \"length\": [2400, 2406] } ]", "RW1043", "survey.walls[3].length"),
        Of("readings of the well that disagree", "\"length\": [2500]", "\"length\": [2500, 2520]", "RW1043", "survey.well.length"),
        Of("readings across a corner that disagree", "\"across\": 1001", "\"across\": [1001, 1010]", "RW1043", "survey.walls[0].corner.across"),
        Of("readings of a ceiling that disagree", "\"height\": 2500", "\"height\": [2500, 2511]", "RW1043", "survey.ceilings[0].second.height"),
        Of("a corner in two forms", "\"angle\": 90.5", "\"angle\": 90.5, \"diagonal\": 4326", "RW1111", "survey.walls[1].corner"),
        Of("a corner in no form", "{ \"angle\": 90.5 }", "{ }", "RW1111", "survey.walls[1].corner"),
        Of("two legs and nothing across", ", \"across\": 1001", "", "RW1111", "survey.walls[0].corner"),
        Of("legs that make no triangle", "\"across\": 1001", "\"across\": 1500", "RW1112", "survey.walls[0].corner"),
        Of("a diagonal shorter than the walls' difference", "\"diagonal\": 4326", "\"diagonal\": 1100", "RW1112", "survey.walls[2].corner"),
        Of("a diagonal over a wall that is not there", "{ \"length\": 2400 } ]", "{ \"length\": 2400, \"corner\": { \"diagonal\": 4300 } } ]", "RW1113", "survey.walls[3].corner.diagonal"),
        Of("a wall that falls over", "\"out\": 3, \"over\": 2000", "\"out\": 250, \"over\": 2000", "RW1114", "survey.walls[0].plumb"),
        Of("walls that cross", "\"angle\": 90.5", "\"angle\": 34", "RW1115", "survey.walls", "{ \"diagonal\": 4326 }", "{ \"angle\": 40 }"),
        Of("a room that does not close", "{ \"length\": 2400 } ]", "{ \"length\": 2200, \"corner\": { \"angle\": 90 } } ]", "RW1116", "survey.walls", "{ \"diagonal\": 4326 }", "{ \"angle\": 90 }"),
        Of("a door past the end of its wall", "\"at\": 100", "\"at\": 3300", "RW1117", "survey.walls[0].openings[0]"),
        Of("a window in a door", "\"at\": 2000, \"width\": 600, \"sill\": 2300", "\"at\": 700, \"width\": 600, \"sill\": 1200", "RW1118", "survey.walls[0].openings[1]"),
        Of("a head below its sill", "\"head\": 2500", "\"head\": 2200", "RW1119", "survey.walls[0].openings[1].head"),
        Of("a door to climb through", "\"head\": 1980", "\"sill\": 900, \"head\": 1980", "RW1120", "survey.walls[0].openings[0].sill"),
        Of("a well with a length and no width", ", \"width\": 1900", "", "RW1121", "survey.well"),
        Of("a well given twice", "\"width\": 1900", "\"width\": 1900, \"corners\": [[0, 0], [900, 0], [900, 900]]", "RW1121", "survey.well"),
        Of("a well whose sides cross", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0], [900, 900], [900, 0], [0, 900]],", "RW1122", "survey.well.corners"),
        Of("a well of one line", "\"length\": [2500], \"width\": 1900,", "\"corners\": [[0, 0], [900, 0], [1800, 1]],", "RW1122", "survey.well.corners"),
        Of("a trimmer as deep as the storey", "\"trimmer\": 240", "\"trimmer\": 1500", "RW1123", "survey.well.trimmer", "[2600]", "[1490]", "\"flight\": 7", "\"flight\": 2"),
        Of("a ceiling with a pitch and two heights", "\"height\": 2500 }", "\"height\": 2500 }, \"pitch\": 40", "RW1124", "survey.ceilings[0]"),
        Of("a ceiling with one height alone", ", \"height\": 2500 }", " }", "RW1124", "survey.ceilings[0]"),
        Of("a ceiling measured at one place", "\"second\": { \"along\": 2000", "\"second\": { \"along\": 3600", "RW1125", "survey.ceilings[0].second"),
        Of("a ceiling as steep as a wall", "\"second\": { \"along\": 2000", "\"second\": { \"along\": 3580", "RW1126", "survey.ceilings[0].second"),
        Of("a stair against wall nine", "\"wall\": 1", "\"wall\": 9", "RW1127", "survey.place.wall"),
        Of("a first riser past its wall", "\"from\": 1500", "\"from\": 3700", "RW1128", "survey.place.from"),
        Of("a turn with one passage", "\"widthOut\": 850, ", "", "RW1129", "survey.wayIn[1]"),
        Of("a door with two widths", "\"name\": \"porch\", \"width\": 800", "\"name\": \"porch\", \"width\": 800, \"widthOut\": 800", "RW1129", "survey.wayIn[0]"),
        Of("floors that eat the height", "[2600]", "[250]", "RW1110", "survey.upperFinish", "\"lowerFinish\": 10", "\"lowerFinish\": 300", "\"upperFinish\": 18", "\"upperFinish\": 0", "\"trimmer\": 240", "\"trimmer\": 20"),
    ];

    private static BadInput Of(string what, string old, string now, string code, string where, params string[] more)
    {
        var text = GoodSurvey.With(old, now);
        for (var i = 0; i + 1 < more.Length; i += 2) text = text.Replace(more[i], more[i + 1], StringComparison.Ordinal);
        return new(what, text, code, where);
    }
}
