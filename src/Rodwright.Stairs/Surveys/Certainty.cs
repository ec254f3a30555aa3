using Rodwright.Stairs.Regulations;

namespace Rodwright.Stairs.Surveys;

/// <summary>What the accuracy of the survey leaves open of one thing.</summary>
/// <param name="What">The thing: "rise", "the headroom, England ... 1.11".</param>
/// <param name="Value">Worked to.</param>
/// <param name="Low">Least it can be within the accuracies.</param>
/// <param name="High">Most it can be.</param>
/// <param name="Range">What is allowed; free at both ends for information alone.</param>
/// <param name="Limit">The same in words; empty for information alone.</param>
/// <param name="Unit">mm or degrees.</param>
/// <param name="Verdict">Whether it is safe to cut.</param>
/// <param name="Decides">The reading that decides it; null when it is safe, or fails whatever the tape says.</param>
public sealed record Certainty(string What, double Value, double Low, double High, LimitRange Range, string Limit, string Unit, CutVerdict Verdict, SurveyReading? Decides)
{
    /// <summary>The verdict in words.</summary>
    public string Words => Verdict switch
    {
        CutVerdict.Safe => "safe to cut",
        CutVerdict.Fails => "not kept, whatever the tape says",
        _ => $"measure again: {Decides?.Words ?? "the survey"} decides it",
    };
}

/// <summary>Whether a stair may be cut to what was measured.</summary>
public enum CutVerdict
{
    /// <summary>Kept even where every reading is off in the worst way.</summary>
    Safe,

    /// <summary>Kept or not within the accuracy of the readings.</summary>
    MeasureAgain,

    /// <summary>Not kept even where every reading is off in the best way.</summary>
    Fails,
}
