using System.Text.Json.Nodes;
using Rodwright.Geometry;
using Rodwright.Stairs.Regulations.Own;

namespace Rodwright.Workshop.Tables;

/// <summary>How a table measures, as somebody types it; what is left empty is as in the table it is based on. Immutable.</summary>
public sealed record MeasuresForm
{
    /// <summary>Clear widths below this are measured in the middle.</summary>
    public string MiddleBelow { get; init; } = "";

    /// <summary>Otherwise this far from the inner side.</summary>
    public string Inset { get; init; } = "";

    /// <summary>true, false or empty: whether the same inset from the outer side is measured too.</summary>
    public string BothSides { get; init; } = "";

    /// <summary>chord, arc or empty.</summary>
    public string Going { get; init; } = "";

    /// <summary>along-faces, straight, tread-width or empty.</summary>
    public string Narrow { get; init; } = "";

    /// <summary>true, false or empty: whether a tapered step's going must be no less than a straight step's.</summary>
    public string TaperedAtLeastStraight { get; init; } = "";

    /// <summary>The form of what is kept.</summary>
    /// <param name="m">How the table measures.</param>
    /// <param name="document">The unit of the document it is based on.</param>
    public static MeasuresForm Of(OwnMeasures m, Units document) => new()
    {
        MiddleBelow = ClauseForm.Typed(m.MiddleBelow, document), Inset = ClauseForm.Typed(m.Inset, document), BothSides = Said(m.BothSides), Going = m.Going, Narrow = m.Narrow,
        TaperedAtLeastStraight = Said(m.TaperedAtLeastStraight),
    };

    internal JsonObject Json()
    {
        var json = new JsonObject();
        ClauseForm.Number(json, "middleBelow", MiddleBelow, isLength: true);
        ClauseForm.Number(json, "inset", Inset, isLength: true);
        Flag(json, "bothSides", BothSides);
        ClauseForm.Text(json, "going", Going);
        ClauseForm.Text(json, "narrow", Narrow);
        Flag(json, "taperedAtLeastStraight", TaperedAtLeastStraight);
        return json;
    }

    private static void Flag(JsonObject json, string name, string said)
    {
        if (said.Length > 0) json[name] = said == "true";
    }

    private static string Said(bool? flag) => flag switch { true => "true", false => "false", _ => "" };
}
