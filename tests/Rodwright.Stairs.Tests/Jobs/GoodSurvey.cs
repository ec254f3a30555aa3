using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

/// <summary>A job whose survey has everything, in order, to be spoiled one thing at a time.</summary>
internal static class GoodSurvey
{
    private const string Room = """
        { "floorToFloor": [2600], "tolerance": 5, "lowerFinish": 10, "upperFinish": 18,
            "walls": [
              { "name": "hall wall", "length": 3600, "plumb": { "out": 3, "over": 2000 }, "corner": { "leg": 600, "nextLeg": 800, "across": 1001 },
                "openings": [ { "kind": "door", "name": "cellar", "at": 100, "width": 700, "head": 1980, "swing": "out", "clear": 300 }, { "kind": "window", "at": 2000, "width": 600, "sill": 2300, "head": 2500 } ] },
              { "length": 2400, "corner": { "angle": 90.5 } },
              { "length": 3600, "corner": { "diagonal": 4326 } },
              { "length": 2400 } ],
            "well": { "length": [2500], "width": 1900, "trimmer": 240 },
            "ceilings": [ { "name": "slope", "storey": "upper", "first": { "along": 3600, "out": 0, "height": 2100 }, "second": { "along": 2000, "out": 0, "height": 2500 } } ],
            "wayIn": [ { "kind": "door", "name": "porch", "width": 800, "height": 2000 }, { "kind": "turn", "width": 900, "widthOut": 850, "height": 2400 } ],
            "place": { "wall": 1, "from": 1500, "gap": 4 }, "accuracy": { "floorToFloor": 2, "corner": 0.3 } }
        """;

    public static string Text { get; } = GoodJob.With("{ \"floorToFloor\": [2600], \"tolerance\": 5 }", Room);

    /// <summary>The job with one piece of its text replaced.</summary>
    public static string With(string old, string now)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        return Text.Replace(old, now, StringComparison.Ordinal);
    }
}
