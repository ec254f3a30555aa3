using Xunit;

namespace Rodwright.Stairs.Tests.Jobs;

/// <summary>A job in order, to be spoiled one thing at a time.</summary>
internal static class GoodJob
{
    public const string Text = """
        { "rodwright": 1, "title": "Heron Mill, back stair", "regulation": "england-2013-private",
          "survey": { "floorToFloor": [2600], "tolerance": 5 },
          "layout": { "hand": "left", "sequence": [ { "flight": 2 }, { "turn": "winders", "steps": 3, "firstRiser": 30, "method": "equal-goings" }, { "flight": 7 } ] },
          "sides": { "left": "open", "right": "wall" },
          "going": 225, "width": 860, "modelScale": 1,
          "practice": { "newel": 90, "wallString": { "thickness": 32, "width": 270 }, "newelString": { "thickness": 32, "width": 270 },
            "tread": 22, "riser": 12, "nosing": 20, "margin": 50, "housing": 12, "newelHousing": 12, "cover": 10, "corner": 12, "riserOnTread": false,
            "treadWedge": { "length": 150, "thin": 4, "taper": 14, "runOn": 25 }, "riserWedge": { "length": 100, "thin": 4, "taper": 14, "runOn": 25 },
            "tenon": { "thickness": 20, "part": 0.6, "haunch": 16, "peg": 12, "pegBack": 20, "draw": 2 }, "timber": "ash" } }
        """;

    /// <summary>The job with one piece of its text replaced.</summary>
    public static string With(string old, string now)
    {
        Assert.Contains(old, Text, StringComparison.Ordinal);
        return Text.Replace(old, now, StringComparison.Ordinal);
    }
}
